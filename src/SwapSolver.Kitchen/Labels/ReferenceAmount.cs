using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Labels;

/// <summary>How much of a kind of food a law takes to be eaten at once.</summary>
/// <param name="Food">The kind of food.</param>
/// <param name="Amount">The amount [g]; above 0.</param>
/// <param name="Source">Key of the source.</param>
/// <param name="Mark">How it is known.</param>
public sealed record ReferenceAmount(string Food, Grams Amount, string Source, Mark Mark)
{
    // From 21 CFR 101.9(b)(2)(i) as FDA's inspection guide on the labelling act tells it: shares of the reference amount.
    private const double FewIsBelow = 0.5;

    private const double OneIsFrom = 0.67;

    /// <summary>How many slices of a mass are a serving, least and most: the law leaves one choice open.</summary>
    /// <param name="slice">Mass of a slice as baked [g]; above 0.</param>
    public (int Least, int Most) ServingOf(Grams slice)
    {
        var share = slice / Amount;
        if (share < FewIsBelow)
        {
            // The whole number that comes closest; a tie goes up, as halves do in the law's own servings in a container.
            var nearest = (int)Math.Floor((Amount / slice) + 0.5);
            return (nearest, nearest);
        }

        return share < OneIsFrom ? (1, 2) : (1, 1);
    }

    /// <summary>How many servings a container says it holds: halves between two and five, whole ones beyond.</summary>
    /// <param name="servings">Exactly so many.</param>
    public static PanelAmount ServingsPrinted(PanelAmount servings)
    {
        var exact = (decimal)servings.Value;
        var step = exact is >= 2 and <= 5 ? 0.5m : 1m;
        return new PanelAmount((double)Math.Max(1, Math.Round(exact / step, MidpointRounding.AwayFromZero) * step));
    }
}
