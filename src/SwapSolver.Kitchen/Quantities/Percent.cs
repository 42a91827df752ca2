namespace SwapSolver.Kitchen.Quantities;

/// <summary>A share of a hundred [%].</summary>
/// <param name="Value">Percent; 100 is the whole.</param>
public readonly record struct Percent(double Value)
{
    /// <summary>The same as a share of one [1].</summary>
    public double Share => Value / 100;
}
