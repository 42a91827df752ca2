using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Tests.Models;

/// <summary>The rows that hold readings, and what the objective counts of them: each coefficient from the pantry's figures by hand.</summary>
public sealed class BandRowsTests
{
    private const double Near = 1e-9;

    /// <summary>Almond flour 200, water 100, soda 4, cream of tartar 9, two eggs: 413 g.</summary>
    private static readonly Formula Five = Bowl.Of(
        ("almond-flour-blanched", 200), ("water", 100), ("baking-soda", 4), ("cream-of-tartar", 9)).WithEggs(2);

    [Fact]
    public void Every_side_of_a_band_is_known_by_its_row()
    {
        var built = new BuiltModel(Of(Five));
        Assert.Contains(built.Whole.Bands, band => band.Hold.Id == "flour-mass" && band.Side == Side.Low);
        Assert.Contains(built.Whole.Bands, band => band.Hold.Id == "flour-mass" && band.Side == Side.High);
        Assert.All(built.Whole.Bands, band => Assert.StartsWith(
            $"{band.Hold.Id.Replace('-', '_')}_{band.Side}_", built.Whole.Model.Rows[band.Index].Name, StringComparison.Ordinal));
    }

    [Fact]
    public void A_share_of_the_batter_is_scaled_by_what_the_loaf_has_of_it()
    {
        // Fat at least 0.85 of the loaf's own: of water, which has none, a gram asks for 0.85 of the loaf's fat in a gram; the row
        // counts in the fat of the whole loaf, so 0.85 / 413.
        Assert.Equal(-0.85 / 413, new BuiltModel(Of(Five)).Coefficient("richness_Low", "x_water"), Near);
    }

