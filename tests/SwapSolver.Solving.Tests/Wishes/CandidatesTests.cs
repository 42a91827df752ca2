using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Tests.Wishes;

public sealed class CandidatesTests
{
    private static readonly Candidates Pantry = new(TestKitchen.Bakehouse);

    private static HashSet<string> For(Formula formula, params ReadOnlySpan<Hold> wishes) =>
        [.. Pantry.For(formula, [.. wishes]).Select(ingredient => ingredient.Id)];

    [Fact]
    public void For_a_nut_flour_other_flours_are_looked_at_and_no_sweetener()
    {
        var found = For(Loaf.Walnut, Ask.Without("tree-nuts"));
        Assert.Contains("sunflower-seed-flour", found);
        Assert.Contains("psyllium-husk", found);
        Assert.DoesNotContain("erythritol", found);
    }

    [Fact]
    public void What_is_left_out_is_kept_ready_for_the_wish_to_be_dropped_and_stays_out_of_the_model()
    {
        Assert.Contains("almond-meal", For(Loaf.Walnut, Ask.Without("tree-nuts")));
        foreach (var (name, formula) in Loaf.All)
        {
            foreach (var allergen in TestKitchen.Bakehouse.Pantry.Allergens)
            {
                var model = FormulaModel.Build(Ask.Variant(formula, Ask.Without(allergen.Id)).Problem(), wholeSteps: false);
                Expect.None(
                    from line in model.Lines
                    where line.Ingredient.Allergens.Carries(allergen.Id)
                    select $"{name} without {allergen.Id}: {line.Ingredient.Id}");
            }
        }
    }

    [Fact]
    public void A_loaf_without_gluten_is_never_offered_wheat_and_one_with_gluten_is()
    {
        Expect.None(
            from loaf in Loaf.All
            where loaf.Formula.Lines.All(line => line.Ingredient.Suits.GlutenFree)
            from ingredient in Pantry.For(loaf.Formula, [Ask.Without("tree-nuts")], Role.Flour)
            where !ingredient.Suits.GlutenFree
            select $"{loaf.Name}: {ingredient.Id}");
        var wheaten = Bowl.Of(("wheat-flour-all-purpose", 300), ("water", 200), ("yeast-active-dry", 5));
        Assert.Contains("rye-flour-medium", For(wheaten, Ask.Without("wheat")));
    }

    [Fact]
    public void A_loaf_of_plants_stays_one()
    {
        var plants = Bowl.Of(("almond-meal", 200), ("water", 150), ("psyllium-husk", 15), ("olive-oil", 20), ("baking-soda", 3), ("cream-of-tartar", 7));
        Assert.All(
            Pantry.For(plants, [Ask.Without("almond-meal")], Enum.GetValues<Role>()),
            ingredient => Assert.True(ingredient.Suits.Vegan, ingredient.Id));
    }

    [Fact]
    public void Where_eggs_go_out_what_sets_and_what_is_moist_may_come_in()
    {
        var found = For(Loaf.Walnut, Ask.Without("egg"));
        Assert.Contains("applesauce-unsweetened", found);
        Assert.Contains("whey-protein-isolate", found);
        Assert.Contains("aquafaba", found);
        Assert.DoesNotContain("cinnamon", found);
    }

    [Fact]
    public void What_is_in_the_bowl_is_not_new() =>
        Assert.DoesNotContain("water", For(Loaf.Walnut, Ask.Without("egg")));

    [Fact]
    public void Acids_that_are_not_offered_stay_on_the_shelf()
    {
        var found = For(Loaf.Walnut, Ask.Without("cream-of-tartar"));
        Assert.Contains("citric-acid", found);
        Assert.DoesNotContain("fumaric-acid", found);
        Assert.DoesNotContain("ammonium-bicarbonate", found);
    }

    [Fact]
    public void A_loaf_of_low_carb_flours_is_not_offered_starch()
    {
        // Cornstarch is nine tenths net carbohydrate; the walnut loaf's flours are a tenth.
        Assert.DoesNotContain("cornstarch", For(Loaf.Walnut, Ask.Without("walnut-meal")));
        var starchy = Bowl.Of(("rice-flour-white", 200), ("water", 150)).WithEggs(2);
        Assert.Contains("cornstarch", For(starchy, Ask.Without("rice-flour-white")));
    }

    [Fact]
    public void Salt_and_spice_may_simply_go() =>
        Assert.Empty(For(Loaf.Walnut, Ask.Without("salt")));

    [Fact]
    public void For_yeast_soda_acid_and_baking_powder_are_looked_at()
    {
        var found = For(Loaf.Yeast, Ask.Without("yeast-active-dry"));
        Assert.Contains("baking-soda", found);
        Assert.Contains("cream-of-tartar", found);
        Assert.Contains("baking-powder-double-acting", found);
    }

    [Fact]
    public void Each_of_two_that_go_is_stood_in_for()
    {
        // Eggs and nuts: what is moist, what sets, other flours, and of the nuts one that is offered to nobody else.
        var found = For(Loaf.Walnut, Ask.Without("egg"), Ask.Without("walnut-meal"));
        Assert.Contains("applesauce-unsweetened", found);
        Assert.Contains("sunflower-seed-flour", found);
        Assert.Contains("brazil-nut-meal", found);
        // Sesame seed is offered to seeds alone.
        Assert.DoesNotContain("sesame-seeds-hulled", found);
        Assert.Contains("sesame-seeds-hulled", For(Loaf.Sunflower, Ask.Without("sunflower-seed-flour")));
    }

