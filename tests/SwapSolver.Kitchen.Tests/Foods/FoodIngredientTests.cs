using System.Collections.Immutable;
using CsCheck;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Foods;

public sealed class FoodIngredientTests
{
    private static readonly StatedAllergens NoAllergens = new([], []);

    [Fact]
    public void Allergens_that_nobody_stated_are_not_known_and_every_one_may_be_in_it()
    {
        var allergens = Shelf.Of(Shelf.Bag(Shelf.Flour)).Allergens;

        Assert.False(allergens.AreKnown);
        Assert.All(TestKitchen.Bakehouse.Pantry.Allergens, allergen => Assert.True(allergens.MayBe(allergen.Id)));
        Assert.Equal(new Suits(false, false, false), Shelf.Of(Shelf.Bag(Shelf.Flour)).Suits);
    }

    [Fact]
    public void Allergens_that_are_stated_as_none_are_known()
    {
        var allergens = Shelf.Of(Shelf.Bag(Shelf.Flour, NoAllergens)).Allergens;

        Assert.True(allergens.AreKnown);
        Assert.All(TestKitchen.Bakehouse.Pantry.Allergens, allergen => Assert.False(allergens.MayBe(allergen.Id)));
    }

    [Fact]
    public void The_allergens_of_what_it_is_like_stay_whatever_was_typed()
    {
        Assert.True(Shelf.Of(Shelf.Bag(Shelf.Flour, NoAllergens), "almond-meal").Allergens.Carries("tree-nuts"));
        var allergens = Shelf.Of(Shelf.Bag(Shelf.Flour, new StatedAllergens(["sesame"], ["tree-nuts", "milk"])), "almond-meal").Allergens;

        Assert.Equal(["sesame", "tree-nuts"], allergens.Us.Order(StringComparer.Ordinal));
        Assert.Equal(["sesame", "tree-nuts"], allergens.Eu.Order(StringComparer.Ordinal));
        // What is in it is not said to be perhaps in it.
        Assert.Equal("milk", Assert.Single(allergens.MayContain));
    }

    [Fact]
    public void Allergens_taken_after_another_say_so()
    {
        Assert.Equal((Shelf.Rules.LikeSource, Mark.Memory), SourceOf(Shelf.Of(Shelf.Bag(Shelf.Flour), "almond-meal")));
        Assert.Equal((Shelf.Rules.PacketSource, Mark.Published), SourceOf(Shelf.Of(Shelf.Bag(Shelf.Flour, NoAllergens), "almond-meal")));

        static (string, Mark) SourceOf(Ingredient ingredient) => (ingredient.Allergens.Source, ingredient.Allergens.Mark);
    }

    /// <summary>The US list names wheat (21 U.S.C. 321(qq)), the EU list cereals with gluten, namely wheat, rye, barley and
    /// oats (Regulation (EU) 1169/2011, annex II, 1).</summary>
    [Theory]
    [InlineData("wheat", null, true, true)]
    [InlineData("gluten-cereals", null, true, true)]
    [InlineData("gluten-cereals", "rye-flour-medium", false, true)]
    [InlineData("gluten-cereals", "almond-meal", true, true)]
    [InlineData("wheat", "rye-flour-medium", true, true)]
    [InlineData("milk", null, false, false)]
    public void Wheat_is_a_cereal_with_gluten_and_a_cereal_with_gluten_may_be_wheat(string stated, string? like, bool isWheat, bool isGluten)
    {
        var allergens = Shelf.Of(Shelf.Bag(Shelf.Flour, new StatedAllergens([stated], [])), like).Allergens;

        Assert.Equal((isWheat, isGluten), (allergens.Carries("wheat"), allergens.Carries("gluten-cereals")));
    }

    [Theory]
    [InlineData("milk", false, true, true)]
    [InlineData("egg", false, true, true)]
    [InlineData("fish", false, false, true)]
    [InlineData("molluscs", false, false, true)]
    [InlineData("wheat", true, true, false)]
    [InlineData("gluten-cereals", true, true, false)]
    [InlineData("sesame", true, true, true)]
    public void What_a_bag_says_of_itself_falls_when_its_allergens_say_otherwise(string allergen, bool vegan, bool vegetarian, bool glutenFree)
    {
        var all = new Suits(true, true, true);
        var stated = new StatedAllergens([allergen], []);

        Assert.Equal(new Suits(vegan, vegetarian, glutenFree), Shelf.Of(Shelf.Bag(Shelf.Flour, stated, all)).Suits);
        Assert.Equal(new Suits(vegan, vegetarian, glutenFree), Shelf.Of(Shelf.Bag(Shelf.Flour, stated), "almond-meal").Suits);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("almond-meal")]
    [InlineData("butter")]
    [InlineData("coconut-oil")]
    public void Composition_that_the_bag_does_not_state_stays_unknown(string? like)
    {
        var ingredient = Shelf.Of(Shelf.Bag(Shelf.Flour.Remove(Fact.Fibre).Remove(Fact.Sugars)), like);

        Assert.All([Fact.Fibre, Fact.Sugars, Fact.Sodium, Fact.SaturatedFat, Fact.Starch], fact => Assert.Null(ingredient.RangeOf(fact)));
    }

