using System.Collections.Immutable;
using System.Globalization;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Forecasts;

/// <summary>What a baker may do otherwise with a loaf: oven, fan, mass, tin or tray, height; one at a time.</summary>
/// <param name="Practice">What the forecast goes by.</param>
/// <param name="Phrases">How each is said.</param>
internal sealed record BakeVariations(BakePractice Practice, Phrases Phrases)
{
    /// <summary>By how much the dial is turned [K], and where it ends [°C].</summary>
    private const double Turn = 15, LeastDial = 50, MostDial = 350;

    /// <summary>The other height that is looked at [m]; from half of it up it is the sea.</summary>
    private const double OtherHeight = 1500;

    /// <summary>Measures of tins that differ by no more than this are those of one tin [mm].</summary>
    private const double SameTin = 6;

    /// <summary>Each of them that can be done with a formula.</summary>
    public IEnumerable<(string What, Formula Formula, Metres Altitude)> Of(Formula formula, Metres altitude)
    {
        var oven = formula.Oven ?? new Oven(new Celsius(Practice.Oven.DialCelsius.Range.Typical), Fan: false);
        foreach (var dial in new[] { oven.Dial.Value + Turn, oven.Dial.Value - Turn }.Where(dial => dial is >= LeastDial and <= MostDial))
        {
            yield return (Say("bake-otherwise-oven", dial), formula with { Oven = oven with { Dial = new Celsius(dial) } }, altitude);
        }

        yield return (Phrases.Say(oven.Fan ? "bake-otherwise-still" : "bake-otherwise-fan"), formula with { Oven = oven with { Fan = !oven.Fan } }, altitude);
        yield return (Phrases.Say("bake-otherwise-twice"), OfSize(formula, 2), altitude);
        yield return (Phrases.Say("bake-otherwise-half"), OfSize(formula, 0.5), altitude);
        foreach (var choice in OtherTins(formula).Take(1))
        {
            yield return (Phrases.Say("bake-otherwise-tin", ("to", choice.Tin.Name)), formula with { Shape = choice.Tin.Tin }, altitude);
        }

        if (formula.Shape is Tin or Pieces)
        {
            yield return (Phrases.Say("bake-otherwise-tray"), formula with { Shape = new FreeForm(null, null) }, altitude);
        }

        var height = altitude.Value < OtherHeight / 2 ? OtherHeight : 0;
        yield return (Say("bake-otherwise-height", height), formula, new Metres(height));
    }

    /// <summary>So many times the formula, longer, wider and higher alike.</summary>
    private static Formula OfSize(Formula formula, double factor)
    {
        var side = Math.Cbrt(factor);
        Millimetres Of(Millimetres length) => new(length.Value * side);
        return formula.Scaled(factor) with
        {
            Shape = formula.Shape switch
            {
                Tin tin => new Tin(Of(tin.Length), Of(tin.Width), Of(tin.Height)),
                FreeForm free => free.Scaled(factor),
                var other => other,
            },
        };
    }

    private ImmutableArray<TinChoice> OtherTins(Formula formula) =>
    [
        .. new TinFilling(Practice).Choices(formula).Where(choice => formula.Shape is not Tin own || !IsSame(own, choice.Tin.Tin)),
    ];

    private static bool IsSame(Tin one, Tin other) =>
        Math.Abs(one.Length.Value - other.Length.Value) <= SameTin && Math.Abs(one.Width.Value - other.Width.Value) <= SameTin;

    private string Say(string id, double value) => Phrases.Say(id, ("value", value.ToString("0", CultureInfo.InvariantCulture)));
}
