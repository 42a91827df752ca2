using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.Solving.Questions;
using SwapSolver.Solving.Tests.Replacing;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Tests.Questions;

public sealed class ReplacementTests
{
    [Fact]
    public void A_flour_is_replaced_by_solving_the_formula_again()
    {
        var outcomes = ReplacedDoses.In(Loaf.Walnut, "walnut-meal");

        Assert.NotEmpty(outcomes.Answers);
        Assert.All(outcomes.Answers, answer =>
        {
            Assert.Equal(0, answer.Grams("walnut-meal"));
            Assert.Null(answer.Replaced);
            // A baker who runs out of walnuts makes no claim.
            Assert.DoesNotContain(answer.Cautions, caution => caution.Contains("free-from", StringComparison.Ordinal));
        });
    }

    [Fact]
    public void What_is_asked_for_comes_in_and_nothing_else()
    {
        var answer = ReplacedDoses.In(Loaf.Walnut, "walnut-meal", "almond-meal").Answers[0];

        Assert.True(answer.Grams("almond-meal") > 100);
        Assert.Equal(["almond-meal"], answer.Formula.Lines.Select(line => line.Ingredient.Id).Except(Loaf.Walnut.Lines.Select(line => line.Ingredient.Id)));
    }

    [Fact]
    public void A_flour_without_a_formula_is_no_question() =>
        Assert.Throws<InvalidOperationException>(() => ReplacedDoses.Of("walnut-meal", 200));

    [Fact]
    public void As_many_answers_of_leavening_as_are_asked_for() =>
        Assert.Equal(2, (new Replacement(null, TestKitchen.Ingredient("cream-of-tartar"), new Grams(6), Grams.None, [], [], Habits.Usual) { MostOfLeavening = 2 })
            .Answer(Ask.Search, Ask.Ample, CancellationToken.None).Answers.Length);
}
