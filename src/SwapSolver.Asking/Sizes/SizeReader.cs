using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;
using SwapSolver.Asking.Grammar;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Asking.Sizes;

/// <summary>Reads sizes of loaves, tins and ovens.</summary>
/// <param name="words">The words of questions.</param>
/// <param name="dials">How ovens are set by other dials.</param>
/// <param name="sentences">The sentences.</param>
internal sealed class SizeReader(QuestionWords words, OvenDials dials, Phrases sentences)
{
    private const string Mass = "mass";

    private const string Length = "length";

    /// <summary>Inner lengths up to this are inches where no unit is said; up to the next one centimetres [1].</summary>
    private const double MostInches = 16;

    /// <summary>No tin is so many inches deep [1]: those are centimetres; our estimate, no source.</summary>
    private const double MostInchesDeep = 5;

    private const double MostCentimetres = 60;

    /// <summary>Measures that tins are sold by [mm3].</summary>
    private static readonly FrozenDictionary<string, double> CubicMillimetres =
        new Dictionary<string, double> { ["litre"] = 1e6, ["ml"] = 1e3 }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>How far the loaf that names a tin may be from the one that is said [1]: 2 lb is 907 g.</summary>
    private const double NearLoaf = 0.03;

    /// <summary>No tin is named by a lighter loaf, nor by a heavier [g]; our estimate, no source.</summary>
    private const double LeastTinGrams = 200;

    private const double MostTinGrams = 2500;

    /// <summary>Less than this is no loaf [g].</summary>
    private const double LeastLoafGrams = 50;

    /// <summary>A piece is no lighter, and no heavier [g]; our estimate, no source.</summary>
    public const double LeastPieceGrams = 15;

    private const double MostPieceGrams = 300;

    /// <summary>A dial above this is in Fahrenheit where no scale is said [degrees].</summary>
    private const double MostCelsius = 260;

    /// <summary>Parts of a clause that are units of a mass: kilos of rolls, a kilo of rolls, 900 g.</summary>
    private static readonly ImmutableArray<string> MassUnits = ["bulk", "onebulk", Mass];

    /// <summary>The mass of a clause; null where it is none of a loaf.</summary>
    public static double? MassOf(Clause clause)
    {
        var unit = MassUnits.First(part => clause.First(part) is not null);
        var grams = (clause.Counts is [var count, ..] ? count : 1) * clause.First(unit)!.Number(unit);
        return grams >= LeastLoafGrams ? Math.Round(grams, 1) : null;
    }

    /// <summary>The mass of one piece of a clause [g]; null where it is none of a piece.</summary>
    public static double? PieceOf(Clause clause) =>
        clause.Counts[^1] * clause.First(Mass)!.Number(Mass) is >= LeastPieceGrams and <= MostPieceGrams and var grams ? Math.Round(grams, 1) : null;

    /// <summary>The slices of a clause, of 'eight instead of twelve' the eight; null where they are no whole number.</summary>
    public static int? SlicesOf(Clause clause) => clause.Counts is [var count, ..] && count is >= 1 and <= 1000 && count % 1 == 0 ? (int)count : null;

    /// <summary>Digits of what is left where a part is taken away: two thirds are 0.667.</summary>
    private const int FactorDigits = 3;

    /// <summary>How many times a clause asks for; a third less are two thirds, and twice less is nothing that is sure, which is not above zero.</summary>
    public static double FactorOf(Clause clause) =>
        clause.First("factor") is not { } word ? clause.Counts[0]
        : clause.First("less") is null ? word.Number("factor")
        : Math.Round(1 - word.Number("factor"), FactorDigits);

    /// <summary>The tin that is named by its loaf; null where none is sold under such a name.</summary>
    public (Tin Tin, string Assumed)? NamedTin(Clause clause)
    {
        var grams = clause.Counts[0] * clause.First(Mass)!.Number(Mass);
        return words.Tins.FirstOrDefault(tin => Math.Abs(grams - tin.Loaf.Value) <= NearLoaf * tin.Loaf.Value) is { Tin: var found }
            ? (found, sentences.Say("asked-named-tin", ("tin", clause.Words), ("size", Words(found))))
            : grams >= LeastTinGrams && grams <= MostTinGrams ? InProportion(clause, grams) : null;
    }

    /// <summary>A tin that is named by another loaf: in the proportions of the next that is known, by what it holds.</summary>
    private (Tin Tin, string Assumed) InProportion(Clause clause, double grams)
    {
        var next = words.Tins.MinBy(tin => Math.Abs(Math.Log(grams / tin.Loaf.Value)))!;
        var tin = TinLike(next.Tin, Math.Cbrt(grams / next.Loaf.Value));
        return (tin, sentences.Say("asked-tin-in-proportion", ("tin", clause.Words), ("size", Words(tin))));
    }

    /// <summary>The tin that is named by what it holds, in the proportions of the formula's own or else of a loaf tin; null where it is named by
    /// no volume of a tin.</summary>
    public (Tin Tin, string Assumed)? TinHolding(Clause clause, Formula formula)
    {
        if (!CubicMillimetres.TryGetValue(clause.First("measure")!.Means("measure"), out var unit))
        {
            return null;
        }

        return Like(clause, formula, like => Math.Cbrt(clause.Counts[0] * unit / (like.Length.Value * like.Width.Value * like.Height.Value)));
    }

    /// <summary>The loaf tin of which only the length is said, in the proportions of the formula's own where that is longer than wide, or else of a
    /// loaf tin.</summary>
    public (Tin Tin, string Assumed) TinOfLength(Clause clause, Formula formula) =>
        Like(clause, formula.Shape is Tin own && own.Length.Value > own.Width.Value ? formula : formula with { Shape = null }, like => clause.Counts[0] * clause.First(Length)!.Number(Length) / like.Length.Value);

