using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Kitchen.Foods;

/// <summary>The kitchen test for water bound: weigh, soak, drain, weigh. It reads what the ingredient holds when it has
/// its fill, as the centrifuge does; a batter gives it less. So the batter's figure moves by the same factor.</summary>
/// <param name="Dry">Weight before the soak [g].</param>
/// <param name="Drained">Weight after soak and drain [g]; not below <paramref name="Dry"/>.</param>
public sealed record SoakTest(Grams Dry, Grams Drained)
{
    /// <summary>Water that one gram holds [g/g].</summary>
    public PerGram Held => new((Drained - Dry) / Dry);

    /// <summary>Whether the test says anything of an ingredient: what binds no water by its nature dissolves or floats.</summary>
    public static bool Reads(Ingredient ingredient) =>
        ingredient.RangeOf(Fact.WaterBoundCentrifuge) is { Typical: > 0 } && ingredient.RangeOf(Fact.WaterBound) is { Typical: > 0 };

    /// <summary>The facts that the test found.</summary>
    /// <param name="ingredient">The ingredient; the test must read it.</param>
    /// <param name="rules">How far the test is trusted.</param>
    /// <param name="method">How it was found, in a sentence.</param>
    public ImmutableArray<MeasuredFact> Facts(Ingredient ingredient, MeasuringRules rules, string method)
    {
        var share = ingredient.RangeOf(Fact.WaterBound)!.Value.Typical / ingredient.RangeOf(Fact.WaterBoundCentrifuge)!.Value.Typical;
        MeasuredFact Of(Fact fact, double held) => new(
            ingredient.Id,
            fact,
            new Range(held * (1 - rules.SoakSpread.Share), held, Math.Min(fact.Most, held * (1 + rules.SoakSpread.Share))),
            method);
        return [Of(Fact.WaterBoundCentrifuge, Held.Value), Of(Fact.WaterBound, Held.Value * share)];
    }
}
