using System.Collections.Immutable;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Panels;
using SwapSolver.Kitchen.Wording;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Answers;

/// <summary>Finds the facts that decide whether a formula balances: those by which the kitchens where it does are told from
/// those where it does not.</summary>
/// <param name="Phrases">The words.</param>
public sealed record DecisiveFacts(Phrases Phrases)
{
    /// <summary>Facts that are named at most; more would be a list and no advice.</summary>
    private const int MostNamed = 3;

    /// <summary>Doubt that a fact must explain to be worth a measurement [1].</summary>
    private const double LeastShare = 0.02;

    /// <summary>The facts, the most decisive first; none where the formula balances everywhere or nowhere.</summary>
    /// <param name="samples">The kitchens.</param>
    /// <param name="balances">Whether the formula balances, by kitchen.</param>
    /// <param name="holds">What must be kept for it to balance: only what these read can decide.</param>
    public ImmutableArray<DecisiveFact> Of(FactSamples samples, bool[] balances, ImmutableArray<Hold> holds)
    {
        var chance = balances.AsSpan().Count(true) / (double)balances.Length;
        if (chance is 0 or 1)
        {
            return [];
        }

        var kept = RangeParts.Chosen(balances);
        return
        [
            .. samples.PartsOf(holds.SelectMany(hold => hold.Balance.Reads).ToHashSet())
                .Select(one => (one.Ingredient, one.Fact, Share: Explained(one.Parts, kept, chance, balances.Length)))
                .Where(one => one.Share >= LeastShare)
                .OrderByDescending(one => one.Share)
                .ThenBy(one => one.Ingredient.Id, StringComparer.Ordinal)
                .ThenBy(one => one.Fact.Index)
                .Take(MostNamed)
                .Select(one => new DecisiveFact(one.Ingredient, one.Fact, one.Share, Say(one.Ingredient, one.Fact))),
        ];
    }

    /// <summary>Variance between the parts of a range by all variance, less what chance alone would show.</summary>
    /// <param name="parts">Where the fact stands; every part of its range is drawn from equally often.</param>
    /// <param name="kept">The kitchens in which the formula balances.</param>
    /// <param name="chance">Their share of all, above 0 and below 1.</param>
    /// <param name="kitchens">How many there are.</param>
    private static double Explained(RangeParts parts, ulong[] kept, double chance, int kitchens)
    {
        var ofAPart = kitchens / (double)RangeParts.Count;
        double between = 0;
        for (var part = 0; part < RangeParts.Count; part++)
        {
            var apart = (parts.In(part, kept) / ofAPart) - chance;
            between += apart * apart / RangeParts.Count;
        }

        return Math.Max(0, (between / (chance * (1 - chance))) - ((RangeParts.Count - 1) / (double)kitchens));
    }

    private string Say(Ingredient ingredient, Fact fact)
    {
        var named = ("figures", Phrases.Say($"decides-{fact.Id}", ("ingredient", ingredient.Name)));
        return (fact == Fact.WaterBound || fact == Fact.WaterBoundCentrifuge) && SoakTest.Reads(ingredient)
            ? Phrases.Say("decides-by-test", named)
            : Phrases.Say(PanelFacts.Composition.Contains(fact) ? "decides-by-panel" : "decides-by-trial", named);
    }
}