    private (Tin Tin, string Assumed) Like(Clause clause, Formula formula, Func<Tin, double> times)
    {
        var like = formula.Shape as Tin ?? words.Tins[^1].Tin;
        var tin = TinLike(like, times(like));
        return (tin, sentences.Say(formula.Shape is Tin ? "asked-tin-holds" : "asked-loaf-tin-holds", ("tin", clause.Words), ("size", Words(tin))));
    }

    /// <summary>The tin of a clause with its sides, and what was taken for granted.</summary>
    public (Tin Tin, ImmutableArray<string> Assumed) TinOf(Clause clause, Formula formula, bool isSquare, Clause? depth = null)
    {
        var counts = isSquare ? [clause.Counts[0], clause.Counts[0]] : clause.Counts;
        var assumed = ImmutableArray.CreateBuilder<string>();
        var unit = clause.All(Length).LastOrDefault()?.Number(Length) ?? Usual(counts, depth);
        if (clause.First(Length) is null)
        {
            assumed.Add(sentences.Say("asked-tin-unit", ("tin", clause.Words), ("unit", sentences.Say(unit > 20 ? "asked-inches" : unit > 1 ? "asked-centimetres" : "asked-millimetres"))));
        }

        var sides = counts.Take(2).Select(side => Math.Round(side * unit)).OrderDescending().ToList();
        var height = depth is not null ? Math.Round(depth.Counts[0] * (depth.First(Length)?.Number(Length) ?? unit))
            : counts.Length > 2 ? Math.Round(counts[2] * unit) : formula.Shape is Tin own ? own.Height.Value : words.Tins[^1].Tin.Height.Value;
        if (counts.Length == 2 && depth is null)
        {
            assumed.Add(sentences.Say("asked-tin-height", ("value", height.ToString(CultureInfo.InvariantCulture))));
        }

        return (TinOf(sides[0], sides[1], height), assumed.ToImmutable());
    }

    /// <summary>The round tin of a clause: tins have sides here, so a square one that holds as much, and what was taken for granted.</summary>
    public (Tin Tin, ImmutableArray<string> Assumed) RoundTinOf(Clause clause, Formula formula, Clause? depth)
    {
        var (across, assumed) = TinOf(clause, formula, isSquare: true, depth);
        // A circle's area by that of the square about it is pi by 4.
        var side = Math.Round(across.Length.Value * Math.Sqrt(Math.PI) / 2);
        var square = TinOf(side, side, across.Height.Value);
        return (square, [.. assumed, sentences.Say("asked-round-tin", ("value", across.Length.Value.ToString(CultureInfo.InvariantCulture)), ("size", Words(square)))]);
    }

    /// <summary>The oven that a gas mark stands for [degrees Celsius], and what was taken for granted; null where no such mark is on a dial.</summary>
    public (double Celsius, string Assumed)? GasOf(Clause clause) =>
        dials.GasMarks.FirstOrDefault(mark => NumberOf(mark.Mark).Equals(clause.Counts[0])) is { } found
            ? (Math.Round(found.Setting.Value), sentences.Say("asked-gas-mark", ("tin", clause.Words), ("value", Math.Round(found.Setting.Value).ToString(CultureInfo.InvariantCulture))))
            : null;

    private static double NumberOf(string mark) => mark.Split('/') is [var top, var bottom]
        ? double.Parse(top, CultureInfo.InvariantCulture) / double.Parse(bottom, CultureInfo.InvariantCulture)
        : double.Parse(mark, CultureInfo.InvariantCulture);

    /// <summary>The dial of a clause [degrees Celsius], and what was taken for granted.</summary>
    public (double Celsius, string? Assumed) OvenOf(Clause clause)
    {
        var dial = clause.First("ovenheat")!.Number("ovenheat");
        var scale = clause.First("degree")?.Text ?? string.Empty;
        var isSaid = scale.Contains('f', StringComparison.Ordinal) || scale.Contains('c', StringComparison.Ordinal);
        var isFahrenheit = isSaid ? scale.Contains('f', StringComparison.Ordinal) : dial > MostCelsius;
        var celsius = isFahrenheit ? Math.Round(Celsius.OfFahrenheit(dial).Value) : dial;
        return (celsius, isSaid ? null : sentences.Say(isFahrenheit ? "asked-fahrenheit" : "asked-celsius", ("value", dial.ToString(CultureInfo.InvariantCulture))));
    }

    /// <summary>How deep a tin is by its bare number; 0 where that is not said, or has a unit.</summary>
    private static double Deepest(ImmutableArray<double> counts, Clause? depth) =>
        depth is not null ? (depth.First(Length) is null ? depth.Counts[0] : 0) : counts.Length > 2 ? counts[2] : 0;

    /// <summary>What bare sides are told in [mm].</summary>
    private static double Usual(ImmutableArray<double> counts, Clause? depth) =>
        counts.Max() <= MostInches && Deepest(counts, depth) < MostInchesDeep ? 25.4 : counts.Max() <= MostCentimetres ? 10 : 1;

    /// <summary>A tin in the proportions of another, so many times as long, wide and high.</summary>
    private static Tin TinLike(Tin like, double times) =>
        TinOf(Math.Round(like.Length.Value * times), Math.Round(like.Width.Value * times), Math.Round(like.Height.Value * times));

    private static Tin TinOf(double length, double width, double height) => new(new Millimetres(length), new Millimetres(width), new Millimetres(height));

    private static string Words(Tin tin) => string.Create(CultureInfo.InvariantCulture, $"{tin.Length.Value} x {tin.Width.Value} x {tin.Height.Value} mm");
}
