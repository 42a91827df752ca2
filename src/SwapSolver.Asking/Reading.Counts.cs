using SwapSolver.Asking.Grammar;
using SwapSolver.Asking.Sizes;
using SwapSolver.Asking.Text;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Asking;

/// <content>Pieces and loaves that are counted or weighed, and what somebody has that the rest is scaled to.</content>
internal sealed partial class Reading
{
    /// <summary>The most slices or pieces that a formula may yield [1].</summary>
    private const int MostPieces = 1000;

    /// <summary>What is lighter than so many of the formula's pieces is one piece [1]; our estimate, no source.</summary>
    private const double MostOfAPiece = 2.5;

    /// <summary>Pieces so many times lighter than the formula's are none: the mass is that of one [1]; our estimate, no source.</summary>
    private const int FarLighter = 3;

    /// <summary>Pieces of a weight, which are many or few, or as many as the formula yields.</summary>
    private void ReadPieces()
    {
        foreach (var clause in All("PIECES"))
        {
            if (told.MassGrams is null && clause.First("per")?.Means("per") == "loaf" && SizeReader.MassOf(clause) is { } whole)
            {
                told = told with { MassGrams = whole };
                continue;
            }

            var grams = SizeReader.PieceOf(clause);
            var count = clause.Counts.Length > 1 ? SizeReader.SlicesOf(clause) ?? 0 : told.Slices ?? formula.Slices;
            var isOther = told.MassGrams is not null || told.Factor is not null || told.Tin is not null || (told.Slices is { } slices && slices != count);
            if (grams is not { } each || count < 1 || isOther || (clause.First("per") is { } per && per.Means("per") != "slice"))
            {
                unread.AddRange(clause.Parts.Select(part => part.Lexeme));
                continue;
            }

            told = told with { Slices = clause.Counts.Length > 1 ? count : told.Slices, MassGrams = InAll("asked-pieces", clause, count, each) };
        }
    }

    /// <summary>A mass beside a number of pieces or loaves, which is that of one where it is too little for all.</summary>
    private void ReadTogether()
    {
        if (told is { Slices: { } all, Factor: { } times } && times * formula.Slices != all)
        {
            assumed.Add(sentences.Say("asked-slices-in-all", ("count", Said(all))));
        }

        if (All("PIECES").Any() || told.MassGrams is not { } grams || All("MASS").FirstOrDefault() is not { } mass)
        {
            return;
        }

        var isOfOne = mass.First("loaf") is null;
        if (isOfOne && told.Slices is { } slices && grams >= SizeReader.LeastPieceGrams && grams / slices < formula.BatterMass.Value / formula.Slices / FarLighter)
        {
            told = told with { MassGrams = InAll("asked-pieces", mass, slices, grams) };
        }
        else if (isOfOne && told.Slices is null && told.Factor is null && grams < formula.BatterMass.Value / formula.Slices * MostOfAPiece)
        {
            told = told with { MassGrams = InAll("asked-pieces", mass, formula.Slices, grams) };
        }
        else if (told.Factor is { } loaves && IsOfLoaves && IsTimed)
        {
            assumed.Add(sentences.Say("asked-side-by-side", ("words", $"{Said(loaves)} x {mass.Words}")));
            told = told with { Factor = null };
        }
        else if (told.Factor is { } factor && IsOfLoaves)
        {
            told = told with { MassGrams = InAll("asked-loaves-of", mass, factor, grams), Factor = null };
        }
    }

    /// <summary>The mass of so many of one mass [g], which is told.</summary>
    private double InAll(string sentence, Clause clause, double count, double grams)
    {
        var total = Math.Round(count * grams, 1);
        assumed.Add(sentences.Say(sentence, ("words", clause.Words), ("count", Said(count)), ("grams", Said(grams)), ("value", Said(total))));
        return total;
    }

    /// <summary>Whether loaves are counted, and no batch is scaled.</summary>
    private bool IsOfLoaves => LoavesCounted is not null;

    /// <summary>The words that count loaves: 'two loaves', or 'two of these' of a loaf; null where none do.</summary>
    private string? LoavesCounted => formula.Shape is not Pieces && All("SLICES").FirstOrDefault(clause => clause.First("ofthese") is not null) is { } these
        ? these.Words
        : lexemes.FirstOrDefault(lexeme => lexeme.Is("loaves"))?.Text;

