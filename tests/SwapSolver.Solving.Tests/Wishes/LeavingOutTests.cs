using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Tests.Wishes;

public sealed class LeavingOutTests
{
    private static readonly LeavingOut Words = new(TestKitchen.Bakehouse.Pantry, TestKitchen.Bakehouse.Phrases);

    [Theory]
    [InlineData("nuts", "walnut-meal", true)]
    [InlineData("nuts", "chestnut-flour", true)] // a kitchen nut, and no allergen of the list
    [InlineData("nuts", "coconut-flour", false)]
    [InlineData("tree-nuts", "almond-butter", true)]
    [InlineData("tree-nuts", "tiger-nut-flour", false)] // a tuber
    [InlineData("tree-nuts", "peanut-flour-defatted", false)] // a legume
    [InlineData("dairy", "butter", true)]
    [InlineData("lactose", "ghee", true)] // by the list ghee is milk
    [InlineData("milk", "coconut-milk-canned", false)] // milk by name alone
    [InlineData("milk", "almond-drink-unsweetened", false)]
    [InlineData("eggs", "egg-white-dried", true)]
    [InlineData("gluten", "wheat-flour-whole", true)]
    [InlineData("gluten", "rye-flour-medium", true)]
    [InlineData("gluten", "buckwheat-flour", false)] // wheat by name alone
    [InlineData("wheat", "rye-flour-medium", false)]
    [InlineData("soya", "tofu-silken", true)]
    [InlineData("butter", "butter", true)]
    [InlineData("butter", "almond-butter", false)]
    [InlineData("water", "water", true)]
    public void A_word_leaves_out_what_it_means_and_not_what_it_sounds_like(string word, string id, bool isOut) =>
        Assert.Equal(isOut, Words.Of(word)!.LeftOut!.Carries(TestKitchen.Ingredient(id)));

    [Fact]
    public void A_word_that_nobody_knows_is_no_wish() => Assert.Null(Words.Of("sawdust"));

    [Fact]
    public void Every_known_word_is_a_wish() =>
        Assert.All(Words.KnownWords, word => Assert.NotNull(Words.Of(word)));

    [Fact]
    public void Other_words_for_an_allergen_are_the_same_wish() =>
        Assert.Equal(Words.Of("tree-nuts")!.Id, Words.Of("nut")!.Id);

    [Fact]
    public void The_band_of_a_wish_lets_nothing_in()
    {
        var hold = Words.Of("egg")!;
        Assert.Equal(Band.Nothing, hold.Band);
        Assert.True(hold.FromCaller);
        Assert.Equal("without:egg", hold.Id);
    }

    [Theory]
    [InlineData("milk", "butter", true)]
    [InlineData("milk", "water", false)]
    [InlineData("nuts", "walnut-meal", true)]
    [InlineData("nuts", "chestnut-flour", true)] // a kitchen nut by its group alone
    [InlineData("nuts", "water", false)]
    [InlineData("psyllium", "psyllium-husk", true)] // a group that is no allergen
    [InlineData("psyllium", "water", false)]
    public void What_is_known_to_be_in_it_is_certain(string word, string id, bool isCertain) =>
        Assert.Equal(isCertain, Words.Of(word)!.LeftOut!.IsCertainOf(TestKitchen.Ingredient(id)));

    [Fact]
    public void What_nobody_stated_goes_out_and_is_not_said_to_be_in_it()
    {
        var butter = TestKitchen.Ingredient("butter");
        // A row of a table among the nuts and seeds: it is taken for a flour, and no packet says what it may bring.
        var food = new StatedFood { Id = "row", Name = "row", Origin = FoodOrigin.Table, UsdaFoodNumber = "12999", Figures = TestKitchen.Ingredient("sunflower-seed-flour").Figures };
        var unstated = new FoodIngredient(TestPanels.Foods, TestKitchen.Bakehouse.Pantry.Allergens, new FoodWords(TestKitchen.Bakehouse.Phrases)).Of(food, null);
        Assert.False(unstated.Allergens.AreKnown);
        foreach (var wish in new[] { Words.Of("milk")!, Words.Of(Diet.DairyFree) })
        {
            Assert.True(wish.LeftOut!.Carries(unstated));
            Assert.False(wish.LeftOut!.IsCertainOf(unstated));
            Assert.True(wish.LeftOut!.IsCertainOf(butter));
        }

        // Of a thing that was named there is no doubt.
        Assert.True(LeavingOut.Of(butter).LeftOut!.IsCertainOf(butter));
    }

    [Fact]
    public void Only_a_swap_is_read_as_no_claim()
    {
        Assert.False(LeavingOut.BySwap(TestKitchen.Ingredient("butter")).LeftOut!.MayBeReadAsClaim);
        Assert.True(LeavingOut.Of(TestKitchen.Ingredient("butter")).LeftOut!.MayBeReadAsClaim);
        Assert.True(Words.Of("milk")!.LeftOut!.MayBeReadAsClaim);
    }

    [Theory]
    [InlineData(Diet.Vegan, "egg-whole", true)]
    [InlineData(Diet.Vegan, "butter", true)]
    [InlineData(Diet.Vegan, "honey", true)]
    [InlineData(Diet.Vegan, "gelatin", true)]
    [InlineData(Diet.Vegan, "aquafaba", false)]
    [InlineData(Diet.Vegetarian, "gelatin", true)]
    [InlineData(Diet.Vegetarian, "egg-whole", false)]
    [InlineData(Diet.DairyFree, "whey-protein-isolate", true)]
    [InlineData(Diet.DairyFree, "egg-whole", false)]
    [InlineData(Diet.DairyFree, "coconut-milk-canned", false)]
    public void A_way_of_eating_leaves_out_what_it_forbids(Diet diet, string id, bool isOut) =>
        Assert.Equal(isOut, Words.Of(diet).LeftOut!.Carries(TestKitchen.Ingredient(id)));

    [Fact]
    public void Whoever_eats_nothing_from_animals_gets_nothing_from_animals()
    {
        foreach (var (name, formula) in Loaf.All)
        {
            var outcomes = Ask.Variant(formula, Words.Of(Diet.Vegan)).Answer();
            Assert.All(
                outcomes.Answers.SelectMany(answer => answer.Formula.Lines),
                line => Assert.True(line.Ingredient.Suits.Vegan, $"{name}: {line.Ingredient.Id}"));
        }
    }
}
