using CsCheck;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Learning.Tests;

public sealed class BeliefTests
{
    private static readonly Range Published = new(0.75, 1, 1.35), Possible = new(0.3, 1, 3);

    [Fact]
    public void Before_anything_was_measured_the_published_range_is_believed()
    {
        var told = Belief.Before(new Range(0.8, 1, 1.2), Possible).Told();
        Assert.Equal(0.8, told.Low, 2);
        Assert.Equal(1, told.Typical, 2);
        Assert.Equal(1.2, told.High, 2);
    }

    /// <summary>The textbook's conjugate pair (normal prior, normal error of known deviation): precisions add, and the mean is theirs
    /// weighed. Gelman and others, Bayesian Data Analysis, 3rd edition, section 2.5; from memory.</summary>
    [Theory]
    [InlineData(1.1, 0.05)]
    [InlineData(0.9, 0.1)]
    [InlineData(1.3, 0.2)]
    public void With_an_even_range_it_is_the_conjugate_normal(double measured, double scatter)
    {
        const double end = 1.959963984540054, deviation = 0.2 / end;
        var belief = Belief.Before(new Range(0.8, 1, 1.2), Possible).After(new Evidence(measured, scatter));
        var (prior, error) = (1 / (deviation * deviation), 1 / (scatter * scatter));
        var (mean, spread) = (((1 * prior) + (measured * error)) / (prior + error), 1 / Math.Sqrt(prior + error));

        var told = belief.Told();
        Assert.Equal(mean, told.Typical, 3);
        Assert.Equal(mean - (end * spread), told.Low, 3);
        Assert.Equal(mean + (end * spread), told.High, 3);
        Assert.Equal(spread, belief.Deviation(), 3);
    }

    [Fact]
    public void The_order_of_measurements_does_not_matter() => Gen.Double[0.5, 2].Array[2, 8].Sample(values =>
    {
        var before = Belief.Before(Published, Possible);
        var (one, other) = (before.After(values.Select(Measured)).Told(), before.After(values.Reverse().Select(Measured)).Told());
        Assert.Equal(one.Typical, other.Typical, 9);
        Assert.Equal(one.High, other.High, 9);
    });

    [Fact]
    public void No_measurement_however_wild_leads_out_of_what_is_possible() => Gen.Double[-1e6, 1e6].Array[1, 20].Sample(values =>
    {
        var told = Belief.Before(Published, Possible).After(values.Select(Measured)).Told();
        Assert.True(told.IsInOrder && told.Low >= Possible.Low && told.High <= Possible.High, $"{told}");
    });

    /// <summary>Two thousand kitchens whose truth is known, for it was drawn: as wide as the published range says, and measured with the scatter that
    /// is said. The range must shrink, and hold the truth as often as it says: 95 of 100. The allowance is three
    /// standard errors of a share of 0.95 among so many.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(10)]
    public void In_simulated_kitchens_the_range_shrinks_and_goes_on_holding_the_truth(int measurements)
    {
        const int kitchens = 2000;
        var random = new Random(20_261_127);
        var before = Belief.Before(Published, Possible);
        var (held, width) = (0, 0.0);
        for (var kitchen = 0; kitchen < kitchens; kitchen++)
        {
            var truth = before.At(random.NextDouble());
            var told = before.After(Enumerable.Range(0, measurements).Select(_ => Measured(truth + (0.08 * Normal(random))))).Told();
            held += truth >= told.Low && truth <= told.High ? 1 : 0;
            width += (told.High - told.Low) / kitchens;
        }

        var allowance = 3 * Math.Sqrt(0.95 * 0.05 / kitchens);
        Assert.InRange(held / (double)kitchens, 0.95 - allowance, 0.95 + allowance);
        // After n measurements no wider than those alone would leave it: 2 x 1.96 standard errors of their mean.
        Assert.True(width < 2 * 1.96 * 0.08 / Math.Sqrt(measurements), $"{width}");
    }

    /// <summary>A kitchen at the very end of what was published, or beyond it, is still found by its own measurements.</summary>
    [Theory]
    [InlineData(0.75)]
    [InlineData(1.35)]
    [InlineData(1.6)]
    public void A_kitchen_unlike_others_is_found_all_the_same(double truth)
    {
        const int kitchens = 200;
        var random = new Random(7);
        var held = Enumerable.Range(0, kitchens).Count(_ =>
        {
            var told = Belief.Before(Published, Possible).After(Enumerable.Range(0, 20).Select(_ => Measured(truth + (0.08 * Normal(random))))).Told();
            return truth >= told.Low && truth <= told.High;
        });
        Assert.True(held >= 0.85 * kitchens, $"{held} of {kitchens} hold {truth}");
    }

    [Theory]
    [InlineData(0.1, 1, 1.2)]
    [InlineData(0.8, 1, 5)]
    [InlineData(1.2, 1, 1.1)]
    public void A_published_range_that_is_not_possible_is_refused(double low, double typical, double high) =>
        Assert.Throws<ArgumentException>(() => Belief.Before(new Range(low, typical, high), Possible));

    [Fact]
    public void A_test_is_worth_most_where_least_is_known_and_less_each_time()
    {
        var fact = new LearnableFact("oven-factor", "", "1", Published, Possible, 0.05);
        var first = TestWorth.Of(fact, fact.Before, 1, 10);
        var second = TestWorth.Of(fact, fact.Before.After(fact.Measured(1.1)), 1, 10);
        Assert.True(first.Worth > 3 * second.Worth && second.Worth > 0);
        Assert.True(TestWorth.Of(fact, fact.Before, 0.5, 10).Worth < first.Worth);
    }

    private static Evidence Measured(double value) => new(value, 0.08);

    /// <summary>Box and Muller's normal deviate.</summary>
    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
