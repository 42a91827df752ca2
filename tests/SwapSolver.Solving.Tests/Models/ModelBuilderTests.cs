using SwapSolver.Solving.Models;

namespace SwapSolver.Solving.Tests.Models;

public sealed class ModelBuilderTests
{
    private const double Open = double.PositiveInfinity;

    private readonly ModelBuilder builder = new();

    [Fact]
    public void Flour_that_is_named_twice_in_a_row_counts_once_with_both()
    {
        var (flour, water) = (builder.Column("flour", 0, 500), builder.Column("water", 0, 500));
        builder.Row("mass", [new(water, 1), new(flour, 0.25), new(water, 2), new(flour, 0.5)], 0, 100);
        Assert.Equal([new Term(flour, 0.75), new Term(water, 3)], Assert.Single(builder.Build().Rows).Terms);
        // What cancels is no part of it.
        builder.Row("apart", [new(water, 1), new(flour, 1), new(water, -1)], 0, 100);
        Assert.Equal([new Term(flour, 1)], builder[1].Terms);
    }

    [Theory]
    // Nothing lies between nothing and anything above it, so the row says nothing.
    [InlineData(0, Open, false)]
    [InlineData(-Open, 0, false)]
    [InlineData(-2, 3, false)]
    // Nothing is not at least one, and not at most less than nothing: that nobody can keep it must be heard.
    [InlineData(1, Open, true)]
    [InlineData(-Open, -1, true)]
    public void A_row_of_nothing_stays_where_it_asks_for_something(double low, double high, bool stays)
    {
        var index = builder.Row("nothing", [], low, high);
        Assert.Equal(stays ? 0 : null, index);
        Assert.Equal(stays ? 1 : 0, builder.Rows);
    }

    [Fact]
    public void A_name_is_letters_digits_and_strokes_and_a_row_s_is_its_own()
    {
        var egg = builder.Choice("used_egg-whole", 1.05);
        Assert.Equal(new Column("used_egg_whole", 0, 1, true, 1.05), builder.Build().Columns[egg]);
        builder.Row("without:egg", [new(egg, 1)], 0, 0);
        builder.Row("without:egg", [new(egg, 1)], 0, 0);
        Assert.Equal(["without_egg_0", "without_egg_1"], builder.Build().Rows.Select(row => row.Name));
    }
}
