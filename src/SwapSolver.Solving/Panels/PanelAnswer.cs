using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Solving.Panels;

/// <summary>What a panel says of the food in the bag.</summary>
/// <param name="Figures">Composition per 100 g with its ranges; the typical values together are one composition that fits
/// every printed figure. Empty where the panel is refused or time ran out.</param>
/// <param name="Notes">What was taken for granted, in sentences.</param>
/// <param name="Clash">Why the panel cannot be true; null where it can.</param>
/// <param name="EndedEarly">Whether the time ran out; nothing is said then.</param>
public sealed record PanelAnswer(
    ImmutableDictionary<Fact, Figure> Figures, ImmutableArray<string> Notes, PanelClash? Clash, bool EndedEarly)
{
    /// <summary>The time ran out.</summary>
    public static readonly PanelAnswer OutOfTime = new(ImmutableDictionary<Fact, Figure>.Empty, [], null, true);

    /// <summary>A panel that cannot be true.</summary>
    public static PanelAnswer Refused(PanelClash clash) => new(ImmutableDictionary<Fact, Figure>.Empty, [], clash, false);
}
