using SwapSolver.Console.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Console.Tests.Verbs;

public sealed class PantryTests
{
    [Fact]
    public async Task The_list_holds_every_ingredient_file()
    {
        var response = (await BuiltConsole.Run("pantry", "list", "--json")).Ends(0).Read<ListIngredientsResponse>();
        var files = Directory.EnumerateFiles(Path.Combine(BuiltConsole.Root, "data", "ingredients"), "*.json").Select(path => $"ingredients/{Path.GetFileNameWithoutExtension(path)}");
        Assert.Equal(files.Order(StringComparer.Ordinal), response.Ingredients.Select(ingredient => ingredient.Name));
    }

    [Fact]
    public async Task A_role_lists_only_what_does_that_work()
    {
        var ran = (await BuiltConsole.Run("pantry", "list", "--role", "acid")).Ends(0);
        Assert.Contains("cream-of-tartar", ran.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("hazelnut-flour", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_role_that_is_not_known_is_refused_with_those_that_are() =>
        (await BuiltConsole.Run("pantry", "list", "--role", "flower")).Refuses("flower", "flour");

    [Theory]
    [InlineData("hazelnut-flour")]
    [InlineData("ingredients/egg-whole")]
    [InlineData("salt")]
    public async Task Every_figure_is_shown_with_where_it_is_from(string id)
    {
        var shown = (await BuiltConsole.Run("pantry", "show", id, "--json")).Ends(0).Read<Ingredient>();
        Assert.NotEmpty(shown.Facts);
        Assert.All(shown.Facts, fact => Assert.False(string.IsNullOrWhiteSpace(fact.Source), fact.Fact_));
        Assert.All(shown.Facts, fact => Assert.False(string.IsNullOrWhiteSpace(fact.Unit), fact.Fact_));
    }

    [Fact]
    public async Task A_baker_reads_the_source_of_every_figure_too()
    {
        var facts = (await BuiltConsole.Run("pantry", "show", "hazelnut-flour", "--json")).Ends(0).Read<Ingredient>().Facts;
        var screen = string.Join(' ', (await BuiltConsole.Run("pantry", "show", "hazelnut-flour")).Ends(0).Out.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        // A source may be broken over lines, or be printed once below the table and named by a number: its words must be there.
        Assert.All(facts.Select(fact => fact.Source.Split(';')[0]).Distinct(), source => Assert.Contains(source[..Math.Min(24, source.Length)], screen, StringComparison.Ordinal));
    }

    [Fact]
    public async Task What_is_not_in_the_pantry_is_refused_with_the_nearest() =>
        (await BuiltConsole.Run("pantry", "show", "hazelnut-flower")).Refuses("hazelnut-flower", "hazelnut-flour");
}
