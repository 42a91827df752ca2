using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Panels;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Labels;

/// <summary>How much of a nutrient a law reckons with in a day.</summary>
/// <param name="Amount">The day's amount, in the unit of its line; above 0.</param>
/// <param name="Rounding">How a percentage of it is printed.</param>
/// <param name="Source">Key of the source.</param>
/// <param name="Mark">How it is known.</param>
public sealed record DailyValue(PanelAmount Amount, RoundingRule Rounding, string Source, Mark Mark)
{
    /// <summary>What share of the day an amount is, as the law prints it [%].</summary>
    /// <param name="amount">The amount, not rounded: 0.48 g are some share even where 0 g is printed.</param>
    public Percent ShareOf(PanelAmount amount) =>
        // In decimals: 235 mg of 4700 mg are 5 % and not a hair less, and the law's steps are halved there.
        new(Rounding.Print(new PanelAmount((double)((decimal)amount.Value * 100 / (decimal)Amount.Value))).Value.Value);
}
