namespace SwapSolver.Kitchen.Quantities;

/// <summary>How many of a measure, as written: one number, or a range of them [1].</summary>
/// <param name="Low">Low end, 0 or more.</param>
/// <param name="High">High end; not below <paramref name="Low"/>.</param>
public readonly record struct Amount(double Low, double High)
{
    /// <summary>One of it.</summary>
    public static readonly Amount One = new(1, 1);

    /// <summary>The middle of the range [1].</summary>
    public double Middle => (Low + High) / 2;

    /// <summary>Exactly so many.</summary>
    public static Amount Of(double number) => new(number, number);

    /// <summary>So many of so many, as 2 x 400 g.</summary>
    public static Amount operator *(Amount left, Amount right) => new(left.Low * right.Low, left.High * right.High);
}
