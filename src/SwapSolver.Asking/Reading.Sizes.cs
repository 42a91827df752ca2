using System.Globalization;
using SwapSolver.Asking.Grammar;
using SwapSolver.Asking.Sizes;
using SwapSolver.Asking.Text;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Asking;

/// <content>What size is asked for.</content>
internal sealed partial class Reading
{
    private const int MostLoaves = 100;

    private const int MostPieces = 1000;

    /// <summary>What is lighter than so many of the formula's pieces is one piece.</summary>
    private const double MostOfAPiece = 2.5;

    /// <summary>Pieces so many times lighter than the formula's are none: the mass is that of one.</summary>
    private const int FarLighter = 3;

    private void ReadSizes()
    {
        foreach (var clause in All("SLICES", "MASS", "FACTOR", "NAMED_TIN", "LONG_TIN", "TIN", "SQUARE", "ROUND", "OVEN", "GAS"))
        {
            if (!ReadSize(clause))
            {
                unread.AddRange(clause.Parts.Select(part => part.Lexeme));
            }
        }

        ReadPieces();
        ReadTogether();
        if (new[] { told.Tin is not null, told.MassGrams is not null, told.Factor is not null }.Count(isSaid => isSaid) > 1)
        {
            isTurned = true;
            problems.Add(sentences.Say("asked-sizes", ("words", Phrases.List(All("MASS", "PIECES", "FACTOR", "NAMED_TIN", "LONG_TIN", "TIN", "SQUARE", "ROUND").Select(clause => clause.Words)))));
        }

        unread.AddRange(All("DEPTH").Where(clause => clause != Depth || told.Tin is null).SelectMany(clause => clause.Parts).Select(part => part.Lexeme));
    }

    private bool ReadSize(Clause clause)
    {
        switch (clause.Means)
        {
            case "SLICES" when clause.First("ofthese") is not null && formula.Shape is not Pieces && told.Factor is null && SizeReader.SlicesOf(clause) is > 0 and <= MostLoaves and var loaves:
                assumed.Add(sentences.Say("asked-loaves", ("words", clause.Words)));
                told = told with { Factor = loaves };
                return true;
            // Just six are six pieces; of a loaf they are not six slices.
            case "SLICES" when clause.First("slice") is null && clause.First("serves") is null && formula.Shape is not Pieces:
                return false;
            case "SLICES" when SizeReader.SlicesOf(clause) is { } slices && (told.Slices is null || told.Slices == slices):
                if (formula.Shape is not Pieces && clause.First("slice") is { } kind && kind.Is("single"))
                {
                    assumed.Add(sentences.Say("asked-cut-of-loaf", ("words", clause.Words)));
                }

                if (clause.First("slice")?.Is("person") is true || (clause.First("slice") is null && clause.First("serves") is { } serves && (serves.Text.StartsWith("serv", StringComparison.Ordinal) || serves.Text.StartsWith("feed", StringComparison.Ordinal))))
                {
                    assumed.Add(sentences.Say("asked-slice-each", ("words", clause.Words)));
                }

                told = told with { Slices = slices };
                return true;
            case "MASS" when told.MassGrams is null && SizeReader.MassOf(clause) is { } grams:
                told = told with { MassGrams = grams };
                return true;
            case "FACTOR" when told.Factor is null && SizeReader.FactorOf(clause) is > 0 and <= 100 and var factor:
                told = told with { Factor = factor };
                return true;
            case "NAMED_TIN" when told.Tin is null && clause.First("measure") is not null && sizes.TinHolding(clause, formula) is { } holding:
                assumed.Add(holding.Assumed);
                told = told with { Tin = holding.Tin };
                return true;
            case "NAMED_TIN" when told.Tin is null && clause.First("mass") is not null && sizes.NamedTin(clause) is { } named:
                assumed.Add(named.Assumed);
                told = told with { Tin = named.Tin };
                return true;
            case "LONG_TIN" when told.Tin is null:
                var (like, takenLike) = sizes.TinOfLength(clause, formula);
                assumed.Add(takenLike);
                told = told with { Tin = like };
                return true;
            case "TIN" or "SQUARE" when told.Tin is null:
                var (tin, taken) = sizes.TinOf(clause, formula, clause.Means == "SQUARE", Depth);
                assumed.AddRange(taken);
                told = told with { Tin = tin };
                return true;
            case "ROUND" when told.Tin is null:
                var (round, roundTaken) = sizes.RoundTinOf(clause, formula, Depth);
                assumed.AddRange(roundTaken);
                told = told with { Tin = round };
                return true;
            case "GAS" when told.OvenCelsius is null && sizes.GasOf(clause) is { } gas:
                assumed.Add(gas.Assumed);
                told = told with { OvenCelsius = gas.Celsius, Fan = clause.First("fan") is not null };
                return true;
            case "OVEN" when told.OvenCelsius is null && clause.First("ovenheat") is not null:
                var (celsius, scale) = sizes.OvenOf(clause);
                assumed.AddRange(scale is null ? [] : [scale]);
                told = told with { OvenCelsius = celsius, Fan = clause.First("fan") is not null };
                return true;
            default:
                return false;
        }
    }

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

