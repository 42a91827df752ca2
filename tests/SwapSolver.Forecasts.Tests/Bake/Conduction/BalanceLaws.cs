using CsCheck;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts.Tests;

/// <summary>Nothing is lost in the oven but what goes out as steam.</summary>
public sealed class BalanceLaws
{
    private const int Loaves = 1000;

    [Fact]
    public void Heat_and_water_are_accounted_for() =>
        RandomLoaf.Any.Sample(
            loaf =>
            {
                var model = loaf.Model(BakeKitchen.Practice);
                var density = BakeKitchen.Practice.Crumb.BakedDensityKgPerM3.Range.Typical;
                var crumb = model.CrumbOf(loaf.Formula, density, Doubts.None());
                var solid = LoafBody.Of(loaf.Formula, density, BakeKitchen.Practice.Oven, Doubts.None()).Cut(4);
                var flow = new HeatFlow(solid, crumb, 20);
                var (heat, water) = (flow.Enthalpy, flow.Water);
                var drying = new SkinDrying(0.2, StandardAtmosphere.PressureAt(new Metres(loaf.Altitude)).Value, 0.97, static face => face == Face.Top);
                var oven = new Surroundings(_ => loaf.Formula.Oven!.Dial.Value, 8, 0, static _ => 0.9, 0, drying);

                Assert.NotNull(flow.Until(oven, () => flow.Coldest, loaf.Core, 12 * 3600));
                Assert.True(flow.Boiled > 0 && flow.Dried > 0, $"{flow.Boiled} boiled, {flow.Dried} dried");

                // What came in through the skin is in the loaf or went off with its steam: to a ten-thousandth of it.
                Assert.InRange((flow.Enthalpy + flow.SteamHeat - heat) / flow.HeatTaken, 1 - 1e-4, 1 + 1e-4);
                Assert.Equal(1, (flow.Water + flow.Boiled + flow.Dried) / water, 1e-6);
                Assert.All(flow.WaterDensities, held => Assert.True(held > 0, $"{held} kg/m3"));
                // Crumb that is wet is never hotter than its water boils.
                Assert.All(
                    flow.Celsius.Zip(flow.WaterDensities),
                    cell => Assert.True(cell.First <= crumb.Boiling + 1e-9 || cell.Second <= crumb.CrustWaterDensity + 1e-9, cell.ToString()));
                // A core that rises passes no cell of the loaf from below: the coldest is the coldest.
                Assert.True(flow.Celsius.Min() >= flow.Coldest - 0.5, $"{flow.Celsius.Min()} beside {flow.Coldest}");
            },
            iter: Loaves);

    [Fact]
    public void A_loaf_in_a_kitchen_of_its_own_temperature_stays_as_it_is()
    {
        var formula = BakeKitchen.InTin(800);
        var model = new BakeModel(BakeKitchen.Practice, Pascals.Atmosphere, IsColdStart: false, Draws.Typical);
        var flow = new HeatFlow(LoafBody.Of(formula, 700, BakeKitchen.Practice.Oven, Doubts.None()).Cut(4), model.CrumbOf(formula, 700, Doubts.None()), 21);
        flow.For(new Surroundings(_ => 21, 8, 0, static _ => 0.9, 0, SkinDrying.None), 3600);

        Assert.All(flow.Celsius, celsius => Assert.Equal(21, celsius, 1e-9));
        Assert.Equal(0, flow.HeatTaken, 1e-6);
    }
}
