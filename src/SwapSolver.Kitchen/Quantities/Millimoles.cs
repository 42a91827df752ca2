namespace SwapSolver.Kitchen.Quantities;

/// <summary>An amount of a substance, or of its protons [mmol].</summary>
/// <param name="Value">Millimoles.</param>
public readonly record struct Millimoles(double Value)
{
    /// <summary>Nothing of it [mmol].</summary>
    public static readonly Millimoles None = new(0);

    /// <summary>Both together [mmol].</summary>
    public static Millimoles operator +(Millimoles left, Millimoles right) => new(left.Value + right.Value);

    /// <summary>What is left of one without the other [mmol].</summary>
    public static Millimoles operator -(Millimoles left, Millimoles right) => new(left.Value - right.Value);

    /// <summary>The amount times a plain number [mmol].</summary>
    public static Millimoles operator *(Millimoles amount, double factor) => new(amount.Value * factor);
}
