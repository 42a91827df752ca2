namespace SwapSolver.Kitchen.Quantities;

/// <summary>A pH with what it may be [pH].</summary>
/// <param name="Low">Low end; not above <paramref name="Value"/>.</param>
/// <param name="Value">The pH that is used where one is needed.</param>
/// <param name="High">High end; not below <paramref name="Value"/>.</param>
public readonly record struct PhRange(Ph Low, Ph Value, Ph High);
