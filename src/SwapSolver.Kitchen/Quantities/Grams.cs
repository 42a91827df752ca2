namespace SwapSolver.Kitchen.Quantities;

/// <summary>A mass [g].</summary>
/// <param name="Value">Grams; 0 or more wherever a line carries it.</param>
public readonly record struct Grams(double Value) : IComparable<Grams>
{
    /// <summary>No mass at all [g].</summary>
    public static readonly Grams None = new(0);

    /// <summary>The mass of both together [g].</summary>
    public static Grams operator +(Grams left, Grams right) => new(left.Value + right.Value);

    /// <summary>What is left of one mass without the other [g].</summary>
    public static Grams operator -(Grams left, Grams right) => new(left.Value - right.Value);

    /// <summary>The mass times a plain number [g].</summary>
    public static Grams operator *(Grams mass, double factor) => new(mass.Value * factor);

    /// <summary>How many times one mass holds the other [1].</summary>
    public static double operator /(Grams left, Grams right) => left.Value / right.Value;

    /// <inheritdoc/>
    public int CompareTo(Grams other) => Value.CompareTo(other.Value);

    /// <summary>Whether the left mass is the smaller.</summary>
    public static bool operator <(Grams left, Grams right) => left.Value < right.Value;

    /// <summary>Whether the left mass is the larger.</summary>
    public static bool operator >(Grams left, Grams right) => left.Value > right.Value;

    /// <summary>Whether the left mass is not the larger.</summary>
    public static bool operator <=(Grams left, Grams right) => left.Value <= right.Value;

    /// <summary>Whether the left mass is not the smaller.</summary>
    public static bool operator >=(Grams left, Grams right) => left.Value >= right.Value;
}
