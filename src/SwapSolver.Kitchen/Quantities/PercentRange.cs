namespace SwapSolver.Kitchen.Quantities;

/// <summary>A share of a hundred with what it may be [%].</summary>
/// <param name="Low">Low end; not above <paramref name="Value"/>.</param>
/// <param name="Value">The share that is used where one is needed.</param>
/// <param name="High">High end; not below <paramref name="Value"/>.</param>
public readonly record struct PercentRange(Percent Low, Percent Value, Percent High);
