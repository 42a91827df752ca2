using SwapSolver.Asking.Grammar;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Asking;

/// <content>More, or less, of one line of the formula: less vinegar, more cocoa.</content>
internal sealed partial class Reading
{
    /// <summary>Less of a line is at most so much of it [1]: a quarter less is tasted; common practice, no source.</summary>
    private const double Less = 0.75;

    /// <summary>More of a line is at least so much of it [1]; common practice, no source.</summary>
    private const double More = 1.25;

    /// <summary>What wets moves by so much of itself [1]: a tenth of the water is another dough; common practice, no source.</summary>
    private const double OfLiquid = 0.05;

    /// <summary>Less of the dough's salt is hardly left in it, and may be asked for in a slice [1]; our estimate, no source.</summary>
    private const double LeastOfDough = 0.5;

    /// <summary>So many times the salt of a slice are no salt of a slice [1]; our estimate, no source.</summary>
    private const double BeyondSlice = 3;

    /// <summary>What is asked of one line; null where the line is not sure, and then a problem was added.</summary>
    private AskedTarget? LineTarget(Clause clause)
    {
        if ((clause.First("thing") ?? clause.First("reading")) is not { } named)
        {
            return SaltTarget(clause);
        }

        var times = PartOf(clause);
        if (times < 1 && clause.First("less") is not null && clause.First("by")?.Text is not ("to" or "into"))
        {
            // Less by a third are two thirds.
            times = 1 - times;
        }

        var isMore = times is { } many ? many > 1 : clause.Means is "LINE_MORE" or "MORE";
        if (IsDenied(clause.Parts[0].Lexeme) || named.Thing is null || meaning.Out(named) is not { } own)
        {
            return null;
        }

        if (own.Role == Role.Sweetener && times is null)
        {
            var goal = isMore ? "sweeter" : "less-sweet";
            assumed.Add(sentences.Say("asked-line-sweet", ("words", clause.Words), ("goal", goal.Replace('-', ' '))));
            return new AskedTarget(goal, null, null);
        }

        var has = formula.Lines.Where(line => line.Ingredient.Equals(own)).Sum(line => line.Grams.Value);
        var usual = own.Role == Role.Liquid ? 1 + (isMore ? OfLiquid : -OfLiquid) : isMore ? More : Less;
        var grams = Math.Round(has * (times ?? usual), 1);
        return LimitOf(own, clause.Words, grams, has, isMore);
    }

    /// <summary>At least, or at most, so many grams of a line, which is told beside what the formula has [g].</summary>
    private AskedTarget LimitOf(Ingredient own, string words, double grams, double has, bool isLeast)
    {
        assumed.Add(sentences.Say(isLeast ? "asked-line-more" : "asked-line-less", ("words", words), ("ingredient", own.Name), ("grams", Said(grams)), ("value", Said(Math.Round(has, 1)))));
        return new AskedTarget(LineMass.Prefix + own.Id, isLeast ? grams : null, isLeast ? null : grams);
    }

    /// <summary>The part of a line, or of a reading, that a clause tells [1]; null where it tells none.</summary>
    private static double? PartOf(Clause clause) =>
        (clause.First("partfactor") ?? clause.First("factor")) is { } word ? (word.Is("factor") ? word.Number("factor") : null)
        : clause.First("share")?.Number("share");

    /// <summary>Salt cut by so much: of the words that name what is to be less, those for salt alone mean one line; null for others.</summary>
    private AskedTarget? SaltTarget(Clause clause)
    {
        // Less salt in a half batch is no half of the salt.
        var isBy = clause.First("by") is not null || clause.First("factor")?.Is("bypart") is true;
        if (clause.First("goal")!.Means("goal") != "less-salt" || !isBy || PartOf(clause) is not (< 1 and var part)
            || formula.Lines.Where(line => line.Ingredient.Role == Role.Salt).ToList() is not [{ Grams: var has, Ingredient: var salt }])
        {
            return null;
        }

        var grams = Math.Round(has.Value * (clause.First("by")?.Text is "to" or "into" ? part : 1 - part), 1);
        return LimitOf(salt, clause.Words, grams, has.Value, isLeast: false);
    }

    /// <summary>Grams of salt that no slice has, and that are those in the dough; null for others.</summary>
    private AskedTarget? SaltOfDough(Clause clause)
    {
        if (clause.First("reading") is not { } reading || TargetClauses.ReadingOf(reading) != "salt" || clause.First("per") is not null || clause.First("mass") is not { } mass || clause.Counts is not [var count] || told.IsSized
            || formula.Lines.Where(line => line.Ingredient.Role == Role.Salt).ToList() is not [{ Grams: var has, Ingredient: var salt }]
            || count * mass.Number("mass") is var grams && (grams * formula.Slices < BeyondSlice * has.Value || grams < LeastOfDough * has.Value))
        {
            return null;
        }

        // A word that asks for a figure may be that of the reading too.
        var said = string.Join(' ', clause.Parts.Select(part => part.Lexeme).Distinct().Select(lexeme => lexeme.Text));
        return LimitOf(salt, said, grams, has.Value, isLeast: clause.Means is "TARGET_ABOVE" or "BARE_ABOVE");
    }

    /// <summary>Whether a line goes with what is left out, or with a way of eating.</summary>
    private bool GoesOut(Ingredient line) => IsAgainstDiet(line) || told.Without.Any(wish => LeavesOut(wish, line));

    /// <summary>So much of a line is asked of the loaf in the size that it has, and of no line that goes or comes.</summary>
    private void ReadBesidesLines()
    {
        if (All("LINE_TIMES").Count() > 1 || (All("LINE_TIMES").Any() && told.From.Length > 0 && !All("REPLACE").Any()))
        {
            // Half butter, half oil is a swap of half of it, and half an egg replaced no wish for half of it.
            isTurned = true;
            problems.Add(sentences.Say("asked-unsupported", ("words", string.Join(", ", All("LINE_TIMES").Select(clause => clause.Words)))));
        }

        if (wanted.FirstOrDefault(target => target.Low is not null && target.Name.StartsWith(LineMass.Prefix, StringComparison.Ordinal) && GoesOut(meaning.Found(target.Name[LineMass.Prefix.Length..]))) is { } missed)
        {
            // I am dairy free and it lacks butter.
            isTurned = true;
            NotRead(missed.Name[LineMass.Prefix.Length..].Replace('-', ' '));
        }

        if (All("LINE_LESS", "LINE_MORE", "LINE_TIMES", "LESS", "MORE").Any() && wanted.Any(target => target.Name.StartsWith(LineMass.Prefix, StringComparison.Ordinal) && target != hadAtMost)
            && (told.IsSized || wanted.Any(target => target.Name == LineMass.Prefix + told.From || target.Name == LineMass.Prefix + told.To)))
        {
            isTurned = true;
            problems.Add(sentences.Say("asked-unsupported", ("words", string.Join(", ", All("LINE_LESS", "LINE_MORE", "LINE_TIMES").Select(clause => clause.Words)))));
        }
    }
}
