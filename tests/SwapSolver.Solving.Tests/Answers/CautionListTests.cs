using SwapSolver.Kitchen.Formulas;
using SwapSolver.Loaves;
using SwapSolver.Solving.Answers;

namespace SwapSolver.Solving.Tests.Answers;

public sealed class CautionListTests
{
    private static readonly CautionList Cautions = new(TestKitchen.Bakehouse);

    private static string Of(Formula formula) => string.Join('\n', Cautions.Of(formula));

    [Fact]
    public void The_allergens_of_a_loaf_are_named()
    {
        var said = Of(Loaf.Walnut);
        Assert.Contains("Contains by the US or EU list: egg, milk and tree nuts.", said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_loaf_with_egg_asks_for_a_safe_core() =>
        // 71 °C (160 °F) is the core temperature that food-safety authorities give for egg dishes (from memory).
        Assert.Contains("at least 71 °C", Of(Loaf.Walnut), StringComparison.Ordinal);

    [Fact]
    public void A_loaf_without_egg_does_not() =>
        Assert.DoesNotContain("71 °C", Of(Bowl.Of(("almond-meal", 200), ("water", 100))), StringComparison.Ordinal);

    [Fact]
    public void Birch_sugar_comes_with_a_word_on_dogs() =>
        Assert.Contains("dog", Of(Bowl.Of(("almond-meal", 200), ("xylitol", 40))), StringComparison.OrdinalIgnoreCase);

    [Fact]
    public void Sunflower_with_soda_may_turn_green_and_without_soda_says_nothing_of_it()
    {
        Assert.Contains("green", Of(Bowl.Of(("sunflower-seed-flour", 200), ("baking-soda", 3))), StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("green", Of(Bowl.Of(("sunflower-seed-flour", 200), ("water", 100))), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Sunflower_whose_soda_is_used_up_and_more_says_nothing_of_green()
    {
        // Greening grows with the pH (Liang, Tran and Were 2018); sour crumbs stay grey.
        var loaf = Bowl.Of(("sunflower-seed-flour", 200), ("water", 180), ("baking-soda", 4), ("cream-of-tartar", 12)).WithEggs(2);
        Assert.DoesNotContain("green", Of(loaf), StringComparison.OrdinalIgnoreCase);
        var alkaline = Bowl.Of(("sunflower-seed-flour", 200), ("water", 180), ("baking-soda", 6)).WithEggs(2);
        Assert.Contains("forecast at pH", Of(alkaline), StringComparison.Ordinal);
    }

    [Fact]
    public void Net_carbs_are_never_medical_advice() =>
        Assert.All(BakedQuestions.Answers, baked => Assert.Contains(
            baked.Answer.Cautions, caution => caution.Contains("not medical advice", StringComparison.Ordinal)));

    [Fact]
    public void Made_without_is_no_claim_of_free_from() =>
        Assert.All(
            BakedQuestions.Answers.Where(baked => baked.Question.Wishes.Any(wish => wish.LeftOut is not null)),
            baked => Assert.Contains(baked.Answer.Cautions, caution => caution.Contains("no free-from claim", StringComparison.Ordinal)));

    [Fact]
    public void What_a_loaf_already_had_is_not_brought_in() =>
        Assert.DoesNotContain(
            Cautions.Of(Loaf.Walnut, Loaf.Walnut, []), caution => caution.StartsWith("This brings in", StringComparison.Ordinal));
}