            var total = Math.Round(count * each, 1);
            assumed.Add(sentences.Say("asked-pieces", ("words", clause.Words), ("count", Said(count)), ("grams", Said(each)), ("value", Said(total))));
            told = told with { Slices = clause.Counts.Length > 1 ? count : told.Slices, MassGrams = total };
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
            assumed.Add(sentences.Say("asked-pieces", ("words", mass.Words), ("count", Said(slices)), ("grams", Said(grams)), ("value", Said(slices * grams))));
            told = told with { MassGrams = slices * grams };
        }
        else if (isOfOne && told.Slices is null && told.Factor is null && grams < formula.BatterMass.Value / formula.Slices * MostOfAPiece)
        {
            assumed.Add(sentences.Say("asked-pieces", ("words", mass.Words), ("count", Said(formula.Slices)), ("grams", Said(grams)), ("value", Said(Math.Round(formula.Slices * grams, 1)))));
            told = told with { MassGrams = Math.Round(formula.Slices * grams, 1) };
        }
        else if (told.Factor is { } loaves && All("BAKE", "HOW_LONG").Any() && IsOfLoaves)
        {
            assumed.Add(sentences.Say("asked-side-by-side", ("words", $"{Said(loaves)} x {mass.Words}")));
            told = told with { Factor = null };
        }
        else if (told.Factor is { } factor && IsOfLoaves)
        {
            assumed.Add(sentences.Say("asked-loaves-of", ("words", mass.Words), ("count", Said(factor)), ("grams", Said(grams)), ("value", Said(factor * grams))));
            told = told with { MassGrams = factor * grams, Factor = null };
        }
    }

    /// <summary>Whether loaves are counted, and no batch is scaled.</summary>
    private bool IsOfLoaves => All("SLICES").Any(clause => clause.First("ofthese") is not null)
        || lexemes.Any(lexeme => lexeme.Is("factor") && Whole.Any(word => lexeme.Text.EndsWith(word, StringComparison.Ordinal)));

    /// <summary>So much of one line as somebody has, to which the others are scaled: 'I only have 3 eggs, how much of the rest'.</summary>
    private Clause? ReadRescale()
    {
        if (told.IsSized || !lexemes.Any(lexeme => lexeme.Is("rescale"))
            || All("EGGS", "EGGS_MOST", "UNSUPPORTED").Where(clause => clause.First("thing") is not null && clause.Counts is [_] && !clause.Parts.Any(part => part.Part is "addto" or "more" or "less" or "times" or "byword" or "factor")).ToList() is not [var had]
            || !meaning.IsOwn(had.First("thing")!.Thing!) && had.First("thing")!.Thing!.LeftOut is null
            || meaning.Out(had.First("thing")!) is not { } own)
        {
            return null;
        }

        var lines = formula.Lines.Where(line => line.Ingredient.Equals(own)).ToList();
        var unit = had.First("mass");
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
        unread.RemoveAll(lexeme => lexeme.Is("rescale"));
        return had;
    }

    /// <summary>A number that stands alone where a formula is made of pieces, as in 'I need 36 for a party'.</summary>
    private void ReadLoneCount()
    {
        if (formula.Shape is not Pieces || told.IsSized || wanted.Count > 0 || All("BAKE", "HOW_LONG", "MEASURE", "CONVERT").Any()
            || unread.Where(lexeme => lexeme.Is(Lexeme.Count)).ToList() is not [var count] || count.Number(Lexeme.Count) is not (>= 2 and <= MostPieces and var pieces) || pieces % 1 != 0)
        {
            return;
        }

        var next = lexemes.SkipWhile(lexeme => !ReferenceEquals(lexeme, count)).Skip(1).FirstOrDefault();
        if (next is null || next.MayBeSkipped || next.Is("for") || next.Is("join") || next.Is("diet"))
        {
            unread.Remove(count);
            assumed.Add(sentences.Say("asked-so-many", ("count", count.Text)));
            told = told with { Slices = (int)pieces };
        }
    }

    private static string Said(double value) => value.ToString(CultureInfo.InvariantCulture);

    /// <summary>How deep the tin is; null where that is not said.</summary>
    private Clause? Depth => All("DEPTH").FirstOrDefault();
}
