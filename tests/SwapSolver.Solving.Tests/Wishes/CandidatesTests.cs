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
}
