namespace SwapSolver.Kitchen.Quantities;

/// <summary>A span of time with what it may be [min].</summary>
/// <param name="Low">Low end; not above <paramref name="Value"/>.</param>
/// <param name="Value">The span that is used where one is needed.</param>
/// <param name="High">High end; not below <paramref name="Value"/>.</param>
public readonly record struct MinuteRange(Minutes Low, Minutes Value, Minutes High);
