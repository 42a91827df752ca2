using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Tests.Answers;

public sealed class ReferenceSamplesTests
{
    private static readonly Bags Drawn = new();

    public static TheoryData<string> Loaves => [.. Loaf.All.Select(loaf => loaf.Name)];

    [Theory]
    [MemberData(nameof(Loaves))]
    public void A_band_ends_where_the_loaf_puts_it_in_that_kitchen(string name)
    {
        var loaf = Loaf.All.Single(one => one.Name == name).Formula;
        var samples = new ReferenceSamples(loaf, Drawn);
        foreach (var hold in Holds(loaf))
        {
            var (lowest, highest) = samples.EndsOf(hold);
            foreach (var kitchen in new[] { 0, 1, 1024, 4095, Bags.Kitchens - 1 })
            {
                var (low, high) = Scenario.BandOf(hold, loaf, ingredient => Drawn.Of(ingredient).In(kitchen)).Ends();
                Assert.True(IsSame(low.Value, ReferenceSamples.At(lowest, kitchen)), $"{hold.Id}, low: {low} and {ReferenceSamples.At(lowest, kitchen)}");
                Assert.True(IsSame(high.Value, ReferenceSamples.At(highest, kitchen)), $"{hold.Id}, high: {high} and {ReferenceSamples.At(highest, kitchen)}");
            }
        }
    }

    [Fact]
    public void A_limit_in_figures_is_the_same_in_all_kitchens()
    {
        var limit = new Hold("hydration", Hydration, new Band(new Level(1), new Level(1.5)), FromCaller: true);
        var (lowest, highest) = new ReferenceSamples(Loaf.Walnut, Drawn).EndsOf(limit);
        Assert.Equal([limit.Band.Ends().Lowest.Value], lowest);
        Assert.Equal([limit.Band.Ends().Highest.Value], highest);
    }

    [Fact]
    public void A_limit_in_shares_of_the_loafs_own_reading_moves_with_its_flours()
    {
        var (lowest, highest) = new ReferenceSamples(Loaf.Walnut, Drawn).EndsOf(HalfToAll);
        Assert.Equal(Bags.Kitchens, lowest.Length);
        Assert.True(lowest.Distinct().Count() > Bags.Kitchens / 2, "flours that bind differently have the same limit");
        Assert.All(lowest.Zip(highest), ends => Assert.Equal(2, ends.Second / ends.First, 1e-5));
    }

    [Fact]
    public void Answers_about_one_loaf_are_judged_as_each_would_be_alone()
    {
        var loaf = Loaf.Walnut;
        var holds = Holds(loaf);
        foreach (var grams in new double[] { 0, 10, 25, 60 })
        {
            var formula = WithWater(loaf, grams);
            var alone = new FactSamples(loaf.Lines.Select(line => line.Ingredient), drawn: new Bags()).Balances(holds, loaf, formula);
            Assert.Equal(alone, new FactSamples(loaf.Lines.Select(line => line.Ingredient), drawn: Drawn).Balances(holds, loaf, formula));
        }
    }

    private static Balance Hydration => TestKitchen.Bakehouse.Balances.All.OfType<Hydration>().Single();

    private static Hold HalfToAll => new("hydration", Hydration, Band.Open, FromCaller: true) { Share = new OwnShare(new Percent(50), new Percent(100)) };

    /// <summary>The usual bands, and one in shares.</summary>
    private static ImmutableArray<Hold> Holds(Formula loaf) => [.. HoldList.Around(TestKitchen.Bakehouse.Balances, loaf, []), HalfToAll];

    private static Formula WithWater(Formula loaf, double grams) =>
        loaf with { Lines = [.. loaf.Lines.Select(line => line.Ingredient.Id == "water" ? line with { Grams = new Grams(line.Grams.Value + grams) } : line)] };

    private static bool IsSame(double one, double other) => one.Equals(other) || Math.Abs(one - other) <= 1e-12 * Math.Abs(one);
}
