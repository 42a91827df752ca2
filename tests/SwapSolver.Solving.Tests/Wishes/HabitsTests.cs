using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Tests.Wishes;

public sealed class HabitsTests
{
    [Fact]
    public void Unless_told_otherwise_two_are_new_eggs_are_whole_and_large_and_the_scale_shows_grams() =>
        Assert.Equal(new Habits(2, WeighedEgg: false, EggSize.LargeUs, new Grams(1), 3), Habits.Usual);

    [Theory]
    [InlineData("baking-soda", 0.1)]
    [InlineData("salt", 0.1)]
    [InlineData("xanthan-gum", 0.1)]
    [InlineData("water", 1)]
    [InlineData("almond-meal", 1)]
    public void Soda_salt_and_gums_are_weighed_in_tenths_and_flours_in_grams(string id, double step) =>
        Assert.Equal(step, Habits.Usual.StepOf(TestKitchen.Ingredient(id)).Value);

    [Fact]
    public void A_coarse_scale_coarsens_the_large_lines_alone()
    {
        var coarse = Habits.Usual with { ScaleStep = new Grams(5) };
        Assert.Equal(5, coarse.StepOf(TestKitchen.Ingredient("water")).Value);
        Assert.Equal(0.1, coarse.StepOf(TestKitchen.Ingredient("baking-soda")).Value);
    }

    [Fact]
    public void On_a_scale_of_five_grams_every_large_line_that_moved_is_a_multiple_of_five()
    {
        var coarse = Habits.Usual with { ScaleStep = new Grams(5) };
        foreach (var (name, formula) in Loaf.All)
        {
            var answers = (Ask.Variant(formula, Ask.Without("tree-nuts")) with { Habits = coarse }).Answer().Answers;
            foreach (var line in answers.SelectMany(answer => answer.Formula.Lines))
            {
                var isFine = line.Ingredient.Usage.ScaleStep < new Grams(1);
                Assert.True(
                    isFine || line.Grams == formula.MassOf(line.Ingredient) || line.Grams.Value % 5 == 0,
                    $"{name}: {line}");
            }
        }
    }

    [Fact]
    public void Who_weighs_eggs_may_be_told_half_an_egg()
    {
        // Half of the sunflower bread asks for 75 g: by weight that is 75 g and nothing else needs to move.
        var half = new Solving.Questions.Resize(
            Loaf.Sunflower, new Solving.Questions.NewSize(0.5, 6, null), [], Habits.Usual with { WeighedEgg = true }).Answer(Ask.Search, Ask.Ample, CancellationToken.None);
        Assert.Equal(75, half.Answers[0].Formula.MassOf(TestKitchen.Ingredient("egg-whole")).Value);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void No_more_is_new_than_the_kitchen_allows(int most)
    {
        foreach (var (_, formula) in Loaf.All)
        {
            foreach (var word in new[] { "tree-nuts", "egg", "milk" })
            {
                var answers = (Ask.Variant(formula, Ask.Without(word)) with { Habits = Habits.Usual with { NewIngredients = most } }).Answer().Answers;
                Assert.All(answers, answer => Assert.InRange(
                    answer.Formula.Lines.Count(line => formula.MassOf(line.Ingredient) == Grams.None), 0, most));
            }
        }
    }

    [Fact]
    public void One_answer_is_given_where_one_is_asked_for() =>
        Assert.Single((Ask.Variant(Loaf.Walnut, Ask.Without("tree-nuts")) with { Habits = Habits.Usual with { Answers = 1 } }).Answer().Answers);
}
