using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Questions;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Tests.Answers;

/// <summary>What a careful baker would laugh at; common practice, no source.</summary>
public sealed class CommonSenseTests
{
    [Fact]
    public void Salt_spice_and_yeast_are_no_ballast() =>
        Expect.None(
            from baked in BakedQuestions.Answers
            where baked.Question.Wishes.All(wish => wish.Balance is not Kitchen.Balances.Salt)
            from line in baked.Question.Formula.Lines
            where line.Ingredient.Role is Role.Salt or Role.Yeast && !IsLeftOut(baked.Question.Wishes, line.Ingredient)
            where baked.Answer.Formula.MassOf(line.Ingredient) != line.Grams
            select $"{baked.Question.Name}: {line.Ingredient.Id} became {baked.Answer.Formula.MassOf(line.Ingredient).Value} g");

    [Fact]
    public void A_loaf_without_sweetener_is_given_none_to_keep_a_cap_with() =>
        Expect.None(
            from loaf in Loaf.All
            where loaf.Formula.MassOf(Role.Sweetener) == Grams.None
            from cap in new[] { 0.8, 1.2, 1.6 }
            from answer in Ask.Variant(loaf.Formula, Ask.NetCarbs(cap)).Answer().Answers
            where answer.Formula.MassOf(Role.Sweetener) > Grams.None
            select $"{loaf.Name} at {cap} g");

    [Fact]
    public void A_repair_does_not_bring_back_the_allergen_that_went_out()
    {
        foreach (var to in new[] { "aquafaba", "flaxseed-ground", null })
        {
            var verdict = Ask.Check(Loaf.Walnut, "egg-whole", to);
            Assert.Equal(Verdict.DoesNotBalance, verdict.Verdict);
            Assert.NotNull(verdict.Repair);
            Assert.DoesNotContain(verdict.Repair.Formula.Lines, line => line.Ingredient.Allergens.Carries("egg"));
        }
    }

    [Fact]
    public void The_cautions_of_a_check_are_those_of_the_bowl_that_is_proposed()
    {
        var verdict = Ask.Check(Loaf.Walnut, "egg-whole", null);
        Assert.Contains(verdict.Repair!.Formula.Lines, line => line.Ingredient.Allergens.Carries("milk"));
        Assert.Contains(verdict.Cautions, caution => caution.Contains("milk", StringComparison.Ordinal));
    }

    [Fact]
    public void Soda_in_place_of_baking_powder_comes_with_an_acid()
    {
        var verdict = Ask.Check(Loaf.Muffins, "baking-powder-double-acting", "baking-soda", 2.8);
        Assert.Equal(Verdict.BalancesWithRepair, verdict.Verdict);
        var tally = new Tally(verdict.Repair!.Formula);
        Assert.InRange(tally.Leavening, 0.9, 1.05);
    }

    [Fact]
    public void A_vinegar_for_a_vinegar_of_the_same_strength_is_not_blamed_for_the_loaf()
    {
        var loaf = Bowl.Of(
            ("almond-meal", 200), ("psyllium-husk-powder", 15), ("water", 180), ("baking-soda", 4), ("vinegar-cider", 40), ("salt", 4)).WithEggs(3);
        Assert.Equal(Verdict.Balances, Ask.Check(loaf, "vinegar-cider", "vinegar-distilled").Verdict);
    }

    [Fact]
    public void Sugar_in_place_of_erythritol_balances_and_says_what_it_costs()
    {
        var verdict = Ask.Check(Loaf.Muffins, "erythritol", "sugar");
        Assert.Equal(Verdict.Balances, verdict.Verdict);
        Assert.Contains("Net carbs rise", verdict.Reply, StringComparison.Ordinal);
    }

    [Fact]
    public void Yeast_that_finds_nothing_to_eat_is_cautioned_of()
    {
        var hungry = Bowl.Of(("almond-meal", 200), ("psyllium-husk-powder", 15), ("water", 180), ("yeast-active-dry", 7)).WithEggs(2);
        var fed = hungry with { Lines = hungry.Lines.Add(new Line(TestKitchen.Ingredient("honey"), new Grams(8))) };
        var list = new CautionList(TestKitchen.Bakehouse);
        Assert.Contains(list.Of(hungry), caution => caution.Contains("yeast finds nothing", StringComparison.Ordinal));
        Assert.DoesNotContain(list.Of(fed), caution => caution.Contains("yeast finds nothing", StringComparison.Ordinal));
    }

    [Fact]
    public void More_soda_than_any_loaf_bears_is_cautioned_of_and_taken_down_by_the_repair()
    {
        var loaf = Bowl.Of(
            ("almond-meal", 300), ("psyllium-husk-powder", 20), ("water", 250), ("baking-soda", 60), ("vinegar-cider", 30), ("salt", 5)).WithEggs(4);
        var measured = new Measurement(loaf).Answer(Ask.Search, Ask.Ample, CancellationToken.None);
        Assert.Contains(measured.Cautions, caution => caution.StartsWith("baking soda is", StringComparison.Ordinal));
        Assert.NotNull(measured.Repair);
        var soda = measured.Repair.Formula.MassOf(TestKitchen.Ingredient("baking-soda"));
        Assert.True(soda / loaf.BatterMass <= 0.015, $"{soda.Value} g of soda stay");
    }

    [Fact]
    public void A_repair_of_the_leavening_does_not_make_the_loaf_flat()
    {
        // 10 g of soda in 580 g of batter, and a spoon of vinegar: the soda must come down, the gas must not go.
        var loaf = Bowl.Of(("almond-meal", 260), ("water", 140), ("baking-soda", 10), ("vinegar-cider", 15), ("salt", 4)).WithEggs(3);
        var repair = new Measurement(loaf).Answer(Ask.Search, Ask.Ample, CancellationToken.None).Repair;
        Assert.NotNull(repair);
        var (before, after) = (new Tally(loaf), new Tally(repair.Formula));
        Assert.InRange(after.Leavening, 0.9, 1.05);
        Assert.InRange(after.Gas / before.Gas, 0.899, 1.101);
    }

    private static bool IsLeftOut(IEnumerable<Hold> wishes, Ingredient ingredient) =>
        wishes.Any(wish => wish.LeftOut is { } rule && rule.Carries(ingredient));
}
