using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Solving.Answers;

/// <summary>So much of something that stands in for leavening.</summary>
/// <param name="Ingredient">What it is.</param>
/// <param name="Exact">The dose before it is rounded [g]: equivalents are kept to the last digits.</param>
/// <param name="Weighed">The dose in steps of the scale [g].</param>
/// <param name="Equivalents">Acid, or bicarbonate, that the exact dose stands for [mmol].</param>
public sealed record LeaveningDose(Ingredient Ingredient, Grams Exact, Grams Weighed, Millimoles Equivalents)
{
    /// <summary>The step of a finer scale that the dose asks for [g]; null where the usual one does.</summary>
    public Grams? FinerStep { get; init; }
}
