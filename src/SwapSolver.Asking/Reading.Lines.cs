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

    /// <summary>What is asked of one line; null where the line is not sure, and then a problem was added.</summary>
    private AskedTarget? LineTarget(Clause clause)
    {
        var named = clause.First("thing") ?? clause.First("reading")!;
        var part = clause.First("partfactor") ?? clause.First("factor");
        var times = part?.Is("factor") is true ? part.Number("factor") : (double?)null;
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
        assumed.Add(sentences.Say(isMore ? "asked-line-more" : "asked-line-less", ("words", clause.Words), ("ingredient", own.Name), ("grams", Said(grams)), ("value", Said(Math.Round(has, 1)))));
        return new AskedTarget(LineMass.Prefix + own.Id, isMore ? grams : null, isMore ? null : grams);
    }

    /// <summary>So much of a line is asked of the loaf as it is, and of no other.</summary>
    private void ReadBesidesLines()
    {
        if (All("LINE_TIMES").Count() > 1)
        {
            // Half butter, half oil is a swap of half of it.
            isTurned = true;
            problems.Add(sentences.Say("asked-unsupported", ("words", string.Join(", ", All("LINE_TIMES").Select(clause => clause.Words)))));
        }

        if (wanted.Any(target => target.Name.StartsWith(LineMass.Prefix, StringComparison.Ordinal))
            && (told.IsSized || told.From.Length > 0 || told.Diet.Length > 0 || !told.Without.IsEmpty))
        {
            isTurned = true;
            problems.Add(sentences.Say("asked-unsupported", ("words", string.Join(", ", All("LINE_LESS", "LINE_MORE", "LINE_TIMES").Select(clause => clause.Words)))));
        }
    }
}
