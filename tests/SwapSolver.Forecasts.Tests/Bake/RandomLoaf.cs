using CsCheck;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Forecasts.Tests;

/// <summary>Loaves of any kind, size, shape and oven that a kitchen may bake.</summary>
/// <param name="Formula">The formula, with shape and oven.</param>
/// <param name="Core">Core target [°C].</param>
/// <param name="Altitude">Height of the kitchen [m].</param>
internal sealed record RandomLoaf(Formula Formula, double Core, double Altitude)
{
    private static readonly Gen<Shape> Shapes = Gen.OneOf<Shape>(
        Gen.Select(Gen.Double[150, 350], Gen.Double[80, 130]).Select(Shape (sides) => new Tin(new Millimetres(sides.Item1), new Millimetres(sides.Item2), new Millimetres(80))),
        Gen.Const<Shape>(new FreeForm(null, null)),
        Gen.Select(Gen.Double[130, 260], Gen.Double[110, 200]).Select(Shape (sides) => new FreeForm(new Millimetres(sides.Item1), new Millimetres(sides.Item2))),
        Gen.Int[2, 16].Select(Shape (count) => new Pieces(count)));

    /// <summary>Any of them.</summary>
    public static readonly Gen<RandomLoaf> Any =
        Gen.Select(Gen.Int[0, Loaf.All.Count - 1], Gen.Double[400, 2000], Shapes, Gen.Double[150, 230], Gen.Bool, Gen.Double[3, 8], Gen.Double[0, 2500])
            .Select((which, grams, shape, dial, fan, below, metres) => new RandomLoaf(
                (Loaf.All[which].Formula with { Shape = shape, Oven = new Oven(new Celsius(dial), fan) }).OfMass(grams),
                SaturatedWater.BoilingPointAt(StandardAtmosphere.PressureAt(new Metres(metres))).Value - below,
                metres));

    /// <summary>The model that bakes it.</summary>
    public BakeModel Model(BakePractice practice) =>
        new(practice, StandardAtmosphere.PressureAt(new Metres(Altitude)), IsColdStart: false, Draws.Typical);

    /// <summary>Seconds to the core target, in coarse cells.</summary>
    public double Seconds(BakePractice? practice = null) =>
        Model(practice ?? BakeKitchen.Practice).Run(Formula, new Celsius(Core), Doubts.None(), fineness: 3, toSlice: false).Baked ?? throw new InvalidOperationException("never done");
}
