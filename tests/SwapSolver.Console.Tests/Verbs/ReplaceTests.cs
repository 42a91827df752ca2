using SwapSolver.Console.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Console.Tests.Verbs;

public sealed class ReplaceTests
{
    private static readonly string Hazelnut = BuiltConsole.Demo("hazelnut-tin-loaf");

    [Theory]
    [InlineData("citric-acid", 2.0, 0.05)]
    [InlineData("glucono-delta-lactone", 5.7, 0.05)]
    [InlineData("vinegar-distilled", 38, 0.5)]
    public async Task A_dose_by_itself_is_answered_without_a_formula(string with, double grams, double tolerance)
    {
        // 6 g / 188.18 g/mol = 31.9 mmol of acid.
        var response = (await BuiltConsole.Run("replace", "--ingredient", "cream-of-tartar", "--grams", "6", "--json")).Ends(0).Read<ReplaceIngredientResponse>();
        var change = response.Answers.SelectMany(answer => answer.Changes).First(change => change.Ingredient == $"ingredients/{with}");

        Assert.Equal(grams, change.AfterGrams, tolerance);
    }

    [Fact]
    public async Task The_ways_are_ranked_in_a_table()
    {
        var ran = (await BuiltConsole.Run("replace", Hazelnut, "--ingredient", "cream-of-tartar")).Ends(0);

        Assert.Contains("The best 5 of ", ran.Out, StringComparison.Ordinal);
        Assert.Contains("Would do too: ", ran.Out, StringComparison.Ordinal);
        Assert.Contains("oven within, min", ran.Out, StringComparison.Ordinal);
        Assert.Contains("citric acid", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task As_many_ways_are_shown_as_are_asked_for()
    {
        var ran = (await BuiltConsole.Run("replace", "--ingredient", "cream-of-tartar", "--grams", "6", "--answers", "2")).Ends(0);

        Assert.Contains("The best 2 of ", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Of_a_dose_by_itself_every_way_stands_in_the_json()
    {
        var ran = (await BuiltConsole.Run("replace", "--ingredient", "cream-of-tartar", "--grams", "6", "--json")).Ends(0).Read<ReplaceIngredientResponse>();

        Assert.Contains(ran.Answers, answer => answer.Replacement.Doses.Single().Ingredient == "ingredients/glucono-delta-lactone");
        Assert.Empty(ran.Further);
    }

    [Fact]
    public async Task Three_grams_left_stay_in_the_loaf()
    {
        var ran = await BuiltConsole.Run("replace", Hazelnut, "--ingredient", "cream-of-tartar", "--with", "citric-acid", "--stock", "3", "--json");
        var answer = Assert.Single(ran.Ends(0).Read<ReplaceIngredientResponse>().Answers);

        Assert.Equal(3, answer.Changes.Single(change => change.Ingredient == "ingredients/cream-of-tartar").AfterGrams);
    }

    [Fact]
    public async Task What_drowns_the_loaf_is_a_no() =>
        Assert.Contains("No formula meets", (await BuiltConsole.Run("replace", Hazelnut, "--ingredient", "cream-of-tartar", "--with", "buttermilk")).Ends(1).Out, StringComparison.Ordinal);

    [Fact]
    public async Task A_flour_is_replaced_in_a_formula()
    {
        var ran = await BuiltConsole.Run("replace", Hazelnut, "--ingredient", "hazelnut-flour", "--with", "sunflower-seed-flour", "--json");
        Assert.Contains(ran.Ends(0).Read<ReplaceIngredientResponse>().Answers[0].Formula.Lines, line => line.Ingredient == "ingredients/sunflower-seed-flour");
    }

    [Fact]
    public async Task A_flour_without_a_formula_is_refused() =>
        (await BuiltConsole.Run("replace", "--ingredient", "hazelnut-flour", "--grams", "100")).Refuses("hazelnut-flour", "give the formula");

    [Fact]
    public async Task A_replacement_of_nothing_is_refused() => (await BuiltConsole.Run("replace", Hazelnut)).Refuses("--ingredient");
}
