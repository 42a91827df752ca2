using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Quantities;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Forecasts;

/// <summary>Measures how a batter fills its tin.</summary>
/// <param name="Practice">What the forecast goes by.</param>
internal sealed record TinFilling(BakePractice Practice)
{
    /// <summary>Most tins that are named.</summary>
    private const int MostNamed = 3;

    /// <summary>The filling of a formula's tin; null where it has none.</summary>
    public TinFill? Of(Formula formula)
    {
        if (formula.Shape is not Tin tin)
        {
            return null;
        }

        // Grams by kilograms a cubic metre are millilitres times a thousandth; a thousand of those are cubic millimetres.
        var grams = formula.BatterMass.Value * 1e6;
        var (baked, batter) = (Volume(grams, Practice.Crumb.BakedDensityKgPerM3.Range), Volume(grams, Practice.Crumb.BatterDensityKgPerM3.Range));
        var (floor, room) = (tin.Length.Value * tin.Width.Value, CubicMillimetres(tin));
        return new TinFill(
            Height(batter, floor),
            Height(baked, floor),
            new PercentRange(Share(baked.Low, room), Share(baked.Typical, room), Share(baked.High, room)),
            baked.Typical > room ? FillStanding.Overflows : baked.High > room ? FillStanding.MayOverflow : FillStanding.Fits,
            [.. Choices(formula).Take(MostNamed)]);
    }

    /// <summary>Batter that fills a tin well [g]: baked, it stands as high in it as a loaf should.</summary>
    public Grams Well(Tin tin) => new(Practice.FullPercent.Range.Typical / 100 * Practice.Crumb.BakedDensityKgPerM3.Range.Typical * CubicMillimetres(tin) / 1e6);

    /// <summary>Tins that shops sell and that a formula would fill well, the best first.</summary>
    public IEnumerable<TinChoice> Choices(Formula formula)
    {
        var (full, baked) = (Practice.FullPercent.Range, formula.BatterMass.Value * 1e6 / Practice.Crumb.BakedDensityKgPerM3.Range.Typical);
        return Practice.Tins.Select(choice => new TinChoice(choice, Share(baked, CubicMillimetres(choice.Tin))))
            .Where(choice => choice.Full.Value >= full.Low && choice.Full.Value <= full.High)
            .OrderBy(choice => Math.Abs(choice.Full.Value - full.Typical));
    }

    private static Range Volume(double grams, Range density) => new(grams / density.High, grams / density.Typical, grams / density.Low);

    private static MillimetreRange Height(Range volume, double floor) =>
        new(new Millimetres(volume.Low / floor), new Millimetres(volume.Typical / floor), new Millimetres(volume.High / floor));

    private static Percent Share(double volume, double room) => new(100 * volume / room);

    private static double CubicMillimetres(Tin tin) => tin.Length.Value * tin.Width.Value * tin.Height.Value;
}