    [Fact]
    public void A_wish_that_may_give_way_does_so_at_a_price_and_no_other_does()
    {
        var built = new BuiltModel(Of(Five) with { MayGiveWay = ["flour-mass"] });
        foreach (var side in new[] { "Low", "High" })
        {
            var gives = built.Column($"gives_flour_mass_{side}");
            Assert.Equal((0, double.PositiveInfinity, 100), (gives.Low, gives.High, gives.Cost));
            // By so much of the band's own middle, since rows count in that.
            Assert.Equal(1, built.Coefficient($"flour_mass_{side}", gives.Name));
        }

        Assert.Equal(2, built.Whole.Model.Columns.Count(column => column.Name.StartsWith("gives_", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_kitchen_that_is_to_be_kept_too_has_rows_by_its_own_facts()
    {
        var problem = Of(Five);
        var hydration = problem.Holds.Single(hold => hold.Id == "hydration");
        Draw dry = ingredient => FactSheet.Drawn(ingredient, fact => fact == Fact.Water ? 0.0 : 0.5);
        var built = new BuiltModel(problem with { Scenarios = [new Scenario("usual", Draws.Typical, [hydration]), new Scenario("dry", dry, [hydration])] });
        foreach (var side in new[] { "Low", "High" })
        {
            // With the typical facts it is the band's own row.
            var (own, usual) = (built.Row($"hydration_{side}"), built.Row($"usual_hydration_{side}"));
            Assert.Equal((own.Low, own.High), (usual.Low, usual.High));
            Assert.Equal(own.Terms, usual.Terms);
        }

        // With drier flour a gram of it brings so much less of the loaf's own water.
        var water = Five.Lines.Sum(line => line.Grams.Value * line.Ingredient.RangeOf(Fact.Water)!.Value.Typical / 100);
        var range = TestKitchen.Ingredient("almond-flour-blanched").RangeOf(Fact.Water)!.Value;
        var less = (dry(TestKitchen.Ingredient("almond-flour-blanched"))[Fact.Water] * 100) - range.Typical;
        Assert.True(less < 0);
        Assert.Equal(
            less / 100 / water,
            built.Coefficient("dry_hydration_Low", "x_almond_flour_blanched") - built.Coefficient("hydration_Low", "x_almond_flour_blanched"),
            Near);
    }

    [Fact]
    public void How_far_a_reading_lies_from_the_loaf_s_own_is_counted_in_half_bands()
    {
        // Hydration: 6 % of the loaf's own either way, counted on the water that its lines bind.
        var built = new BuiltModel(Of(Five));
        var bound = Five.Lines.Sum(line => line.Grams.Value * line.Ingredient.RangeOf(Fact.WaterBound)!.Value.Typical);
        var halfBand = 0.06 * new Tally(Five).Hydration;
        Assert.Equal(0.999 / (halfBand * bound), built.Coefficient("distance_hydration", "x_water"), Near);
        Assert.Equal((-1, 1), (built.Coefficient("distance_hydration", "above_hydration"), built.Coefficient("distance_hydration", "below_hydration")));
        Assert.Equal((0, 0), (built.Row("distance_hydration").Low, built.Row("distance_hydration").High));
        // At an end of its band a reading costs a tenth of a changed line.
        Assert.Equal((0.1, 0.1), (built.Column("above_hydration").Cost, built.Column("below_hydration").Cost));
    }

    [Theory]
    // A quarter of the loaf's own a slice counts as one step, and 0.3 g where it has next to none.
    [InlineData(200, true)]
    [InlineData(40, false)]
    public void Net_carbohydrate_costs_where_it_rises_and_nothing_where_it_falls(double almond, bool isByItsOwn)
    {
        var loaf = Bowl.Of(("almond-flour-blanched", almond), ("water", 100)).WithEggs(2) with { Slices = 10 };
        var built = new BuiltModel(Of(loaf));
        var own = new Tally(loaf).NetCarbs;
        Assert.Equal(isByItsOwn, own / 4 > 0.3);
        var step = isByItsOwn ? own / 4 : 0.3;
        var gram = new Tally(Bowl.Of(("almond-flour-blanched", 1)) with { Slices = 1 }).NetCarbs;
        var row = built.Row("rise_net_carbohydrate");
        Assert.Equal(gram / (step * 10), built.Coefficient("rise_net_carbohydrate", "x_almond_flour_blanched"), Near);
        Assert.Equal(-1, built.Coefficient("rise_net_carbohydrate", "rise_net_carbohydrate"));
        Assert.Equal(double.NegativeInfinity, row.Low);
        Assert.Equal(own / step, row.High, Near);
        Assert.Equal((0, 0.1), (built.Column("rise_net_carbohydrate").Low, built.Column("rise_net_carbohydrate").Cost));
    }

    [Fact]
    public void What_the_loaf_has_none_of_is_counted_in_grams()
    {
        // No sweetener, and no soda to count acid by: the rows are there, and their numbers are numbers.
        var plain = Bowl.Of(("almond-flour-blanched", 200), ("water", 100), ("cream-of-tartar", 2)).WithEggs(2);
        var sweetness = TestKitchen.Bakehouse.Balances.Find("sweetness")!;
        var problem = Of(plain, "baking-soda");
        var built = new BuiltModel(problem with { Holds = problem.Holds.Add(new Hold("sweetness", sweetness, new Band(null, new Level(1)), FromCaller: true)) });
        built.Whole.Model.Guard();
        Assert.NotEmpty(built.Rows("sweetness_High"));
        Assert.NotEmpty(built.Rows("leavening_Low"));
        // 1000 / 188.177 mmol of acid in a gram of cream of tartar, counted in nothing but itself.
        Assert.Equal(1000 / 188.177, built.Coefficient("leavening_Low", "x_cream_of_tartar"), 5e-3);
    }

    private static FormulaProblem Of(Formula formula, params string[] candidates) =>
        Ask.Variant(formula, Ask.Without("peanuts")).Problem() with { Candidates = [.. candidates.Select(TestKitchen.Ingredient)] };
}
