namespace SwapSolver.Kitchen.Quantities;

/// <summary>How much of something one gram of an ingredient brings. The unit of that something
/// is named where the coefficient is made [unit/g].</summary>
/// <param name="Value">Amount per gram.</param>
public readonly record struct PerGram(double Value)
{
    /// <summary>Nothing per gram.</summary>
    public static readonly PerGram None = new(0);

    /// <summary>One per gram: the gram itself [g/g].</summary>
    public static readonly PerGram Itself = new(1);
}
