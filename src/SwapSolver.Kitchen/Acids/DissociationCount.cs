namespace SwapSolver.Kitchen.Acids;

/// <summary>How many of a dissociating thing one formula unit sets free in water.</summary>
/// <param name="Dissociation">The thing.</param>
/// <param name="Count">How many, 1 or more.</param>
public sealed record DissociationCount(Dissociation Dissociation, int Count);
