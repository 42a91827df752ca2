using System.Collections.Immutable;

namespace SwapSolver.Kitchen.Panels;

/// <summary>What was read of a panel.</summary>
/// <param name="Panel">The panel; null where there are problems.</param>
/// <param name="Problems">Every mistake; empty where there is none.</param>
public sealed record PanelReading(NutritionPanel? Panel, ImmutableArray<PanelProblem> Problems);
