using SwapSolver.Data.Files;
using SwapSolver.Data.Foods;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Data.Tests.Ingredients;

/// <summary>Our composition against tables of another country, by another laboratory.</summary>
public sealed class IndianTablesTests
{
    private static readonly ReferenceTable Same = ReferenceTable.Read("Ingredients/Reference/indian-foods.csv");

    private static readonly ReferenceTable Explained = ReferenceTable.Read("Ingredients/Reference/indian-foods-explained.csv");

    private static readonly FoodRules Rules = FoodRulesFile.Read(TestKitchen.Folder, SourceKeys.Read(TestKitchen.Folder));

    private static readonly string[] Minerals = ["sodium", "potassium", "calcium", "iron"];

    public static TheoryData<string> Foods => [.. Same.Rows.Select(row => row["ingredient"])];

    public static TheoryData<string> Explanations => [.. Explained.Names];

    /// <summary>Fact, key of its column, letters of the food groups whose spread is meant: A grains, B legumes, H nuts and
    /// oil seeds, and, for what follows the soil, every plant from A to H.</summary>
    public static TheoryData<string, string, string> Spreads => new()
    {
        { "potassiumMgPer100G", "k", "ABCDEFGH" },
        { "calciumMgPer100G", "ca", "ABCDEFGH" },
        { "ironMgPer100G", "fe", "ABCDEFGH" },
        { "proteinGPer100G", "protcnt", "ABH" },
        { "fibreGPer100G", "fibtg", "ABH" },
    };

    [Fact]
    public void Twenty_foods_and_more_are_compared() => Assert.True(Same.Rows.Select(row => row["code"]).Distinct().Count() >= 20);

    [Theory]
    [MemberData(nameof(Foods))]
    public void The_row_is_the_food_that_we_think_it_is(string id)
    {
        var row = Same.Rows.Single(row => row["ingredient"] == id);
        var food = IndianFoods.Of(row["code"]);

        Assert.Equal(row["food"], food.Name);
        Assert.True(food.Regions > 1 && food["water"].Deviation > 0, "no deviation is printed");
    }

    [Theory]
    [MemberData(nameof(Foods))]
    public void A_food_is_made_of_what_the_other_tables_say_or_the_difference_is_explained(string id) => Assert.All(
        Of(id),
        compared =>
        {
            var isExplained = Explanation(id, compared.Nutrient) is not null;
            ReferenceLedger.Note(
                Same.Rows.Single(row => row["ingredient"] == id), $"{id}, {compared.Nutrient}{(isExplained ? ", explained" : string.Empty)}", compared.Theirs.Mean, compared.Ours.Typical, compared.Uncertainty);
            Assert.True(compared.Agrees || isExplained, $"{id}: {compared}, apart by {compared.Difference:0.###}, allowed {compared.Uncertainty:0.###}");
        });

    [Fact]
    public void Every_explanation_is_of_a_food_that_is_compared() => Assert.Empty(
        Explained.Rows.Select(row => row["ingredient"]).Except(Same.Rows.Select(row => row["ingredient"])));

    [Theory]
    [MemberData(nameof(Explanations))]
    public void An_explanation_is_needed_and_reaches_as_far_as_the_difference(string name)
    {
        var row = Explained[name];
        var compared = Of(row["ingredient"]).Single(compared => compared.Nutrient == row["nutrient"]);

        Assert.False(compared.Agrees, $"{row.Text}: the two agree, so there is nothing to explain");
        Assert.True(compared.Difference <= row.Number("reach"), $"{row.Text}: {compared.Difference:0.###} apart");
        Assert.True(compared.Difference >= row.Number("reach") / 2, $"{row.Text}: {compared.Difference:0.###} apart, which is less than what is explained");
    }

    [Theory]
    [MemberData(nameof(Explanations))]
    public void An_explanation_explains_only_what_its_kind_can(string name)
    {
        var row = Explained[name];
        var all = Of(row["ingredient"]).ToDictionary(compared => compared.Nutrient);
        var compared = all[row["nutrient"]];
        var food = IndianFoods.Of(Same.Rows.Single(same => same["ingredient"] == row["ingredient"])["code"]);
        var isMineral = Minerals.Contains(compared.Nutrient);

        // Per 100 g of the food as it is: the dry shares belong to different waters.
        var ourShare = compared.Ours.Typical * (100 - all["water"].Ours.Typical) / 100;
        var theirShare = compared.Theirs.Mean * (100 - all["water"].Theirs.Mean) / 100;
        Assert.True(
            row["kind"] switch
            {
                "fibre-method" => compared.Nutrient is "fibre" or "available-carbohydrate" && all["carbohydrate"].Agrees,
                "soil-and-feed" => isMineral,
                "trace" => compared.Nutrient != "water" && ourShare < 1 && theirShare < 1,
                "remainder" => compared.Nutrient.EndsWith("carbohydrate", StringComparison.Ordinal) && food["choavldf"].Mean == 0,
                "ashing" => compared.Nutrient == "ash",
                "variety" => !isMineral && compared.Nutrient != "water",
                "milling" => food.Code[0] == 'A',
                "preparation" => true,
                _ => false,
            },
            row.Text);
    }

    [Fact]
    public void Their_carbohydrate_is_what_the_other_parts_leave_but_where_they_print_nothing() => Assert.All(
        Same.Rows.Select(row => IndianFoods.Of(row["code"])).Where(food => food["choavldf"].Mean > 0),
        food => Assert.Equal(food["choavldf"].Mean, food.AvailableCarbohydrate.Mean, 0.05));

    [Fact]
    public void The_juice_of_a_lemon_is_as_sour_as_theirs()
    {
        var acid = IndianFoods.Of("E033")["orgac"];
        var ours = TestKitchen.Ingredient("lemon-juice").RangeOf(Fact.OrganicAcid)!.Value;

        Assert.InRange(acid.Mean, ours.Low, ours.High);
        Assert.Equal(acid.Mean, ours.Typical, 2 * acid.Deviation);
    }

    [Theory]
    [MemberData(nameof(Spreads))]
    public void A_plant_food_of_another_table_is_given_as_wide_a_range_as_regions_differ(string fact, string key, string groups)
    {
        // Half of all plant foods that were bought in four regions or more lie within two deviations of this share.
        var shares = IndianFoods.All
            .Where(food => food.Regions >= 4 && groups.Contains(food.Code[0], StringComparison.Ordinal) && food[key] is { Mean: > 0, Deviation: > 0 })
            .Select(food => food[key].Deviation / food[key].Mean)
            .Order()
            .ToList();
        var ours = Rules.Spreads[Fact.All.Single(one => one.Id == fact)].Share;

        Assert.True(shares.Count > 50);
        Assert.True(ours >= 2 * shares[shares.Count / 2], $"{100 * ours:0.#} % against {200 * shares[shares.Count / 2]:0.#} %");
    }

    private static IReadOnlyList<Compared> Of(string id) =>
        Compared.Of(TestKitchen.Ingredient(id), IndianFoods.Of(Same.Rows.Single(row => row["ingredient"] == id)["code"]));

    private static ReferenceRow? Explanation(string id, string nutrient) =>
        Explained.Rows.SingleOrDefault(row => row["ingredient"] == id && row["nutrient"] == nutrient);
}
