using SwapSolver.Data.Files;
using SwapSolver.Data.Forecasts;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Forecasts.Tests;

/// <summary>The bakes of the shipped data, and the loaves that are put in.</summary>
internal static class BakeKitchen
{
    public static readonly BakePractice Practice = BakeFile.Read(TestKitchen.Folder, SourceKeys.Read(TestKitchen.Folder));

    public static readonly Bake Bake = new(Practice, TestKitchen.Bakehouse.Phrases);

    public static readonly BakeConditions AtSea = new(new Metres(0));

    /// <summary>A nut and seed loaf of so much batter, set on a tray.</summary>
    public static Formula NutAndSeed(double grams) =>
        (Loaf.Walnut with { Shape = new FreeForm(null, null), Oven = new Oven(new Celsius(190), Fan: false) }).OfMass(grams);

    /// <summary>The walnut loaf in a tin in which it bakes to 21 : 11 : 6.5, a quarter below the rim.</summary>
    public static Formula InTin(double grams, double celsius = 175)
    {
        var side = Math.Cbrt(grams * 1e6 / Practice.Crumb.BakedDensityKgPerM3.Range.Typical / (210.0 * 110 * 65));
        var tin = new Tin(new Millimetres(210 * side), new Millimetres(110 * side), new Millimetres(65 * side * 1.25));
        return (Loaf.Walnut with { Shape = tin, Oven = new Oven(new Celsius(celsius), Fan: false) }).OfMass(grams);
    }

    /// <summary>The same formula as so much batter.</summary>
    public static Formula OfMass(this Formula formula, double grams) => formula.Scaled(grams / formula.BatterMass.Value);

    public static BakeForecast Bakes(this Formula formula, BakeConditions? conditions = null) => Bake.Foretell(formula, conditions ?? AtSea, Draws.Typical);

    /// <summary>Minutes to the core target.</summary>
    public static double MinutesOf(this Formula formula, BakeConditions? conditions = null) => formula.Bakes(conditions).TimeToCore!.Value.Value.Value;

    /// <summary>One bake of the model by itself, in cells as fine as asked.</summary>
    public static BakeRun Run(this Formula formula, double core = 96, int fineness = Bake.Coarse, Metres? altitude = null) =>
        new BakeModel(Practice, StandardAtmosphere.PressureAt(altitude ?? new Metres(0)), IsColdStart: false, Draws.Typical)
            .Run(formula, new Celsius(core), Doubts.None(), fineness, toSlice: true);
}
