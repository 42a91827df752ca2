using SwapSolver.Kitchen.Balances;

namespace SwapSolver.Solving.Questions;

/// <summary>A reading that is traded against another.</summary>
/// <param name="Balance">The rule.</param>
/// <param name="Better">The way that is better; not <see cref="Better.Neither"/>.</param>
public sealed record TradedReading(Balance Balance, Better Better)
{
    /// <summary>Whether a level is better than another by more than rounding.</summary>
    internal bool IsBetter(double one, double other)
    {
        var apart = (one - other) * (Better == Better.Lower ? -1 : 1);
        return apart > 1e-7 * Math.Max(Math.Abs(other), 1e-6);
    }
}