    [Fact]
    public void For_an_egg_a_protein_that_sets_is_looked_at_and_a_flour_that_hardly_does_is_not()
    {
        var found = For(Loaf.Walnut, Ask.Without("egg"));
        // Soy isolate: four fifths protein, of which 40 % set; full-fat soy flour: two fifths protein.
        Assert.Contains("soy-protein-isolate", found);
        Assert.Contains("pea-protein", found);
        Assert.DoesNotContain("soy-flour-full-fat", found);
        // Yogurt is moist and has protein; vinegar is as moist and has none.
        Assert.Contains("yogurt-plain-whole", found);
        Assert.DoesNotContain("vinegar-distilled", found);
    }

    [Fact]
    public void What_was_wet_or_sour_is_stood_in_for_in_that_too()
    {
        // Sour cream is counted among the acids, and is three quarters water.
        Assert.Contains("almond-drink-unsweetened", For(Loaf.CocoaCake, Ask.Without("sour-cream")));
        Assert.DoesNotContain("almond-drink-unsweetened", For(Loaf.Walnut, Ask.Without("cream-of-tartar")));
        // Molasses sweetens, and brings acid for the soda.
        var dark = Loaf.Walnut with { Lines = Loaf.Walnut.Lines.Add(new Line(TestKitchen.Ingredient("molasses"), new(30))) };
        Assert.Contains("citric-acid", For(dark, Ask.Without("molasses")));
        Assert.DoesNotContain("baking-powder-double-acting", For(dark, Ask.Without("molasses")));
        // Without soda the loaf may be leavened by powder, with the acid changed.
        var found = For(Loaf.Walnut, Ask.Without("baking-soda"));
        Assert.Contains("citric-acid", found);
        Assert.Contains("baking-powder-double-acting", found);
        // A fat goes: another fat, and no liquid.
        Assert.Contains("olive-oil", For(Loaf.Walnut, Ask.Without("butter")));
        Assert.DoesNotContain("almond-drink-unsweetened", For(Loaf.Walnut, Ask.Without("butter")));
    }

    [Fact]
    public void A_flour_may_have_half_as_much_starch_again_as_the_loaf_s_own_or_as_the_one_that_goes()
    {
        // Net carbohydrate in 100 g: chickpea 47, tiger nut 46, almond 9; 210 g of them have 45 on average, so 67 is let in:
        // buckwheat with 61 is, brown rice with 72 is not; the honey is no flour.
        var middling = Bowl.Of(("chickpea-flour", 100), ("tiger-nut-flour", 100), ("almond-meal", 10), ("honey", 600), ("water", 200)).WithEggs(2);
        var found = For(middling, Ask.Without("almond-meal"));
        Assert.Contains("buckwheat-flour", found);
        Assert.DoesNotContain("rice-flour-brown", found);
        // 20 g of rice among 380 g of almond: 12 on average, and 78 where the rice goes, by itself or with others.
        var pinch = Bowl.Of(("rice-flour-white", 20), ("almond-meal", 380), ("water", 200)).WithEggs(2);
        Assert.DoesNotContain("cornstarch", For(pinch, Ask.Without("almond-meal")));
        Assert.Contains("cornstarch", For(pinch, Ask.Without("rice-flour-white")));
        Assert.Contains("cornstarch", For(pinch, Ask.Without("rice-flour-white"), Ask.Without("almond-meal"), Ask.Without("egg")));
    }

    [Fact]
    public void A_bowl_without_flour_may_be_given_one_of_little_starch()
    {
        var custard = Bowl.Of(("water", 200), ("butter", 100)).WithEggs(4);
        var found = Pantry.For(custard, [Ask.Without("egg")], Role.Flour).Select(one => one.Id).ToList();
        Assert.Contains("sunflower-seed-flour", found);
        Assert.DoesNotContain("cornstarch", found);
    }

    [Fact]
    public void Cheese_made_with_rennet_comes_into_no_vegetarian_loaf_and_into_one_with_gelatin()
    {
        var vegetarian = Bowl.Of(("almond-meal", 200), ("water", 100), ("butter", 40)).WithEggs(2);
        var set = vegetarian with { Lines = vegetarian.Lines.Add(new Line(TestKitchen.Ingredient("gelatin"), new(8))) };
        Assert.False(TestKitchen.Ingredient("parmesan-grated").Suits.Vegetarian);
        Assert.DoesNotContain("parmesan-grated", For(vegetarian, Ask.Without("butter")));
        Assert.Contains("parmesan-grated", For(set, Ask.Without("butter")));
    }

    [Fact]
    public void Only_water_is_water_and_not_where_it_is_left_out()
    {
        var dry = Bowl.Of(("almond-meal", 200), ("almond-drink-unsweetened", 100)).WithEggs(2);
        Hold[] without = [Ask.Without("egg"), Ask.Without("water"), Ask.NetCarbs(2)];
        Assert.Equal(["water"], Pantry.Water(dry, dry, [Ask.Without("egg"), Ask.NetCarbs(2)]).Select(one => one.Id));
        Assert.Empty(Pantry.Water(dry, dry, [.. without]));
        Assert.Empty(Pantry.Water(dry, Loaf.Walnut, []));
    }

    [Fact]
    public void Acids_for_soda_are_acids_that_are_offered()
    {
        var acids = Pantry.Acids(Loaf.Walnut, Loaf.Muffins, []);
        Assert.All(acids, acid => Assert.True(acid is { Role: Role.Acid, Usage.Offered: true }, acid.Id));
        Assert.Contains(acids, acid => acid.Id == "cream-of-tartar");
        Assert.DoesNotContain(Pantry.Acids(Loaf.Walnut, Loaf.Walnut, []), acid => acid.Id == "cream-of-tartar");
    }
}
