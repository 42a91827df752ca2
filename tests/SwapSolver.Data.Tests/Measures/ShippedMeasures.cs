using SwapSolver.Data.Files;
using SwapSolver.Data.Measures;
using SwapSolver.Data.Tests.Ingredients;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Loaves;

namespace SwapSolver.Data.Tests.Measures;

/// <summary>The shipped measures.</summary>
internal static class ShippedMeasures
{
    public static readonly MeasureTables Tables = MeasureFiles.Read(TestKitchen.Folder, SourceKeys.Read(TestKitchen.Folder), ShippedPantry.Pantry);

    public static Unit Unit(string name) => Tables.Units.Single(unit => unit.Names.Contains(name));
}
