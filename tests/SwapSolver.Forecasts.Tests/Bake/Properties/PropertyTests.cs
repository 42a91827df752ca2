using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Forecasts.Tests;

public sealed class PropertyTests
{
    private static readonly ReferenceTable Components = ReferenceTable.Read("Bake/Reference/components.csv");

    private static readonly ReferenceTable Foods = ReferenceTable.Read("Bake/Reference/foods.csv");

    private static readonly ThermalComponents Shipped = BakeKitchen.Practice.Components;

    public static TheoryData<string> ComponentRows => [.. Components.Names];

    public static TheoryData<string> FoodRows => [.. Foods.Names];

    [Theory]
    [MemberData(nameof(ComponentRows))]
    public void A_component_is_as_tabled(string name)
    {
        var row = Components[name];
        var component = row["component"] switch
        {
            "water" => Shipped.Water,
            "protein" => Shipped.Protein,
            "fat" => Shipped.Fat,
            "carbohydrate" => Shipped.Carbohydrate,
            "fibre" => Shipped.Fibre,
            _ => Shipped.Ash,
        };
        var celsius = row.Number("celsius");
        Assert.Equal(1, component.Conductivity.At(celsius) / row.Number("conductivity"), row.Tolerance);
        Assert.Equal(1, component.Density.At(celsius) / row.Number("density"), row.Tolerance);
        Assert.Equal(1, component.Heat.At(celsius) / row.Number("heat"), row.Tolerance);
    }

    [Theory]
    [MemberData(nameof(FoodRows))]
    public void A_food_is_as_measured_or_worked_out(string name)
    {
        var row = Foods[name];
        var matter = new CondensedMatter(
            new Composition(row.Number("water"), row.Number("protein"), row.Number("fat"), row.Number("carbohydrate"), row.Number("fibre"), row.Number("ash")), Shipped);
        var celsius = row.Number("celsius");
        var figure = row["asks"] switch
        {
            "heat" => matter.HeatAt(celsius) / 1000,
            "density" => matter.DensityAt(celsius),
            "parallel" => matter.ParallelConductivityAt(celsius),
            _ => matter.SeriesConductivityAt(celsius),
        };
        Assert.True(row.Agrees(figure), row.Against(figure));
    }

    [Fact]
    public void A_side_of_lamb_gives_off_as_much_as_the_handbook_says()
    {
        // The same example: 150 kg from 10 to 0 °C; the heat of 5,390 kJ is from memory, 5,386 by its own components.
        var lamb = new CondensedMatter(new Composition(.7342, .2029, .0525, 0, 0, .0106), Shipped);
        Assert.Equal(5386, 150 * 10 * lamb.HeatAt(5) / 1000, 5.0);
    }

    [Fact]
    public void Frozen_pork_of_the_handbook_mixes_as_printed()
    {
        // ASHRAE Handbook 2006 chapter 9, lean pork shoulder at -40 °C (memory): ice .6125, water .1138; mixture 996.2 kg/m3,
        // conductivity 1.831 side by side and .492 one behind another, 0.2 %. Ice, which no oven has, stands in for carbohydrate.
        var ice = new ThermalComponent(
            new Polynomial(2.2196, -6.2489e-3, 1.0154e-4), new Polynomial(9.1689e2, -1.3071e-1, 0), new Polynomial(2.0623, 6.0769e-3, 0), "memory", Mark.Memory);
        var pork = new CondensedMatter(new Composition(.1138, .1955, .0714, .6125, 0, .0102), Shipped with { Carbohydrate = ice });
        Assert.Equal(1, pork.DensityAt(-40) / 996.2, 0.002);
        Assert.Equal(1, pork.ParallelConductivityAt(-40) / 1.831, 0.002);
        Assert.Equal(1, pork.SeriesConductivityAt(-40) / 0.492, 0.002);
    }

    [Theory]
    // Reference notes on bakes, section 1.4: what steam adds to the conductivity of a bubble, W/(m K); calculated apart from this code.
    [InlineData(101.325, 20, 0.065)]
    [InlineData(101.325, 40, 0.194)]
    [InlineData(101.325, 60, 0.543)]
    [InlineData(101.325, 80, 1.76)]
    [InlineData(101.325, 90, 4.28)]
    [InlineData(84.6, 60, 0.684)]
    [InlineData(84.6, 80, 2.55)]
    public void Steam_carries_heat_through_a_bubble(double kilopascals, double celsius, double published)
    {
        var pressure = kilopascals * 1000;
        var found = PorousMatter.VapourConductivity(celsius, pressure, SaturatedWater.BoilingPointAt(new Pascals(pressure)).Value);
        Assert.Equal(1, found / published, 0.02);
    }

    [Theory]
    // Zanoni, Peri and Gianotti 1995, measured: diffusivity exp(0.01 porosity - 15.25) m2/s, porosity in %, and density
    // 979 - 9.90 porosity kg/m3; with a heat of 2.8 kJ/(kg K) their conductivity of hot wet crumb. A quarter either way.
    [InlineData(40)]
    [InlineData(60)]
    public void Wet_crumb_conducts_as_it_was_measured_to(double porosity)
    {
        var measured = Math.Exp((0.01 * porosity) - 15.25) * (979 - (9.90 * porosity)) * 2800;
        Assert.InRange(MeanConductivity(porosity / 100, share: 0.4) / measured, 0.75, 1.25);
    }

    [Theory]
    [InlineData(40)]
    [InlineData(60)]
    public void Steam_carries_about_half_of_the_heat_in_hot_bread(double porosity)
    {
        // Zhang and others 2025, Foods 14:1649: evaporation, diffusion and condensation in closed pores make about 60 % of the
        // conductivity of bread as it bakes; 40 to 70 % is allowed for breads of 40 to 60 % pores.
        var (with, without) = (MeanConductivity(porosity / 100, share: 0.4), MeanConductivity(porosity / 100, share: 0));
        Assert.InRange(1 - (without / with), 0.4, 0.7);
    }

    [Fact]
    public void Pores_lie_between_the_bounds()
    {
        // Maxwell and Eucken's rule lies between side by side and one behind another, whatever the pores.
        foreach (var porosity in new[] { 0.05, 0.3, 0.6, 0.9 })
        {
            var found = PorousMatter.Conductivity(0.45, 0.028, porosity);
            Assert.InRange(found, 1 / (((1 - porosity) / 0.45) + (porosity / 0.028)), ((1 - porosity) * 0.45) + (porosity * 0.028));
        }
    }

    private static double MeanConductivity(double porosity, double share) => Enumerable.Range(25, 71).Average(celsius =>
        PorousMatter.WetConductivity(0.47, porosity, PorousMatter.VapourConductivity(celsius, Pascals.Atmosphere.Value, 99.97), share));
}
