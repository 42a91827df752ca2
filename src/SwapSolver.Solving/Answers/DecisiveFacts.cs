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

    /// <summary>Parts that a range is cut into: both its ends may be bad, so a straight line would not see it.</summary>
    private const int Parts = 8;

    /// <summary>The facts, the most decisive first; none where the formula balances everywhere or nowhere.</summary>
    /// <param name="samples">The kitchens.</param>
    /// <param name="balances">Whether the formula balances, by kitchen.</param>
    /// <param name="holds">What must be kept for it to balance: only what these read can decide.</param>
    public ImmutableArray<DecisiveFact> Of(FactSamples samples, bool[] balances, ImmutableArray<Hold> holds)
    {
        var chance = balances.Count(keeps => keeps) / (double)balances.Length;
        if (chance is 0 or 1)
        {
            return [];
        }

        // The fewer of those that balance and those that do not tell as much, and are counted sooner.
        var isRare = chance <= 0.5;
        int[] rare = [.. Enumerable.Range(0, balances.Length).Where(kitchen => balances[kitchen] == isRare)];
        var readFacts = holds.SelectMany(hold => hold.Balance.Reads).ToHashSet();
        return
        [
            .. samples.Shares
                .Where(one => readFacts.Contains(one.Fact))
                .Select(one => (one.Ingredient, one.Fact, Share: Explained(one.Shares, rare)))
                .Where(one => one.Share >= LeastShare)
                .OrderByDescending(one => one.Share)
                .ThenBy(one => one.Ingredient.Id, StringComparer.Ordinal)
                .ThenBy(one => one.Fact.Index)
                .Take(MostNamed)
                .Select(one => new DecisiveFact(one.Ingredient, one.Fact, one.Share, Say(one.Ingredient, one.Fact))),
        ];
    }

    /// <summary>Variance between the parts of a range by all variance, less what chance alone would show.</summary>
    /// <param name="shares">Where the fact stands, by kitchen; every part of its range is drawn from equally often.</param>
    /// <param name="rare">The kitchens that are told from the others.</param>
    private static double Explained(double[] shares, int[] rare)
    {
        Span<int> inPart = stackalloc int[Parts];
        foreach (var kitchen in rare)
        {
            inPart[Math.Min(Parts - 1, (int)(shares[kitchen] * Parts))]++;
        }

        var ofAPart = shares.Length / (double)Parts;
        var chance = rare.Length / (double)shares.Length;
        double between = 0;
        foreach (var count in inPart)
        {
            var apart = (count / ofAPart) - chance;
            between += apart * apart / Parts;
        }

        return Math.Max(0, (between / (chance * (1 - chance))) - ((Parts - 1) / (double)shares.Length));
    }

    private string Say(Ingredient ingredient, Fact fact)
    {
        var named = ("figures", Phrases.Say($"decides-{fact.Id}", ("ingredient", ingredient.Name)));
        return (fact == Fact.WaterBound || fact == Fact.WaterBoundCentrifuge) && SoakTest.Reads(ingredient)
            ? Phrases.Say("decides-by-test", named)
            : Phrases.Say(PanelFacts.Composition.Contains(fact) ? "decides-by-panel" : "decides-by-trial", named);
    }
}
