using System.Collections.Immutable;

namespace SwapSolver.Solving.Panels;

/// <summary>Why a panel cannot be true.</summary>
/// <param name="Figures">Figures that cannot be true together; without any one of them the rest of these can.</param>
/// <param name="Words">The same in a sentence.</param>
public sealed record PanelClash(ImmutableArray<ClashingFigure> Figures, string Words);
