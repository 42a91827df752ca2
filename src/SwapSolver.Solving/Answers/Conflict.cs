using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Solving.Answers;

/// <summary>One of the wishes that fight each other.</summary>
/// <param name="Wish">Id of the wish.</param>
/// <param name="RelaxedValue">Reading that would do if only this wish gave way; null where none does.</param>
/// <param name="Words">The same in plain words.</param>
public sealed record Conflict(string Wish, Level? RelaxedValue, string Words)
{
    /// <summary>The formula that would do if only this wish gave way; null where there is none.</summary>
    public Formula? Formula { get; init; }
}
