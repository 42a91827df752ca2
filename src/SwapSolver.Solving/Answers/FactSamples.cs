using System.Collections.Frozen;
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

    /// <summary>Spoons and cups have draws of their own, so that the facts are drawn alike whether or not a line was weighed.</summary>
    private const int SeedOfMeasures = 31_013;

    private readonly ImmutableArray<Draw> draws;

    private readonly MeasuredLines measured;

    private readonly FrozenDictionary<Ingredient, double[]> fillings;

    /// <summary>Draws the samples for some ingredients.</summary>
    /// <param name="ingredients">The ingredients.</param>
    /// <param name="measured">What lines may weigh that were not weighed; null where all were.</param>
    public FactSamples(IEnumerable<Ingredient> ingredients, MeasuredLines? measured = null)
    {
        this.measured = measured ?? MeasuredLines.None;
        fillings = this.measured.MayWeigh.Keys.ToFrozenDictionary(ingredient => ingredient, ingredient => Strata(RandomOf(ingredient, SeedOfMeasures)));
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

    /// <summary>The 5th and the 95th percentile of a reading; its typical value where it has no spread. Lines that were not
    /// weighed are drawn too, so both formulas have one line an ingredient where there are such lines.</summary>
    public (Level Low, Level High) SpreadOf(Balance balance, Formula formula, Formula reference)
    {
        double[] levels =
        [
            .. draws.Select((draw, sample) => balance.Read(Filled(formula, sample), Filled(reference, sample), draw)).OfType<Level>().Select(level => level.Value).Order(),
        ];
        return levels.Length == 0
            ? (new Level(0), new Level(0))
            : (new Level(levels[levels.Length / 20]), new Level(levels[levels.Length - 1 - (levels.Length / 20)]));
    }

    private Formula Filled(Formula formula, int sample) => measured.Filled(formula, (ingredient, grams) => grams.At(fillings[ingredient][sample]));

    private static bool Keeps(Hold hold, Formula reference, Formula formula, Draw draw) =>
        hold.Balance.Read(formula, reference, draw) is not { } level || hold.BandIn(reference, draw).Of(level) == Standing.Inside;

    /// <summary>Each fact's range is cut into as many strata as there are samples, and each stratum is drawn from once.</summary>
    private static ImmutableArray<FactSheet> SheetsOf(Ingredient ingredient)
    {
        var random = RandomOf(ingredient, Seed);
        var shares = ingredient.Figures.Keys
            .OrderBy(fact => fact.Index)
            .ToDictionary(fact => fact, _ => Strata(random));
        return
        [
            .. Enumerable.Range(0, Count).Select(sample => FactSheet.Drawn(
                ingredient, fact => shares.TryGetValue(fact, out var strata) ? strata[sample] : 0.5)),
        ];
    }

    /// <summary>The seed hangs on the id, so that an ingredient is drawn alike whatever else is in the bowl.</summary>
    private static Random RandomOf(Ingredient ingredient, int start) =>
        new(ingredient.Id.Aggregate(start, (seed, letter) => unchecked((seed * 31) + letter)));

    private static double[] Strata(Random random)
    {
        double[] strata = [.. Enumerable.Range(0, Count).Select(stratum => (stratum + random.NextDouble()) / Count)];
        random.Shuffle(strata);
        return strata;
    }
}
