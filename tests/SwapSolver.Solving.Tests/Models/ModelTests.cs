using SwapSolver.Solving.Models;

namespace SwapSolver.Solving.Tests.Models;

public sealed class ModelTests
{
    private const double Open = double.PositiveInfinity;

    /// <summary>Eggs of 50 g and water, 250 to 300 g together; water costs 1 a gram, an egg 20.</summary>
    private static readonly Model EggsAndWater = new(
        [new("eggs", 1, 5, true, 20), new("water", 0, 200, false, 1)],
        [new("together", [new(0, 50), new(1, 1)], 250, 300)]);

    [Fact]
    public void The_objective_is_the_price_of_what_is_taken() =>
        // 3 eggs at 20 and 110 g of water at 1.
        Assert.Equal(170, EggsAndWater.Objective([3, 110]));

    [Theory]
    [InlineData(3, 110)] // 260 g
    [InlineData(1, 200)] // 250 g, on the floor
    [InlineData(5, 50)] // 300 g, on the ceiling
    public void What_keeps_every_limit_breaks_nothing(double eggs, double water) =>
        Assert.Null(EggsAndWater.Broken([eggs, water]));

    [Theory]
    [InlineData(3, 99, "together")] // 249 g
    [InlineData(5, 51, "together")] // 301 g
    [InlineData(0, 200, "eggs")] // an egg is needed
    [InlineData(6, 0, "eggs")] // five at most
    [InlineData(2.5, 130, "eggs")] // no half eggs
    [InlineData(5, -1, "water")]
    [InlineData(1, 201, "water")]
    [InlineData(double.NaN, 100, "eggs")]
    [InlineData(3, Open, "water")]
    public void What_is_broken_is_named(double eggs, double water, string name) =>
        Assert.Equal(name, EggsAndWater.Broken([eggs, water]));

    [Fact]
    public void A_milligram_beside_the_limit_is_forgiven_and_ten_are_not()
    {
        // 3 eggs are a part of 150 g, so at 1e-5 of it 1.5 mg may be missing; at 1e-7 only 0.015 mg.
        Assert.Null(EggsAndWater.Broken([3, 99.999]));
        Assert.Equal("together", EggsAndWater.Broken([3, 99.999], tolerance: 1e-7));
        Assert.Equal("together", EggsAndWater.Broken([3, 99.99]));
        // 5 eggs are 250 g: up to 2.5 mg too much.
        Assert.Null(EggsAndWater.Broken([5, 50.002]));
        Assert.Equal("together", EggsAndWater.Broken([5, 50.01]));
    }

    [Fact]
    public void A_sound_model_passes_the_guard()
    {
        EggsAndWater.Guard();
        new Model([new("free", -Open, Open, false, -1e12)], [new("row", [new(0, 1e12)], -Open, Open)]).Guard();
        new Model([], []).Guard();
    }

    [Theory]
    [InlineData(double.NaN, 1, 0)]
    [InlineData(0, double.NaN, 0)]
    [InlineData(0, 1, double.NaN)]
    [InlineData(0, 1, Open)]
    [InlineData(2, 1, 0)]
    [InlineData(0, 1e13, 0)]
    [InlineData(-1e13, 0, 0)]
    [InlineData(Open, Open, 0)]
    [InlineData(-Open, -Open, 0)]
    public void A_column_with_such_numbers_is_refused_by_name(double low, double high, double cost)
    {
        var model = new Model([new("flour", low, high, false, cost)], []);
        Assert.Contains("'flour'", Assert.Throws<ArgumentException>(model.Guard).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(double.NaN, 1, 1, 0)]
    [InlineData(0, double.NaN, 1, 0)]
    [InlineData(2, 1, 1, 0)]
    [InlineData(0, 1, double.NaN, 0)]
    [InlineData(0, 1, Open, 0)]
    [InlineData(0, 1, 1e13, 0)]
    [InlineData(0, 1, 1, 1)]
    [InlineData(0, 1, 1, -1)]
    [InlineData(Open, Open, 1, 0)]
    [InlineData(-Open, -Open, 1, 0)]
    public void A_row_with_such_numbers_is_refused_by_name(double low, double high, double coefficient, int column)
    {
        var model = new Model([new("flour", 0, 1, false, 0)], [new("sum", [new(column, coefficient)], low, high)]);
        Assert.Contains("'sum'", Assert.Throws<ArgumentException>(model.Guard).Message, StringComparison.Ordinal);
    }
}
