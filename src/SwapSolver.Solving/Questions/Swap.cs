using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Solving.Questions;

/// <summary>So much of one ingredient in place of another.</summary>
/// <param name="From">What goes out.</param>
/// <param name="To">What comes in; null where nothing does.</param>
/// <param name="Grams">How much comes in [g]; null for gram for gram.</param>
public sealed record Swap(Ingredient From, Ingredient? To, Grams? Grams)
{
    /// <summary>How much goes out [g], above 0 and less than the formula has; null for all of it.</summary>
    public Grams? Goes { get; init; }

    /// <summary>How much goes out of a formula [g].</summary>
    internal Grams GoesOutOf(Formula formula) => Goes ?? formula.MassOf(From);
}
