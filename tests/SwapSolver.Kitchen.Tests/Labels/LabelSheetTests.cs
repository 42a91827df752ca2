using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Labels;
using SwapSolver.Kitchen.Nutrition;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Kitchen.Tests.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Labels;

public sealed class LabelSheetTests
{
    private static readonly Formula Walnut = Loaf.Walnut with { BakeLoss = new Percent(11) };

    public static TheoryData<string> Laws => [.. TestLabels.Laws.All.Select(law => law.Id)];

    [Theory]
    [MemberData(nameof(Laws))]
    public void Slices_add_up_to_the_loaf_and_so_do_hundreds_of_grams(string law)
    {
        Assert.All(LabelSheet.Of(Walnut, TestLabels.Law(law)).Figures.Where(figure => figure.InLoaf is not null), figure =>
        {
            Assert.Equal(figure.InLoaf!.Value.Value, figure.PerSlice!.Value.Value * Walnut.Slices, 1e-9 * (1 + figure.InLoaf.Value.Value));
            Assert.Equal(figure.InLoaf!.Value.Value, figure.PerHundredGrams!.Value.Value * Walnut.BakedMass.Value / 100, 1e-9 * (1 + figure.InLoaf.Value.Value));
        });
    }

    [Theory]
    [MemberData(nameof(Laws))]
    public void Rounding_leaves_the_unrounded_figures_alone(string law)
    {
        var portion = Portion.WholeLoaf(Walnut, TestKitchen.Bakehouse.Balances.NetCarbohydrate);
        var sheet = LabelSheet.Of(Walnut, TestLabels.Law(law));

        Assert.Equal(portion.Fat.Value, InLoaf(sheet, Nutrient.Fat), 1e-9);
        Assert.Equal(portion.Protein.Value, InLoaf(sheet, Nutrient.Protein), 1e-9);
        Assert.Equal(portion.Sugars!.Value.Value, InLoaf(sheet, Nutrient.Sugars), 1e-9);
    }

    [Fact]
    public void The_lines_stand_in_the_order_of_the_law()
    {
        // 21 CFR 101.9(c), order from memory; Regulation (EU) No 1169/2011, Article 30 and Annex XV.
        Assert.Equal(
            ["energyKcal", "fat", "saturatedFat", "transFat", "cholesterol", "sodium", "carbohydrate", "fibre", "sugars", "addedSugars", "protein", "vitaminD", "calcium", "iron", "potassium"],
            Ids("us", Walnut));
        Assert.Equal(["energyKilojoules", "energyKcal", "fat", "saturatedFat", "carbohydrate", "sugars", "starch", "fibre", "protein", "salt"], Ids("eu", Walnut));
        Assert.Equal(Ids("eu", Walnut), Ids("uk", Walnut));
    }

    [Fact]
    public void Sugar_alcohol_has_a_line_where_there_is_some()
    {
        Assert.Contains("polyols", Ids("us", Loaf.Muffins));
        Assert.DoesNotContain("polyols", Ids("us", Walnut));
    }

    [Fact]
    public void What_no_table_states_is_not_known_and_never_nothing()
    {
        var sheet = LabelSheet.Of(Walnut, TestLabels.Law("us"));

        Assert.Equal(["transFat", "cholesterol", "addedSugars", "vitaminD"], sheet.NotKnown.Select(line => line.Id));
        Assert.All(sheet.Figures.Where(figure => figure.InLoaf is null), figure => Assert.Null(figure.Print(figure.PerSlice)));
    }

    [Fact]
    public void A_serving_of_two_slices_holds_twice_a_slice()
    {
        var sheet = LabelSheet.Of(Walnut, TestLabels.Law("us"), servingSlices: 2);

        Assert.Equal(Walnut.BakedMass.Value / 6, sheet.ServingMass.Value, 1e-9);
        Assert.All(sheet.Figures.Where(figure => figure.InLoaf is not null), figure => Assert.Equal(2 * figure.PerSlice!.Value.Value, figure.PerServing!.Value.Value, 1e-9 * (1 + figure.InLoaf!.Value.Value)));
    }

    /// <summary>Table salt has 38,758 mg sodium in 100 g (USDA release 26); times 2.5 that is 96.9 g and not 100, for the true
    /// ratio is 2.542.</summary>
    [Fact]
    public void Salt_on_a_label_is_sodium_times_two_and_a_half()
    {
        var salt = LabelSheet.Of(Bowl.Of(("salt", 100)), TestLabels.Law("eu"));

        Assert.Equal(96.9, salt.Figures.Single(figure => figure.Line.Nutrient == Nutrient.Salt).PerHundredGrams!.Value.Value, 0.05);
    }

