using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Data.Tests.Ingredients;

public sealed class PantryFilesTests
{
    private static readonly Pantry Pantry = ShippedPantry.Pantry;

    public static TheoryData<string> Relied => [.. ShippedPantry.Ids.Rows.Select(row => row["id"])];

    public static TheoryData<string> Shipped => [.. Pantry.Ingredients.Select(ingredient => ingredient.Id)];

    [Theory]
    [MemberData(nameof(Relied))]
    public void What_scripts_rely_on_is_there_with_its_role_and_food_number(string id)
    {
        var row = ShippedPantry.Ids.Rows.Single(row => row["id"] == id);
        var ingredient = TestKitchen.Ingredient(id);

        Assert.Equal(row["role"], RoleWords.Of(ingredient.Role));
        Assert.Equal(row["usda_ndb_no"], ingredient.UsdaFoodNumber ?? string.Empty);
    }

    [Fact]
    public void No_two_jars_have_one_label() => Assert.Equal(
        Pantry.Ingredients.Length, Pantry.Ingredients.Select(ingredient => ingredient.Id).Distinct().Count());

    [Fact]
    public void Every_file_of_the_folder_is_a_jar_of_the_pantry() => Assert.Equal(
        TestKitchen.Folder.JsonFilesOf("ingredients").Count, Pantry.Ingredients.Length);

    [Theory]
    [MemberData(nameof(Shipped))]
    public void Every_fact_is_known_and_low_typical_and_high_stand_in_order(string id) => Assert.All(
        Fact.All.Where(fact => fact != Fact.Price),
        fact => Assert.True(TestKitchen.Ingredient(id).RangeOf(fact) is { IsInOrder: true, Low: >= 0 }, fact.Id));

    [Theory]
    [MemberData(nameof(Shipped))]
    public void The_price_is_left_to_the_kitchen(string id) => Assert.Null(TestKitchen.Ingredient(id).RangeOf(Fact.Price));

    [Theory]
    [MemberData(nameof(Shipped))]
    public void Allergens_are_of_the_list_that_they_stand_under(string id)
    {
        // The nine of the US (FASTER Act 2021) and the fourteen of Regulation (EU) No 1169/2011, Annex II.
        string[] us = ["milk", "egg", "fish", "crustaceans", "tree-nuts", "peanut", "wheat", "soy", "sesame"];
        string[] eu =
        [
            "gluten-cereals", "crustaceans", "egg", "fish", "peanut", "soy", "milk", "tree-nuts", "celery", "mustard",
            "sesame", "sulphites", "lupin", "molluscs",
        ];
        var allergens = TestKitchen.Ingredient(id).Allergens;

        Assert.Empty(allergens.Us.Except(us));
        Assert.Empty(allergens.Eu.Except(eu));
    }

    [Theory]
    [MemberData(nameof(Shipped))]
    public void Nothing_with_milk_egg_or_gluten_is_called_free_of_it(string id)
    {
        var ingredient = TestKitchen.Ingredient(id);
        var allergens = ingredient.Allergens;

        Assert.False(ingredient.Suits.Vegan && (allergens.Carries("milk") || allergens.Carries("egg") || allergens.Carries("fish")));
        Assert.False(ingredient.Suits.GlutenFree && allergens.Carries("wheat"));
        Assert.False(ingredient.Suits.Vegan && !ingredient.Suits.Vegetarian);
    }

    [Fact]
    public void A_folder_with_a_byte_order_mark_in_it_is_read_all_the_same()
    {
        using var spoilt = new SpoiltFolder();
        spoilt.Rewrite("ingredients/almond-meal.json", text => $"\uFEFF{text}");

        Assert.Equal(Pantry.Ingredients.Length, spoilt.ReadPantry().Ingredients.Length);
    }

    [Fact]
    public void A_missing_file_is_named()
    {
        using var spoilt = new SpoiltFolder();
        spoilt.Remove("labels/groups.json");
        var fault = Assert.Throws<DataFaultException>(spoilt.ReadPantry);

        Assert.Equal("labels/groups.json", fault.File);
        Assert.Contains("missing", fault.Message, StringComparison.Ordinal);
    }
}
