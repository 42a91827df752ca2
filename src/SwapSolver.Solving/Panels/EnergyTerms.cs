using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Solving.Panels;

/// <summary>Energy as a sum over the facts [kcal per g of the fact].</summary>
internal static class EnergyTerms
{
    private static readonly ImmutableArray<Fact> NotAvailable = [Fact.Fibre, Fact.Polyols, Fact.Allulose, Fact.OrganicAcid];

    /// <summary>The least that the factors give. Where the like's own energy lies lower, as that of cocoa does, by as
    /// much less.</summary>
    public static ImmutableDictionary<Fact, double> Least(PanelCase given)
    {
        var least = Sum(given, range => range.Low);
        var share = given.Like?.RangeOf(Fact.Energy) is { } known && At(least, given.Like) is > 0 and var counted
            ? Math.Min(1, known.Low / counted)
            : 1;
        return Times(least, share * (1 - given.Rules.Energy.Allowance.Share));
    }

    /// <summary>The most that the factors give; where the like's own energy lies higher, by as much more.</summary>
    public static ImmutableDictionary<Fact, double> Most(PanelCase given)
    {
        var most = Sum(given, range => range.High);
        var share = given.Like?.RangeOf(Fact.Energy) is { } known && At(most, given.Like) is > 0 and var counted
            ? Math.Max(1, known.High / counted)
            : 1;
        return Times(most, share * (1 + given.Rules.Energy.Allowance.Share));
    }

    /// <summary>What the general factors give.</summary>
    public static ImmutableDictionary<Fact, double> General(PanelCase given)
    {
        var energy = given.Rules.Energy;
        return Sum(given, range => range.Typical)
            .Add(Fact.Erythritol, energy.KcalPerGramOfErythritol.Value - energy.KcalPerGram[Fact.Polyols].Typical);
    }

    private static ImmutableDictionary<Fact, double> Sum(PanelCase given, Func<Kitchen.Ingredients.Range, double> end)
    {
        var factors = given.Rules.Energy.KcalPerGram;
        var ofCarbohydrate = end(factors[Fact.Carbohydrate]);
        return factors.ToImmutableDictionary(
            pair => pair.Key,
            pair => end(pair.Value) - (NotAvailable.Contains(pair.Key) ? ofCarbohydrate : 0));
    }

    private static double At(ImmutableDictionary<Fact, double> factors, Ingredient food) =>
        factors.Sum(pair => pair.Value * (food.RangeOf(pair.Key)?.Typical ?? 0));

    private static ImmutableDictionary<Fact, double> Times(ImmutableDictionary<Fact, double> factors, double times) =>
        factors.ToImmutableDictionary(pair => pair.Key, pair => pair.Value * times);
}
