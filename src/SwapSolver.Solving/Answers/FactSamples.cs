using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Answers;

/// <summary>
/// Seeded Latin-hypercube samples of the facts: brands differ, harvests differ. One bag is one draw, so the reference
/// and its variant see the same bag; the verdict is on the change, not on the absolute figure.
/// </summary>
public sealed class FactSamples
{
    /// <summary>Samples a question; the standard error of a share is then at most 3.6 points.</summary>
    private const int Count = 192;

    private const int Seed = 20_251;

    private readonly ImmutableArray<Draw> draws;

    /// <summary>Draws the samples for some ingredients.</summary>
    public FactSamples(IEnumerable<Ingredient> ingredients)
    {
        var sheets = ingredients
            .Distinct()
            .OrderBy(ingredient => ingredient.Id, StringComparer.Ordinal)
            .ToDictionary(ingredient => ingredient, SheetsOf);
        draws = [.. Enumerable.Range(0, Count).Select(sample => (Draw)(ingredient => sheets[ingredient][sample]))];
    }

    /// <summary>Share of samples in which a formula keeps every band, 0 to 1. Bands that hang on the reference are
    /// taken from the reference in the same sample.</summary>
    public double ChanceOfBalance(ImmutableArray<Hold> holds, Formula reference, Formula formula) =>
        draws.Count(draw => holds.All(hold => Keeps(hold, reference, formula, draw))) / (double)Count;

    /// <summary>The 5th and the 95th percentile of a reading; its typical value where it has no spread.</summary>
    public (Level Low, Level High) SpreadOf(Balance balance, Formula formula, Formula reference)
    {
        double[] levels =
        [
            .. draws.Select(draw => balance.Read(formula, reference, draw)).OfType<Level>().Select(level => level.Value).Order(),
        ];
        return levels.Length == 0
            ? (new Level(0), new Level(0))
            : (new Level(levels[levels.Length / 20]), new Level(levels[levels.Length - 1 - (levels.Length / 20)]));
    }

    private static bool Keeps(Hold hold, Formula reference, Formula formula, Draw draw)
    {
        var band = hold.IsAnchored ? hold.Balance.Band(reference, draw) : hold.Band;
        return hold.Balance.Read(formula, reference, draw) is not { } level || band.Of(level) == Standing.Inside;
    }

    /// <summary>Each fact's range is cut into as many strata as there are samples, and each stratum is drawn from once.</summary>
    private static ImmutableArray<FactSheet> SheetsOf(Ingredient ingredient)
    {
        // The seed hangs on the id, so that an ingredient is drawn alike whatever else is in the bowl.
        var random = new Random(ingredient.Id.Aggregate(Seed, (seed, letter) => unchecked((seed * 31) + letter)));
        var shares = ingredient.Figures.Keys
            .OrderBy(fact => fact.Index)
            .ToDictionary(fact => fact, _ => Strata(random));
        return
        [
            .. Enumerable.Range(0, Count).Select(sample => FactSheet.Drawn(
                ingredient, fact => shares.TryGetValue(fact, out var strata) ? strata[sample] : 0.5)),
        ];
    }

    private static double[] Strata(Random random)
    {
        double[] strata = [.. Enumerable.Range(0, Count).Select(stratum => (stratum + random.NextDouble()) / Count)];
        random.Shuffle(strata);
        return strata;
    }
}
