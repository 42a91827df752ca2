using SwapSolver.Kitchen.Panels;
using SwapSolver.Loaves;
using SwapSolver.OrTools;
using SwapSolver.Solving.Panels;

namespace SwapSolver.Solving.Tests.Panels;

/// <summary>Puts panels to the real solver.</summary>
internal static class Packet
{
    private static readonly OrToolsSolver Solver = new();

    /// <summary>The question.</summary>
    public static PanelComposition Composition { get; } =
        new(Solver, TestPanels.Rules, TestPanels.Foods, TestKitchen.Bakehouse.Phrases);

    /// <summary>What a panel says.</summary>
    public static PanelAnswer Read(NutritionPanel panel, string? like = null) => Composition.Of(
        panel, like is null ? null : TestKitchen.Ingredient(like), Ask.Ample, CancellationToken.None);

    /// <summary>Whether some of a panel's figures can be true together.</summary>
    public static bool CanBeTrue(NutritionPanel panel, PanelHolds holds) => new PanelSolve(
        Solver, new PanelCase(TestPanels.Rules, TestPanels.Foods, panel, null), Ask.Ample, CancellationToken.None).CanBeTrue(holds, family: false);
}
