using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Labels;

/// <summary>What is in a whole loaf. Bake loss is water, so nutrients are those of the batter.</summary>
/// <param name="Formula">The formula.</param>
public sealed record LoafContents(Formula Formula)
{
    /// <summary>How much of a fact the loaf holds [g, or kcal of energy]; null where a line does not state it. Unknown is not zero.</summary>
    public PanelAmount? Of(Fact fact) => Formula.States(fact)
        ? new PanelAmount(Formula.Lines.Where(line => line.Grams > Grams.None).Sum(line => line.Ingredient.Typical[fact] * line.Grams.Value))
        : null;

    /// <summary>The carbohydrate of the loaf, by difference and with everything in it; null where a line does not state it.</summary>
    public CountedCarbohydrate? Carbohydrate => Of(Fact.Carbohydrate) is { } grams ? new CountedCarbohydrate(grams, []) : null;
}
