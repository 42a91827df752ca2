namespace SwapSolver.Kitchen.Quantities;

/// <summary>A volume [mL].</summary>
/// <param name="Value">Millilitres, 0 or more.</param>
public readonly record struct Millilitres(double Value)
{
    /// <summary>The volume times a plain number [mL].</summary>
    public static Millilitres operator *(Millilitres volume, double factor) => new(volume.Value * factor);

    /// <summary>How many times one volume holds the other [1].</summary>
    public static double operator /(Millilitres left, Millilitres right) => left.Value / right.Value;
}
