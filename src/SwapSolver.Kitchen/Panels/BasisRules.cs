using System.Collections.Immutable;

namespace SwapSolver.Kitchen.Panels;

/// <summary>What one law says of a panel.</summary>
/// <param name="CarbohydrateHoldsFibre">Whether the line of carbohydrate holds fibre.</param>
/// <param name="Serving">How the weight of a serving is rounded [g].</param>
/// <param name="Rounding">How each line is rounded; every line has a rule.</param>
/// <param name="Words">What each line is called.</param>
public sealed record BasisRules(
    bool CarbohydrateHoldsFibre,
    RoundingRule Serving,
    ImmutableDictionary<PanelLine, RoundingRule> Rounding,
    ImmutableDictionary<PanelLine, LineWords> Words);
