using System.Collections.Immutable;
using SwapSolver.Kitchen.Panels;

namespace SwapSolver.Solving.Panels;

/// <summary>Which of a panel's printed figures must be true.</summary>
/// <param name="Lines">Lines that must be true.</param>
/// <param name="Serving">Whether the weight of the serving must be.</param>
internal sealed record PanelHolds(ImmutableHashSet<PanelLine> Lines, bool Serving)
{
    /// <summary>Everything that is printed.</summary>
    public static PanelHolds All(NutritionPanel panel) => new([.. panel.Figures.Keys], Serving: true);

    /// <summary>The same without a line, or without the serving where it is null.</summary>
    public PanelHolds Without(PanelLine? line) =>
        line is { } one ? this with { Lines = Lines.Remove(one) } : this with { Serving = false };
}
