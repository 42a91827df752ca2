using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Forecasts.Tests;

public sealed class AcidityTests
{
    private static readonly ReferenceTable Crumbs = ReferenceTable.Read("Acidity/Reference/crumb-ph.csv");

    private static readonly ReferenceTable Tablets = ReferenceTable.Read("Acidity/Reference/effervescent-tablets.csv");

    /// <summary>Invented cakes of the kinds of the table.</summary>
    private static readonly Dictionary<string, Formula> Cakes = new()
    {
        ["yellow cake"] = Bowl.Of(
            ("wheat-flour-all-purpose", 240), ("sugar", 250), ("butter", 115), ("milk-whole", 240),
            ("baking-powder-double-acting", 11), ("salt", 3)).WithEggs(2),
        ["biscuits"] = Bowl.Of(
            ("wheat-flour-all-purpose", 240), ("butter", 60), ("milk-whole", 170), ("baking-powder-double-acting", 14), ("salt", 4)),
        ["devil's food cake"] = Bowl.Of(
            ("wheat-flour-all-purpose", 220), ("sugar", 300), ("butter", 115), ("buttermilk", 240), ("cocoa-natural", 50),
            ("baking-soda", 5), ("salt", 3)).WithEggs(2),
        ["angel food cake"] = Bowl.Of(
            ("wheat-flour-all-purpose", 100), ("sugar", 300), ("egg-white", 340), ("cream-of-tartar", 4.5), ("salt", 1)),
    };

    public static TheoryData<string> CrumbRows => [.. Crumbs.Names];

    public static TheoryData<string> TabletRows => [.. Tablets.Names];

    public static TheoryData<string> Loaves => [.. Loaf.All.Select(loaf => loaf.Name)];

    [Theory]
    [MemberData(nameof(CrumbRows))]
    public void A_crumb_reads_as_crumbs_of_its_kind_are_published(string name)
    {
        var row = Crumbs[name];
        var crumb = Cakes[row["kind"]].Ph().Crumb;

        var (low, high) = (row.Number("low"), row.Number("high"));
        ReferenceLedger.Note(row, $"{row["kind"]}, middle of what is printed", (low + high) / 2, crumb.Value.Value, ((high - low) / 2) + row.Tolerance);
        Assert.InRange(crumb.Value.Value, row.Number("low") - row.Tolerance, row.Number("high") + row.Tolerance);
        Assert.True(crumb.Low.Value <= row.Number("high") && crumb.High.Value >= row.Number("low"), $"{crumb} misses {row.Text}");
    }

    [Theory]
    [MemberData(nameof(TabletRows))]
    public void A_tablet_of_citric_acid_and_soda_reads_near_its_published_pH(string name)
    {
        var row = Tablets[name];

        Assert.True(row.Agrees(Tablet(row)), row.Against(Tablet(row)));
    }

    [Fact]
    public void More_soda_by_acid_reads_higher_in_the_order_of_the_published_tablets()
    {
        // Tablets 1 and 4 hold soda and acid in one ratio: their order hangs on the water, which is not stated.
        var inOrder = Tablets.Rows.Where(row => row["tablet"] != "4").Select(Tablet).ToList();

        Assert.Equal(inOrder.Order(), inOrder);
        Assert.Equal(inOrder.Count, inOrder.Distinct().Count());
    }

    [Fact]
    public void Soda_in_water_reads_8_3()
    {
        // Handbooks: 8.3 for 0.1 M, 8.4 g in a litre, freshly made; memory. Sealed it would read 8.13: what goes into the air
        // of the bowl is counted from the air that a batter holds, not from this figure.
        var forecast = Bowl.Of(("water", 1000), ("baking-soda", 8.40)).Ph();

        Assert.Equal(8.3, forecast.Batter.Value.Value, 0.1);
        Assert.True(forecast.Crumb.Value.Value > forecast.Batter.Value.Value + 1, "heated soda turns to the far more alkaline carbonate");
    }

    [Theory]
    [InlineData(1, 3.776)]
    [InlineData(2, 4.99)]
    public void Citric_acid_that_soda_uses_up_in_part_reads_as_its_salt_would(double soda, double ph)
    {
        // Twentieth-molar dihydrogen citrate: 3.776, a primary standard. Tenth-molar disodium citrate reads 4.9 to 5.2 in
        // makers' data sheets (memory); half the sum of two pKa at this strength is 4.99 (calculated).
        var forecast = Bowl.Of(("water", 1000), ("citric-acid", 0.05 * 192.12), ("baking-soda", soda * 0.05 * 84.006)).Ph();

        Assert.Equal(ph, forecast.Batter.Value.Value, 0.1);
        Assert.Equal(ph, forecast.Crumb.Value.Value, 0.1);
    }

    [Fact]
    public void Vinegar_that_soda_half_uses_up_reads_as_an_acetate_buffer()
    {
        // 0.1 M each of acetic acid and acetate: 4.65, chemistry handbook; memory. Vinegar of 5 %: 0.833 mmol/g.
        var forecast = Bowl.Of(("water", 760), ("vinegar-distilled", 240.2), ("baking-soda", 8.40)).Ph();

        Assert.Equal(4.65, forecast.Batter.Value.Value, 0.15);
        Assert.Equal(4.65, forecast.Crumb.Value.Value, 0.15);
    }

