using CsCheck;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts.Tests;

/// <summary>What every baker knows of any loaf, on a thousand of them.</summary>
public sealed class BakeLaws
{
    private const int Loaves = 1000;

    [Fact]
    public void More_takes_longer_and_hotter_is_sooner() =>
        RandomLoaf.Any.Sample(
            loaf =>
            {
                var time = loaf.Seconds();
                var (formula, oven) = (loaf.Formula, BakeKitchen.Practice.Oven);

                Assert.True((loaf with { Formula = Larger(formula, 1.25) }).Seconds() > time, "more of the same shape takes longer");
                Assert.True((loaf with { Formula = formula.OfMass(formula.BatterMass.Value * 1.25) }).Seconds() > time, "a deeper or larger loaf takes longer");
                Assert.True((loaf with { Core = loaf.Core + 1.5 }).Seconds() > time, "a higher core takes longer");
                Assert.True((loaf with { Formula = formula with { Oven = formula.Oven! with { Dial = new Celsius(formula.Oven.Dial.Value + 15) } } }).Seconds() < time, "a hotter oven is sooner");
                Assert.True(
                    loaf.Seconds(BakeKitchen.Practice with { Oven = oven with { FanWPerM2K = Times(oven.FanWPerM2K, 1.5), StillAirWPerM2K = Times(oven.StillAirWPerM2K, 1.5) } }) < time,
                    "more heat transfer is sooner");
                Assert.True(loaf.Seconds(BakeKitchen.Practice with { Oven = oven with { StartCelsius = Times(oven.StartCelsius, 1.4) } }) < time, "a warmer batter is sooner");
            },
            iter: Loaves);

    private static Formula Larger(Formula formula, double factor)
    {
        var side = Math.Cbrt(factor);
        Millimetres Of(Millimetres length) => new(length.Value * side);
        return formula.OfMass(formula.BatterMass.Value * factor) with
        {
            Shape = formula.Shape switch
            {
                Tin tin => new Tin(Of(tin.Length), Of(tin.Width), Of(tin.Height)),
                FreeForm { Length: { } length, Width: { } width } => new FreeForm(Of(length), Of(width)),
                var other => other,
            },
        };
    }

    private static Figure Times(Figure figure, double factor) =>
        figure with { Range = new(figure.Range.Low * factor, figure.Range.Typical * factor, figure.Range.High * factor) };
}
