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
    /// <summary>More loaves, or times a formula, are not asked for at a desk [1].</summary>
    private const int MostLoaves = 100;

    /// <summary>A tin so many times as long as wide is a loaf tin [1]; common practice, no source.</summary>
    private const double LongBy = 1.4;

    /// <summary>How many times the formula a bigger loaf is taken to be [1]: from a 1 lb to a 2 lb tin it is a little more; our estimate, no source.</summary>
    private const double Bigger = 1.5;

    /// <summary>How many times the formula a smaller loaf is taken to be [1]; our estimate, no source.</summary>
    private const double Smaller = 0.67;

    /// <summary>A number by itself beside an oven is its heat from this on [degrees]; our estimate, no source.</summary>
    private const int LeastDial = 100;

    /// <summary>A smaller number by itself is no side of a tin [inches]; our estimate, no source.</summary>
    private const int LeastInches = 3;

    /// <summary>Fewer of what a loaf is parted into may be loaves [1]; our estimate, no source.</summary>
    private const int LeastSlices = 4;

    /// <summary>More small loaves of one batch would be rolls [1]; our estimate, no source.</summary>
    private const int MostSmallLoaves = 6;

    private void ReadSizes()
    {
        foreach (var clause in All("SLICES", "MASS", "FACTOR", "NAMED_TIN", "LONG_TIN", "TIN", "SQUARE", "ROUND", "BARE_TIN", "OVEN", "GAS"))
        {
            if (IsTale(clause) || IsOfAnotherTime(clause))
            {
                NotRead(clause.Words);
            }
            else if (IsDose(clause))
            {
                problems.Add(sentences.Say("asked-amount", ("words", clause.Words)));
            }
            else if (IsOfPiece(clause) || !ReadSize(clause))
            {
                unread.AddRange(clause.Parts.Select(part => part.Lexeme));
            }
        }

        ReadSmallLoaves();
        ReadBiggerOrSmaller();
        ReadPieces();
        ReadTogether();
        ReadCut();
        if (new[] { told.Tin is not null, told.MassGrams is not null, told.Factor is not null }.Count(isSaid => isSaid) > 1)
        {
            isTurned = true;
            problems.Add(sentences.Say("asked-sizes", ("words", Phrases.List(All("MASS", "PIECES", "FACTOR", "NAMED_TIN", "LONG_TIN", "TIN", "SQUARE", "ROUND", "BARE_TIN").Select(clause => clause.Words)))));
        }

        if (told.MassGrams is { } dough && !All("BAKE", "HOW_LONG").Any() && lexemes.Any(lexeme => lexeme.Is("weighedbaked")))
        {
            assumed.Add(sentences.Say("asked-dough-weight", ("value", Said(dough))));
        }

        if (told.IsSized && lexemes.FirstOrDefault(IsOfTwoTins) is { } both)
        {
            Refused("asked-unsupported", both.Text);
        }

        if (told.Tin is not null && lexemes.FirstOrDefault(lexeme => lexeme.Is("unchanged") || lexeme.Is("sameamount")) is { } same)
        {
            // For another tin the amounts are others.
            NotRead(same.Text);
        }

        unread.AddRange(All("DEPTH").Where(clause => clause != Depth || told.Tin is null).SelectMany(clause => clause.Parts).Select(part => part.Lexeme));
    }

    /// <summary>The least share of the dough that a weight beside a swap is taken for [1]: less may be what comes in; our estimate, no source.</summary>
    private const double LeastShareOfDough = 0.5;

    /// <summary>Whether a weight may be that of what comes in, as it stands by itself behind a swap: ghee instead of butter, 100 g.</summary>
    private bool IsDose(Clause clause) =>
        clause is { Means: "MASS", Parts: [{ Lexeme: var begun }, { Part: "mass" }] } && Before(begun).LastOrDefault() is { } before
        && (before.Thing is not null || before.Text == "(" || ((before.Is("join") || before.Is(Lexeme.Stop) || before.Text == "is") && (SizeReader.MassOf(clause) ?? 0) < formula.BatterMass.Value * LeastShareOfDough))
        && clauses.TakeWhile(other => other != clause).LastOrDefault() is { IsNegated: false, Means: "REPLACE" or "LACK" };

    /// <summary>Smaller sides beside pieces are no tin's [cm, inches or rows]; our estimate, no source.</summary>
    private const int LeastSideOfTin = 10;

    /// <summary>Whether two sides are those of a piece, or rows of pieces, and of no tin: pieces of 4 x 4 cm; cut 4 x 4.</summary>
    private bool IsOfPiece(Clause clause) =>
        clause.Means == "TIN" && clause.First("tin") is null && clause.Counts.All(side => side < LeastSideOfTin)
        && (Before(clause.Parts[0].Lexeme).LastOrDefault(lexeme => !lexeme.Is(Lexeme.Filler)) is { } before && (before.Is("slice") || before.Is("cutinto") || before.Text is "cut")
            || (clause.First("length") is null && Behind(clause.Parts[^1].Lexeme).FirstOrDefault()?.Is("slice") is true));

    /// <summary>Whether a word is of two tins: both my 1 lb tins.</summary>
    private bool IsOfTwoTins(Lexeme word) =>
        word.Is("both") && !word.Is("either") && Behind(word).FirstOrDefault(next => !next.Is("article") || next.Is("join")) is { } next && (next.Is("tin") || next.Is("loaftin") || next.Is("round") || next.Is("square") || (next.Is(Lexeme.Count) && Behind(next).FirstOrDefault() is { } unit && (unit.Is("mass") || unit.Is("length") || unit.Is("cross"))));

    /// <summary>A bigger loaf, or a smaller one, of which nobody says how large: it is told how large was taken, so that a tin or a weight can be named.</summary>
    private void ReadBiggerOrSmaller()
    {
        if (told.IsSized || formula.Shape is Pieces || All("PIECES", "BAKE", "HOW_LONG").Any() || clauses.Where(clause => clause.First("bigger") is not null).ToList() is not [{ IsNegated: false } clause])
        {
            return;
        }

        // Bigger holes are no bigger loaf.
        var word = clause.First("bigger")!;
        var isOfMore = !word.Text.Contains(' ', StringComparison.Ordinal) && Behind(word).FirstOrDefault() is { } next && !next.MayBeSkipped && !next.Is("join") && !next.Is("out") && !next.Is("below");
        if (isOfMore)
        {
            return;
        }

        if (word.Is("sizeup") || word.Is("sizedown"))
        {
            told = told with { Factor = word.Is("sizeup") ? Bigger : Smaller };
            assumed.Add(sentences.Say("asked-bigger", ("words", word.Text), ("factor", Said(told.Factor.Value))));
        }
    }

    /// <summary>Two small loaves are two of half: the weights and the time are those of one.</summary>
    private void ReadSmallLoaves()
    {
        foreach (var clause in All("SMALL_LOAVES"))
        {
            if (formula.Shape is Pieces || told.IsSized || SizeReader.SlicesOf(clause) is not (> 1 and <= MostSmallLoaves and var count))
            {
                unread.AddRange(clause.Parts.Select(part => part.Lexeme));
                continue;
            }

            told = told with { Factor = ShareOf(clause, count) };
        }
    }

    /// <summary>The share of a batch that one of so many is [1], which is told.</summary>
    private double ShareOf(Clause clause, int count)
    {
        var share = Math.Round(1.0 / count, 4);
        assumed.Add(sentences.Say("asked-small-loaves", ("words", clause.Words), ("count", Said(count)), ("factor", Said(share))));
        return share;
    }

    private bool ReadSize(Clause clause)
    {
        switch (clause.Means)
        {
            case "SLICES" when clause.First("ofthese") is not null && CutOf(clause) is null && !IsOfSingles(clause) && formula.Shape is not Pieces && told.Factor is null && SizeReader.SlicesOf(clause) is > 0 and <= MostLoaves and var loaves:
                assumed.Add(sentences.Say("asked-loaves", ("words", clause.Words)));
                told = told with { Factor = loaves };
                return true;
            // Just six are six pieces; of a loaf they are not six slices.
            case "SLICES" when clause.First("slice") is null && clause.First("serves") is null && CutOf(clause) is null && !IsOfSingles(clause) && formula.Shape is not Pieces:
                return false;
            // Two guests, two different allergies.
            case "SLICES" when Behind(clause.Parts[^1].Lexeme).FirstOrDefault()?.Is("likelyother") is true:
                return false;
            // A loaf split in two is no loaf of two slices, and six small rolls of eight are less dough, or larger.
            case "SLICES" when SizeReader.SlicesOf(clause) is { } cut && (IsOfFewLoaves(clause, cut) || IsOneAskedOf(cut) || IsDial(clause, cut) || IsNoSuchCut(clause, cut)):
                return false;
            case "SLICES" when SizeReader.SlicesOf(clause) is { } slices && (told.Slices is null || told.Slices == slices):
                if (formula.Shape is not Pieces && ((clause.First("slice") ?? CutOf(clause))?.Is("single") is true || IsOfSingles(clause)))
                {
                    assumed.Add(sentences.Say("asked-cut-of-loaf", ("words", clause.Words)));
                }

                if (clause.First("slice")?.Is("person") is true || (clause.First("slice") is null && clause.First("serves")?.Is("feeds") is true))
                {
                    assumed.Add(sentences.Say("asked-slice-each", ("words", clause.Words)));
                }

                told = told with { Slices = slices };
                return true;
            case "MASS" when told.MassGrams is null && SizeReader.MassOf(clause) is { } grams:
                told = told with { MassGrams = grams };
                return true;
            case "FACTOR" when told.Factor is null && SizeReader.FactorOf(clause) is > 0 and <= MostLoaves and var factor:
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
            // One square is a piece of the cake.
            case "SQUARE" or "ROUND" when clause.First("length") is null && clause.Counts is [< LeastInches]:
                return false;
            case "LONG_TIN" or "BARE_TIN" when told.Tin is null && (clause.Means == "LONG_TIN" || IsLoafTin):
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
            case "BARE_TIN" when told.Tin is null && (formula.Shape is Tin || clause.First("tin")?.Is("caketin") is true):
                var (bare, bareTaken) = sizes.RoundTinOf(clause, formula, Depth);
                assumed.Add(sentences.Say("asked-bare-tin", ("words", clause.Words)));
                assumed.AddRange(bareTaken);
                told = told with { Tin = bare };
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

    /// <summary>Whether the formula is one for a long tin, of which one length tells the size.</summary>
    private bool IsLoafTin => formula.Shape is Tin own && own.Length.Value > LongBy * own.Width.Value;

    /// <summary>The same loaf cut into more pieces, or fewer: nothing is said of another size.</summary>
    private void ReadCut()
    {
        if (told is { Slices: null, Tin: null, MassGrams: null, Factor: { } times } && All("FACTOR").FirstOrDefault(IsOfHowMany) is { } many && lexemes.Any(lexeme => lexeme.Is("sameamount")) && times * formula.Slices % 1 == 0)
        {
            // Twice as many of the same dough are no more dough.
            assumed.Add(sentences.Say("asked-same-cut", ("words", many.Words), ("count", Said(times * formula.Slices))));
            told = told with { Slices = (int)(times * formula.Slices), Factor = 1 };
            return;
        }

        if (told is { Slices: null, Tin: null, MassGrams: null, Factor: { } size } && All("FACTOR").FirstOrDefault(IsOfPieceSize) is { } sized && formula.Slices / size % 1 == 0)
        {
            // Slices of half the size are twice as many.
            assumed.Add(sentences.Say("asked-same-cut", ("words", sized.Words), ("count", Said(formula.Slices / size))));
            told = told with { Slices = (int)(formula.Slices / size), Factor = 1 };
            return;
        }

        if (told is { Slices: null, Tin: null, MassGrams: null, Factor: { } larger } && formula.Shape is not Pieces && larger * formula.Slices % 1 == 0 && All("FACTOR").Any(IsOfHowMany))
        {
            assumed.Add(AsLarge((int)(larger * formula.Slices)));
            return;
        }

        if (told is not { Slices: { } slices, Tin: null, MassGrams: null, Factor: null } || All("SLICES").FirstOrDefault() is not { } said)
        {
            return;
        }

        // Smaller ones of the same dough are no smaller batch.
        var isFewer = slices < formula.Slices && lexemes.Any(lexeme => lexeme.Is("weaksame")) && said.Parts[0].Lexeme is var begun && (begun.Is("only") || JustBefore(begun)?.Is("narrow") is true);
        var isSame = !isFewer && lexemes.Any(lexeme => lexeme.Is("sameamount")) && !lexemes.Any(lexeme => lexeme.Is("person"));
        var isScaled = lexemes.Any(lexeme => lexeme.Is("aslarge") || (lexeme.Is("bigger") && !(isSame && lexeme.Is("sizedown"))));
        var cut = isScaled ? null : All("SLICES").FirstOrDefault(IsCut) ?? (isSame ? said : null);
        if (cut is not null)
        {
            assumed.Add(sentences.Say("asked-same-cut", ("words", cut.Words), ("count", Said(slices))));
            told = told with { Factor = 1 };
        }
        else if (formula.Shape is not Pieces && said.First("slice") is { } slice && !slice.Is("person") && !All("FIGURES").Any())
        {
            assumed.Add(AsLarge(slices));
        }
    }

    /// <summary>Whether a factor is of how many there are, and not of how much.</summary>
    private bool IsOfHowMany(Clause factor) => factor.Parts.Any(part => part.Lexeme.Is("asmany")) || Behind(factor.Parts[^1].Lexeme).FirstOrDefault(lexeme => !lexeme.Is("article")) is { } next && next.Is("slice");

    /// <summary>Whether a factor is of how large a slice or a piece is.</summary>
    private bool IsOfPieceSize(Clause factor) => factor.Parts is [.., { Lexeme: var last }] && last.Is("pieceofsize") && (Behind(last).FirstOrDefault()?.Is("slice") is true || JustBefore(factor.Parts[0].Lexeme)?.Is("slice") is true);

    /// <summary>Whether rolls are named before, and counted here: rolls out of it, ten of them.</summary>
    private bool IsOfSingles(Clause clause) =>
        clause.First("ofthese") is not null && (clause.First("slice")?.Is("single") is true || Before(clause.Parts[0].Lexeme).Any(lexeme => lexeme.Is("single")));

    private string AsLarge(int slices) => sentences.Say("asked-as-large", ("count", Said(slices)));

    private static bool IsCut(Clause clause) => CutOf(clause) is not null || clause.First("serves")?.Is("cutinto") is true;

    /// <summary>What is said of the size of slices or pieces: thin slices, six big rolls; null where nothing is.</summary>
    private static Lexeme? CutOf(Clause clause) => clause.First("smallpieces") ?? clause.First("bigpieces");

    private bool IsOfFewLoaves(Clause clause, int count) =>
        formula.Shape is not Pieces && count < LeastSlices && clause.First("slice") is null && clause.First("serves")?.Is("cutinto") is true;

    /// <summary>Whether it is asked what one piece is or weighs: that is no size.</summary>
    private bool IsOneAskedOf(int count) => count == 1 && lexemes.Any(lexeme => lexeme.Is("convert"));

    /// <summary>Whether a number is the heat of an oven: mine only does 160.</summary>
    private bool IsDial(Clause clause, int count) =>
        clause.First("only") is not null && clause.First("slice") is null && count >= LeastDial && lexemes.Any(lexeme => lexeme.Is("bakeword"));

    /// <summary>Whether so many of the same dough would not be smaller, or larger, as is said.</summary>
    private bool IsNoSuchCut(Clause clause, int count) =>
        told.Factor is null && ((clause.First("smallpieces") is not null && count <= formula.Slices) || (clause.First("bigpieces") is not null && count >= formula.Slices));

    private static string Said(double value) => value.ToString(CultureInfo.InvariantCulture);

    /// <summary>How deep the tin is; null where that is not said.</summary>
    private Clause? Depth => All("DEPTH").FirstOrDefault();
}
