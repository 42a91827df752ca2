using SwapSolver.Data.Files;
using SwapSolver.Data.Ingredients;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Data.Tests.Ingredients;

/// <summary>The shipped ingredients, and the list of those that scripts and formulas rely on.</summary>
internal static class ShippedPantry
{
    /// <summary>One row an ingredient: id, role and USDA food number.</summary>
    public static readonly ReferenceTable Ids = ReferenceTable.Read("Ingredients/Reference/pantry-ids.csv");

    /// <summary>The pantry of the shipped folder.</summary>
    public static readonly Pantry Pantry = PantryFiles.Read(TestKitchen.Folder, SourceKeys.Read(TestKitchen.Folder));
}
