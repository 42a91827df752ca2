using SwapSolver.Data.Acids;
using SwapSolver.Data.Files;
using SwapSolver.Data.Tests.Ingredients;
using SwapSolver.Kitchen.Acids;
using SwapSolver.Loaves;

namespace SwapSolver.Data.Tests.Acids;

/// <summary>The shipped acids, bases and powders.</summary>
internal static class ShippedAcids
{
    public static readonly LeaveningChemistry Chemistry =
        AcidFiles.Read(TestKitchen.Folder, SourceKeys.Read(TestKitchen.Folder), ShippedPantry.Pantry);

    public static PureAcid Acid(string id) => Assert.IsType<PureAcid>(Chemistry.Leaveners[id]);
}
