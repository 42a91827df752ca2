using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Forecasts;

/// <summary>What a batter is made of, as far as heat cares; the shares add up to one.</summary>
/// <param name="Water">Water [g/g].</param>
/// <param name="Protein">Protein [g/g].</param>
/// <param name="Fat">Fat [g/g].</param>
/// <param name="Carbohydrate">Carbohydrate without its fibre, sugar alcohols within [g/g].</param>
/// <param name="Fibre">Fibre [g/g].</param>
/// <param name="Ash">Ash, salt within [g/g].</param>
internal sealed record Composition(double Water, double Protein, double Fat, double Carbohydrate, double Fibre, double Ash)
{
    /// <summary>The composition of a formula. What a food does not state counts as carbohydrate: it conducts and stores heat as most solids do.</summary>
    public static Composition Of(Formula formula, Draw draw)
    {
        double water = 0, protein = 0, fat = 0, fibre = 0, ash = 0, all = 0;
        foreach (var line in formula.Lines.Where(line => line.Grams.Value > 0))
        {
            var facts = draw(line.Ingredient);
            double Grams(Fact fact) => line.Ingredient.RangeOf(fact) is null ? 0 : facts[fact] * line.Grams.Value;
            // Alcohol is a liquid that leaves with the water.
            water += Grams(Fact.Water) + Grams(Fact.Alcohol);
            protein += Grams(Fact.Protein);
            fat += Grams(Fact.Fat);
            fibre += Grams(Fact.Fibre);
            ash += Grams(Fact.Ash);
            all += line.Grams.Value;
        }

        var rest = Math.Max(0, all - water - protein - fat - fibre - ash);
        var sum = water + protein + fat + fibre + ash + rest;
        return new Composition(water / sum, protein / sum, fat / sum, rest / sum, fibre / sum, ash / sum);
    }
}
