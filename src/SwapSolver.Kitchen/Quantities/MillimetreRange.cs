namespace SwapSolver.Kitchen.Quantities;

/// <summary>A length with what it may be [mm].</summary>
/// <param name="Low">Low end; not above <paramref name="Value"/>.</param>
/// <param name="Value">The length that is used where one is needed.</param>
/// <param name="High">High end; not below <paramref name="Value"/>.</param>
public readonly record struct MillimetreRange(Millimetres Low, Millimetres Value, Millimetres High);