    [Fact]
    public void Stated_figures_stay_as_they_were_stated() => Assert.All(
        new[] { null, "almond-meal", "erythritol", "psyllium-husk-powder" },
        like => Assert.All(Shelf.Flour, pair => Assert.Equal(pair.Value, Shelf.Of(Shelf.Bag(Shelf.Flour), like).Figures[pair.Key])));

    [Fact]
    public void What_is_taken_after_another_keeps_its_middle_and_is_less_sure()
    {
        var psyllium = TestKitchen.Ingredient("psyllium-husk-powder");
        var figure = Shelf.Of(Shelf.Bag(Shelf.Flour), psyllium.Id).Figures[Fact.GelStrength];
        var like = psyllium.RangeOf(Fact.GelStrength)!.Value;

        Assert.Equal(like.Typical, figure.Range.Typical);
        Assert.Equal(Math.Max(0, like.Typical - ((like.Typical - like.Low) * Shelf.Rules.LikeWidening)), figure.Range.Low, 1e-12);
        Assert.Equal(like.Typical + ((like.High - like.Typical) * Shelf.Rules.LikeWidening), figure.Range.High, 1e-12);
        Assert.Equal((Shelf.Rules.LikeSource, Mark.Memory), (figure.Source, figure.Mark));
    }

    [Fact]
    public void A_bag_like_a_sweetener_holds_no_more_of_it_than_its_carbohydrate_leaves_room_for()
    {
        // Erythritol is all polyols; of this flour's 61 g carbohydrate 30 g are fibre and 5 g sugars: 26 g are left.
        var ingredient = Shelf.Of(Shelf.Bag(Shelf.Flour), "erythritol");

        Assert.Equal(26, ingredient.RangeOf(Fact.Polyols)!.Value.Typical, 1e-9);
        Assert.Equal(26, ingredient.RangeOf(Fact.Erythritol)!.Value.Typical, 1e-9);
        Assert.Empty(FactSums.Clashes(ingredient.Figures.RemoveRange(ingredient.NoneByNature), Quantities.Grams.None, Shelf.TableRules.PartAboveWhole));
    }

    [Fact]
    public void The_food_number_says_what_it_may_be()
    {
        var nut = Shelf.Of(Shelf.Bag(Shelf.Flour, number: "12999"));

        Assert.Equal(Role.Flour, nut.Role);
        Assert.Contains("nuts", nut.Groups);
        Assert.Equal(Shelf.Rules.OtherRole, Shelf.Of(Shelf.Bag(Shelf.Flour)).Role);
        Assert.Equal(Role.Gel, Shelf.Of(Shelf.Bag(Shelf.Flour, number: "12999", role: Role.Gel), "almond-meal").Role);
        Assert.False(nut.Usage.Offered);
    }

    [Fact]
    public void What_nobody_said_a_word_of_is_given_only_where_it_is_named()
    {
        Assert.True(Shelf.Of(Shelf.Bag(Shelf.Flour, number: "12999")).Usage.OnlyWhenNamed);
        Assert.False(Shelf.Of(Shelf.Bag(Shelf.Flour, role: Role.Flour)).Usage.OnlyWhenNamed);
        Assert.True(Shelf.Of(Shelf.Bag(Shelf.Flour, role: Role.Flour)).Usage.Offered);
        Assert.False(Shelf.Of(Shelf.Bag(Shelf.Flour), "almond-meal").Usage.OnlyWhenNamed);
    }

    [Fact]
    public void Every_fact_that_is_not_composition_is_there_for_the_rules_to_read()
    {
        var missing = Fact.All.Where(fact => fact != Fact.Price && Shelf.Of(Shelf.Bag(Shelf.Flour)).RangeOf(fact) is null);

        // None of them was stated, and each is a part of what was.
        Assert.Equal([Fact.SaturatedFat, Fact.Starch, Fact.Sodium, Fact.Potassium, Fact.Calcium, Fact.Iron], missing);
    }

    [Fact]
    public void Ranges_stand_in_order_whatever_the_composition_and_whatever_it_is_like()
    {
        var likes = TestKitchen.Bakehouse.Pantry.Ingredients.Select(ingredient => ingredient.Id).Prepend(null).ToList();
        var facts = Shelf.Rules.TableFacts.OrderBy(fact => fact.Index).ToList();
        var parts = Gen.OneOf(Gen.Double[0, 100], Gen.Double[0, 0.001], Gen.Double[99.999, 100]);
        Gen.Select(parts.Array[facts.Count], Gen.Int[0, (1 << facts.Count) - 1], Gen.Int[0, likes.Count - 1]).Sample(
            (values, stated, like) =>
            {
                var figures = facts.Zip(values)
                    .Where((_, place) => (stated & (1 << place)) != 0)
                    .ToImmutableDictionary(pair => pair.First, pair => Shelf.Rules.Spreads[pair.First].Of(pair.First, pair.Second, "invented"));
                var ingredient = Shelf.Of(Shelf.Bag(figures), likes[like]);

                Assert.All(ingredient.Figures, pair => Assert.True(
                    pair.Value.Range.IsInOrder && pair.Value.Range.Low >= 0 && pair.Value.Range.High <= pair.Key.Most, $"{pair.Key}: {pair.Value.Range}"));
                Assert.Empty(ingredient.NoneByNature.Intersect(ingredient.Figures.Keys));
            },
            iter: 3000);
    }
}