    /// <summary>So much of one line as somebody has, to which the others are scaled: 'I only have 3 eggs, how much of the rest'.</summary>
    private Clause? ReadRescale()
    {
        var isScaled = lexemes.Any(lexeme => lexeme.Is("rescale")) || All("EGGS").Any(clause => clause.First("amountfor") is not null);
        var isHad = !isScaled && lexemes.Any(lexeme => lexeme.Is("only") || lexeme.Is("left")) && clauses.All(clause => !clause.IsNegated && clause.Means is "UNSUPPORTED" or "EGGS_MOST" or "IDLE" or "SLICES");
        if (told.IsSized || !(isScaled || isHad)
            || All("EGGS", "EGGS_MOST", "UNSUPPORTED").Where(clause => clause.First("thing") is not null && clause.Counts is [_] && !clause.Parts.Any(part => part.Part is "addto" or "more" or "less" or "times" or "byword" or "factor")).ToList() is not [var had]
            || !meaning.IsOwn(had.First("thing")!.Thing!) && had.First("thing")!.Thing!.LeftOut is null
            || meaning.Out(had.First("thing")!) is not { } own)
        {
            return null;
        }

        var lines = formula.Lines.Where(line => line.Ingredient.Equals(own)).ToList();
        var unit = had.First("mass");
        if (isHad && unit is null && TargetClauses.EggsOf(had) is not null)
        {
            // Only three eggs left may be a loaf of the same size with three.
            return null;
        }

        var has = unit is null ? lines.Sum(line => line.Count) : lines.Sum(line => line.Grams.Value);
        if (has is not > 0)
        {
            return null;
        }

        var factor = Math.Round(had.Counts[0] * (unit?.Number("mass") ?? 1) / has.Value, 3);
        if (factor is not (> 0 and <= MostLoaves))
        {
            return null;
        }

        assumed.Add(sentences.Say("asked-rescale", ("words", had.Words), ("factor", Said(factor)), ("value", unit is null ? Said(Math.Round(has.Value, 1)) : $"{Said(Math.Round(has.Value, 1))} g")));
        told = told with { Factor = factor };
        unread.RemoveAll(lexeme => lexeme.Is("rescale") || (isHad && (lexeme.Is("only") || lexeme.Is("left"))));
        return had;
    }

    /// <summary>So much of one line as somebody has, beside another wish: at most that goes in, whatever else changes.</summary>
    private Clause? ReadHad()
    {
        // Where another weight is named, who knows which is had.
        if (told.MassGrams is not null || All("BAKE", "HOW_LONG").Any() || All("UNSUPPORTED", "EGGS_MOST").Where(IsHad).ToList() is not [var had] || meaning.Out(had.First("thing")!) is not { } own)
        {
            return null;
        }

        var lines = formula.Lines.Where(line => line.Ingredient.Equals(own)).ToList();
        var has = lines.Sum(line => line.Grams.Value);
        if ((had.First("mass")?.Number("mass") ?? (lines is [{ Count: > 0 and var count }] ? has / count : null)) is not { } each)
        {
            return null;
        }

        // Fewer than three are two.
        var grams = Math.Round((had.Counts[0] - (had.First("below")?.Is("strict") is true ? 1 : 0)) * each, 1);
        hadAtMost = new AskedTarget(LineMass.Prefix + own.Id, null, grams);
        wanted.Add(hadAtMost);
        unread.RemoveAll(lexeme => ReferenceEquals(lexeme, JustBefore(had.Parts[0].Lexeme)) || lexeme.Is("left"));
        assumed.Add(sentences.Say("asked-line-less", ("words", had.Words), ("ingredient", own.Name), ("grams", Said(grams)), ("value", Said(Math.Round(has, 1)))));
        return had;
    }

    private bool IsHad(Clause clause) =>
        clause is { Counts: [_] } && clause.First("thing") is { Thing: { } thing } name && meaning.IsOwn(thing)
        && clause.Parts.All(part => part.Part is "thing" or "mass" or "only" or "below" or Lexeme.Count)
        && (clause.First("mass") is not null || TargetClauses.EggsOf(clause) is null)
        && (clause.First("only") is not null || clause.First("below") is not null || JustBefore(clause.Parts[0].Lexeme)?.Is("contrasting") is true || Behind(name).FirstOrDefault()?.Is("left") is true);

    /// <summary>A number that stands alone where a formula is made of pieces, as in 'I need 36 for a party'.</summary>
    private void ReadLoneCount()
    {
        if (formula.Shape is not Pieces || told.IsSized || wanted.Count > 0 || All("BAKE", "HOW_LONG", "MEASURE", "CONVERT").Any()
            || unread.Where(lexeme => lexeme.Is(Lexeme.Count)).ToList() is not [var count] || count.Number(Lexeme.Count) is not (>= 2 and <= MostPieces and var pieces) || pieces % 1 != 0)
        {
            return;
        }

        var next = Behind(count).FirstOrDefault();
        if (next is null || next.MayBeSkipped || next.Is("for") || next.Is("join") || next.Is("diet"))
        {
            unread.Remove(count);
            assumed.Add(sentences.Say("asked-so-many", ("count", count.Text)));
            told = told with { Slices = (int)pieces };
        }
    }
}
