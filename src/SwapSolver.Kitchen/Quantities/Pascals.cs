namespace SwapSolver.Kitchen.Quantities;

/// <summary>A pressure [Pa].</summary>
/// <param name="Value">Pascals, above 0; a standard atmosphere is 101,325.</param>
public readonly record struct Pascals(double Value)
{
    /// <summary>The standard atmosphere [Pa], by definition.</summary>
    public static readonly Pascals Atmosphere = new(101_325);
}
