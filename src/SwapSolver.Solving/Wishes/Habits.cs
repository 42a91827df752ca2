using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Solving.Wishes;

/// <summary>How a kitchen wants its answers.</summary>
/// <param name="NewIngredients">Most ingredients that may be new, 0 to 5.</param>
/// <param name="WeighedEgg">Whether eggs may be weighed; else they come whole.</param>
/// <param name="EggSize">Size of the eggs that are not yet counted in the formula.</param>
/// <param name="ScaleStep">Step of the kitchen scale for the large lines [g].</param>
/// <param name="Answers">Most answers, 1 to 3.</param>
/// <param name="Sureness">Of 100 kitchens, in how many the answer must balance at least, 50 to 99; null for no such wish.</param>
/// <param name="ExplainModel">Whether answers show the model that they are the answer to.</param>
public sealed record Habits(int NewIngredients, bool WeighedEgg, EggSize EggSize, Grams ScaleStep, int Answers, Percent? Sureness = null, bool ExplainModel = false)
{
    /// <summary>Two new ingredients, whole large US eggs, a scale of 1 g, three answers.</summary>
    public static readonly Habits Usual = new(2, false, EggSize.LargeUs, new Grams(1), 3);

    /// <summary>Ingredients that may be new besides those that are offered, since the caller names them.</summary>
    public ImmutableArray<Ingredient> Named { get; init; } = [];

    /// <summary>The step in which an ingredient is weighed [g]: its own where that is finer than a gram, else the scale's.</summary>
    public Grams StepOf(Ingredient ingredient) =>
        ingredient.Usage.ScaleStep < new Grams(1) ? ingredient.Usage.ScaleStep : ScaleStep;
}
