namespace SwapSolver.Kitchen.Acids;

/// <summary>How many of an ion one formula unit sets free in water.</summary>
/// <param name="Ion">The ion.</param>
/// <param name="Count">How many, 1 or more.</param>
public sealed record IonCount(Ion Ion, int Count);