    [Fact]
    public void Cream_of_tartar_beyond_what_dissolves_reads_as_the_saturated_standard()
    {
        // NIST standard of saturated potassium hydrogen tartrate: 3.557 at 25 °C; memory.
        var forecast = Bowl.Of(("water", 1000), ("cream-of-tartar", 40)).Ph();

        Assert.Equal(3.557, forecast.Batter.Value.Value, 0.05);
        Assert.Equal(3.557, forecast.Crumb.Value.Value, 0.05);
    }

    [Fact]
    public void A_tenth_of_a_mole_of_citric_acid_in_a_litre_reads_2_1() =>
        // Table of calculated pH of common acids: 2.08 at 100 mmol/L.
        Assert.Equal(2.08, Bowl.Of(("water", 1000), ("citric-acid", 19.21)).Ph().Crumb.Value.Value, 0.1);

    [Theory]
    [InlineData("vinegar-distilled", 2.6)]
    [InlineData("vinegar-cider", 3.2)]
    [InlineData("lemon-juice", 2.4)]
    [InlineData("lime-juice", 2.2)]
    [InlineData("buttermilk", 4.5)]
    [InlineData("yogurt-plain-whole", 4.3)]
    public void A_sour_food_by_itself_reads_its_own_pH(string id, double ph) =>
        // pH of the food by food chemistry tables, memory; buttermilk from a dairy handbook. The acid and the salts of
        // the food are counted back from its acidity and this pH, and the charge balance must find it again.
        Assert.Equal(ph, Bowl.Of((id, 100)).Ph().Batter.Value.Value, 0.05);

    [Theory]
    [InlineData("vinegar-distilled")]
    [InlineData("lemon-juice")]
    [InlineData("buttermilk")]
    public void Lye_for_all_of_its_acidity_brings_a_sour_food_to_the_end_of_a_titration(string id)
    {
        // Acidity of juice and dairy is titrated to pH 8.3 (phenolphthalein); memory. Near the end a drop moves the pH far,
        // so the lye is compared, to 3 %.
        var food = Bowl.Of((id, 100));
        var acid = 100 * TestKitchen.Ingredient(id).Typical[Fact.Acid];
        var water = 100 * TestKitchen.Ingredient(id).Typical[Fact.Water];
        var solution = ForecastKitchen.Acidity.Crumb(ForecastKitchen.Batter(food), Doubts.None());
        double With(double lye) => new ChargeBalance(solution with
        {
            Ions = [.. solution.Ions, new FreeIon(Mixture.Chemistry.Ions["sodium"], lye / water)],
        }).Solve().Ph;

        Assert.True(With(0.97 * acid) < 8.3);
        Assert.True(With(1.03 * acid) > 8.3);
    }

    [Fact]
    public void The_salts_that_the_pH_of_a_lemon_asks_for_are_in_its_table_of_potassium()
    {
        // USDA SR 26 row 09152: 103 mg of potassium in 100 g, 26 mmol/kg of juice.
        var juice = ForecastKitchen.Acidity.Crumb(ForecastKitchen.Batter(Bowl.Of(("lemon-juice", 100))), Doubts.None());
        var potassium = Assert.Single(juice.Ions).Molality * TestKitchen.Ingredient("lemon-juice").Typical[Fact.Water];

        Assert.InRange(1000 * potassium, 26 * 0.5, 26 * 2);
    }

    [Theory]
    [MemberData(nameof(Loaves))]
    public void A_loaf_reads_within_what_loaves_can_read_and_its_range_holds_it(string name)
    {
        var forecast = Loaf.All.Single(loaf => loaf.Name == name).Formula.Ph();

        Assert.All([forecast.Batter, forecast.Crumb], ph =>
        {
            Assert.InRange(ph.Value.Value, 5, 9);
            Assert.True(ph.Low.Value <= ph.Value.Value && ph.Value.Value <= ph.High.Value);
            Assert.True(ph.High.Value - ph.Low.Value > 0.1, "no batter is known to a tenth");
        });
    }

    [Fact]
    public void A_dry_mix_has_no_pH() =>
        Assert.Null(ForecastKitchen.Acidity.Foretell(
            Bowl.Of(("baking-soda", 30), ("cream-of-tartar", 60), ("cornstarch", 30)), Pascals.Atmosphere, Draws.Typical));

    [Fact]
    public void In_thinner_air_a_batter_holds_less_carbon_dioxide_and_reads_higher()
    {
        var high = ForecastKitchen.Acidity.Foretell(Loaf.Walnut, new Pascals(70_000), Draws.Typical)!;

        Assert.True(high.Batter.Value.Value > Loaf.Walnut.Ph().Batter.Value.Value);
    }

    private static double Tablet(ReferenceRow row) =>
        Bowl.Of(("water", 100), ("citric-acid", row.Number("citricMg") / 1000), ("baking-soda", row.Number("sodaMg") / 1000)).Ph().Batter.Value.Value;
}