    [Fact]
    public void Water_that_bakes_off_makes_a_hundred_grams_richer_and_a_slice_no_poorer()
    {
        var (raw, baked) = (LabelSheet.Of(Loaf.Walnut, TestLabels.Law("eu")), LabelSheet.Of(Walnut, TestLabels.Law("eu")));

        Assert.Equal(raw.Figures[2].PerSlice, baked.Figures[2].PerSlice);
        Assert.Equal(raw.Figures[2].PerHundredGrams!.Value.Value / 0.89, baked.Figures[2].PerHundredGrams!.Value.Value, 1e-9);
    }

    [Fact]
    public void Energy_is_counted_the_way_that_is_asked_for()
    {
        var (own, general) = (LabelSheet.Of(Walnut, TestLabels.Law("us")), LabelSheet.Of(Walnut, TestLabels.Law("us"), TestLabels.Method("four-four-nine")));

        Assert.Equal(("own-figures", "four-four-nine"), (own.Method.Id, general.Method.Id));
        // 4 kcal for a gram of protein and of carbohydrate, 9 for one of fat (21 CFR 101.9(c)(1)(i)(B), from memory).
        Assert.Equal(
            (4 * (InLoaf(general, Nutrient.Protein) + InLoaf(general, Nutrient.Carbohydrate))) + (9 * InLoaf(general, Nutrient.Fat)), InLoaf(general, Nutrient.EnergyKcal), 1e-6);
        Assert.NotEqual(InLoaf(own, Nutrient.EnergyKcal), InLoaf(general, Nutrient.EnergyKcal), 1.0);
    }

    [Fact]
    public void The_share_of_the_day_is_of_the_portion_that_is_asked_for()
    {
        // 78 g of fat a day (21 CFR 101.9(c)(9), from memory), printed in whole percent.
        var fat = LabelSheet.Of(Walnut, TestLabels.Law("us")).Figures.Single(figure => figure.Line.Nutrient == Nutrient.Fat);

        Assert.Equal(Math.Round(fat.InLoaf!.Value.Value / 12 / 78 * 100), fat.DailyShare(LabelPortion.Serving)!.Value.Value);
        Assert.Equal(Math.Round(fat.InLoaf!.Value.Value / Walnut.BakedMass.Value * 100 / 78 * 100), fat.DailyShare(LabelPortion.HundredGrams)!.Value.Value);
        Assert.Null(LabelSheet.Of(Walnut, TestLabels.Law("us")).Figures.Single(figure => figure.Line.Nutrient == Nutrient.Protein).DailyShare(LabelPortion.Serving));
        Assert.Null(LabelSheet.Of(Walnut, TestLabels.Law("us")).Figures.Single(figure => figure.Line.Nutrient == Nutrient.Cholesterol).DailyShare(LabelPortion.Serving));
    }

    [Fact]
    public void What_one_line_does_not_state_is_not_known_of_the_loaf_unless_there_is_none_of_that_line()
    {
        var silent = Invented.Of("silent", Role.Flour, (Fact.Fat, 10)).NotKnowing(Fact.Fibre);
        var known = Invented.Of("known", Role.Flour, (Fact.Fat, 20), (Fact.Fibre, 30));
        Formula With(double grams) => Walnut with { Lines = [new Line(known, new Grams(100)), new Line(silent, new Grams(grams))] };

        Assert.Null(new LoafContents(With(1)).Of(Fact.Fibre));
        Assert.Equal(20.1, new LoafContents(With(1)).Of(Fact.Fat)!.Value.Value, 1e-9);
        Assert.Equal(30, new LoafContents(With(0)).Of(Fact.Fibre)!.Value.Value, 1e-9);
    }

    [Fact]
    public void A_law_that_is_not_known_is_none() => Assert.Null(TestLabels.Laws.Find("nowhere"));

    private static double InLoaf(LabelSheet sheet, Nutrient nutrient) => sheet.Figures.Single(figure => figure.Line.Nutrient == nutrient).InLoaf!.Value.Value;

    private static IEnumerable<string> Ids(string law, Formula formula) => LabelSheet.Of(formula, TestLabels.Law(law)).Figures.Select(figure => figure.Line.Id);
}
