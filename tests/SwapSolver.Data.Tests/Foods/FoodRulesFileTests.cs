using SwapSolver.Data.Files;
using SwapSolver.Data.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Data.Tests.Foods;

public sealed class FoodRulesFileTests
{
    private const string File = "practice/foods.json";

    private static readonly Kitchen.Foods.FoodRules Shipped = FoodRulesFile.Read(TestKitchen.Folder, SourceKeys.Read(TestKitchen.Folder));

    [Fact]
    public void Every_composition_that_a_table_states_has_a_spread_with_a_source()
    {
        var sources = SourceKeys.Read(TestKitchen.Folder);
        Assert.Equal(
            [
                Fact.Water, Fact.Protein, Fact.Fat, Fact.SaturatedFat, Fact.Carbohydrate, Fact.Fibre, Fact.Sugars, Fact.Polyols, Fact.Erythritol, Fact.Allulose,
                Fact.Starch, Fact.Ash, Fact.Alcohol, Fact.Other, Fact.Energy, Fact.Sodium, Fact.Potassium, Fact.Calcium, Fact.Iron,
            ],
            Shipped.TableFacts.OrderBy(fact => fact.Index));
        Assert.All(Shipped.Spreads.Values, spread => Assert.NotEqual(spread.Source, sources.Describe(spread.Source)));
        Assert.Equal(10, Shipped.Spreads[Fact.Water].OfRest!.Value.Value);
        Assert.Null(Shipped.Spreads[Fact.Fat].OfRest);
    }

    [Theory]
    [InlineData("12007", Role.Flour, "nuts")]
    [InlineData("01001", Role.Flavour, "dairy")]
    [InlineData("16157", Role.Flour, "legumes")]
    [InlineData("04053", Role.Fat, "oils")]
    [InlineData("99999", Role.Flavour, null)]
    [InlineData(null, Role.Flavour, null)]
    public void A_food_number_begins_with_its_group(string? number, Role role, string? group)
    {
        var family = Shipped.FamilyOf(number);

        Assert.Equal(role, family.Role);
        Assert.Equal(group is not null, family.Groups.Length > 0);
        Assert.True(group is null || family.Groups.Contains(group));
    }

    [Theory]
    [InlineData("a fact that is none", "\"ironMgPer100G\": {", "\"zincMgPer100G\": {", "\"zincMgPer100G\": ^{", "'zincMgPer100G'")]
    [InlineData("more than all of it", "\"percent\": 20, \"percentOfRest\": 10", "\"percent\": 120, \"percentOfRest\": 10", "\"percent\": ^120", "between 0 and 100")]
    [InlineData("less than nothing", "\"percentOfRest\": 10", "\"percentOfRest\": -10", "\"percentOfRest\": ^-10", "between 0 and 100")]
    [InlineData("ends that cross", "\"fibreGPerG\": { \"low\": 3,", "\"fibreGPerG\": { \"low\": 5,", "\"fibreGPerG\": ^{", "in order")]
    [InlineData("a likeness that makes surer", "\"widening\": 1.25", "\"widening\": 0.5", "\"widening\": ^0.5", "between 1 and 10")]
    [InlineData("a group that is none", "[\"nuts\", \"seeds\", \"coconut\"]", "[\"nutz\"]", "[^\"nutz\"]", "'nutz'")]
    [InlineData("a role that is none", "\"usdaGroup\": \"12\", \"role\": \"flour\"", "\"usdaGroup\": \"12\", \"role\": \"meal\"", "\"role\": ^\"meal\"", "'meal'")]
    [InlineData("a source that is none", "\"range-energy\"", "\"hearsay\"", "^\"hearsay\"", "'hearsay'")]
    public void What_cannot_be_believed_is_shown_where_it_stands(string spoilt, string written, string instead, string place, string says)
    {
        Assert.NotEmpty(spoilt);
        using var folder = new SpoiltFolder();
        var text = folder.Replace(File, written, instead);

        Assert.Throws<DataFaultException>(folder.ReadFoodRules).AssertPointsAt(File, text, place, says);
    }
}
