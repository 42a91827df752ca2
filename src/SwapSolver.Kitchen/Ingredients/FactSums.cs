using System.Collections.Immutable;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Ingredients;

/// <summary>What the figures of one food must satisfy together: parts make a whole of 100 g, and no part is above its whole.</summary>
public static class FactSums
{
    /// <summary>How far the proximates may miss 100 g [g/100 g]: SR rows are rounded and analysed apart; common practice.</summary>
    internal const double ProximateTolerance = 1.5;

    private static readonly ImmutableArray<Fact> Proximates =
        [Fact.Water, Fact.Protein, Fact.Fat, Fact.Carbohydrate, Fact.Ash, Fact.Alcohol, Fact.Other];

    private static readonly ImmutableArray<Fact> PartsOfCarbohydrate =
        [Fact.Fibre, Fact.Sugars, Fact.Starch, Fact.Polyols, Fact.Allulose, Fact.OrganicAcid];

    /// <summary>What clashes, judged by typical values; none where all can be true.</summary>
    /// <param name="figures">The figures; what is not among them counts as nothing.</param>
    /// <param name="notStated">How much of 100 g what is not stated may make up at most [g].</param>
    /// <param name="printing">How far a part may stand above its whole because both are printed rounded [g].</param>
    public static IEnumerable<FactClash> Clashes(ImmutableDictionary<Fact, Figure> figures, Grams notStated, Grams printing)
    {
        double Typical(Fact fact) => figures.TryGetValue(fact, out var figure) ? figure.Range.Typical : 0;
        var sum = Proximates.Sum(Typical);
        if (sum > 100 + ProximateTolerance || sum + notStated.Value < 100 - ProximateTolerance)
        {
            yield return new FactClash(
                Fact.Water,
                $"water, protein, fat, carbohydrate, ash, alcohol and other add up to {sum:0.##} g, not to 100 g within {ProximateTolerance} g");
        }

        var parts = PartsOfCarbohydrate.Sum(Typical);
        if (parts > Typical(Fact.Carbohydrate) + ProximateTolerance)
        {
            yield return new FactClash(
                Fact.Carbohydrate, $"the parts of the carbohydrate add up to {parts:0.##} g, above its {Typical(Fact.Carbohydrate):0.##} g");
        }

        if (Typical(Fact.SaturatedFat) > Typical(Fact.Fat) + printing.Value)
        {
            yield return new FactClash(
                Fact.SaturatedFat, $"a part is above its whole: saturated fat {Typical(Fact.SaturatedFat):0.###} g of fat {Typical(Fact.Fat):0.###} g");
        }

        if (Typical(Fact.Erythritol) > Typical(Fact.Polyols) + printing.Value)
        {
            yield return new FactClash(
                Fact.Erythritol, $"a part is above its whole: erythritol {Typical(Fact.Erythritol):0.###} g of polyols {Typical(Fact.Polyols):0.###} g");
        }
    }
}
