using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Forecasts.Tests;

public sealed class SpreadTests
{
    [Fact]
    public void Deviations_to_each_side_are_added_as_squares()
    {
        // 10 + 3 x ± 1 and y, one to either side: below sqrt(3^2 + 4^2), above sqrt(3^2 + 12^2) by hand.
        var spread = Spread.Of(doubts => (3 * doubts.Of("x", Figure(1, 2, 3))) + doubts.Of("y", Figure(0, 4, 16)));
        Assert.Equal(10, spread.Value);
        Assert.Equal(10 - 5, spread.Low, 1e-12);
        Assert.Equal(10 + Math.Sqrt(9 + 144), spread.High, 1e-12);
    }

    [Fact]
    public void What_has_no_range_is_not_moved()
    {
        var forecasts = 0;
        var butter = TestKitchen.Ingredient("butter");
        var spread = Spread.Of(doubts =>
        {
            forecasts++;
            return doubts.Of("known", Figure(5, 5, 5)) + doubts.Of("pH", "water", Figure(7, 7, 7)) + doubts.Of(Fact.Acid, butter.Typical);
        });
        Assert.Equal(1, forecasts);
        Assert.Equal((12, 12, 12), (spread.Low, spread.Value, spread.High));
    }

    [Fact]
    public void A_figure_that_stands_elsewhere_than_its_one_value_is_moved_there()
    {
        // Drawn at its low end, and moved to both: what was drawn is not what it may be.
        var flour = TestKitchen.Ingredient("almond-meal");
        var range = flour.RangeOf(Fact.Water)!.Value;
        var drawn = FactSheet.Drawn(flour, static _ => 0);
        var spread = Spread.Of(doubts => doubts.Of(Fact.Water, drawn));
        Assert.Equal(range.Low / 100, spread.Low, 1e-12);
        Assert.Equal(range.Low / 100, spread.Value, 1e-12);
        Assert.Equal(range.High / 100, spread.High, 1e-12);
    }

    [Fact]
    public void One_reading_alone_spreads_as_it_does_among_others()
    {
        foreach (var (_, loaf) in Loaf.All)
        {
            double Crumb(Doubts doubts) => new ChargeBalance(ForecastKitchen.Acidity.Crumb(ForecastKitchen.Batter(loaf), doubts)).Solve().Ph;
            Assert.Equal(Scattered<double>.Of(Crumb).Of(static ph => ph), Spread.Of(Crumb));
        }
    }

    private static Figure Figure(double low, double typical, double high) => new(new Range(low, typical, high), "test", Mark.Practice, null);
}
