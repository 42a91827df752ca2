using System.Text.Json;
using SwapSolver.Console.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Console.Tests.Verbs;

public sealed class VariantTests
{
    private static readonly string Hazelnut = BuiltConsole.Demo("hazelnut-tin-loaf");

    [Fact]
    public async Task A_hazelnut_loaf_without_tree_nuts_comes_back_with_all_that_scripts_read()
    {
        var ran = (await BuiltConsole.Run("variant", Hazelnut, "--without", "tree-nuts", "--json")).Ends(0);
        var response = ran.Read<VaryFormulaResponse>();
        Assert.All(response.Answers, answer => Assert.DoesNotContain(answer.Allergens.Us, source => source.Allergen == "tree-nuts"));
        // Zeros are written: what came in had no grams before.
        using var json = JsonDocument.Parse(ran.Out);
        Assert.Contains(
            json.RootElement.GetProperty("answers")[0].GetProperty("changes").EnumerateArray(),
            change => change.GetProperty("beforeGrams").GetDouble() == 0);
    }

    [Fact]
    public async Task A_loaf_can_be_made_without_two_things_and_by_a_diet_at_once()
    {
        var ran = await BuiltConsole.Run("variant", Hazelnut, "--without", "tree-nuts,sesame", "--without", "peanut", "--diet", "dairy-free", "--json");
        var response = ran.Ends(0).Read<VaryFormulaResponse>();
        Assert.All(response.Answers, answer =>
        {
            var allergens = answer.Allergens.Us.Concat(answer.Allergens.Eu).Select(source => source.Allergen);
            Assert.Empty(allergens.Intersect(["tree-nuts", "sesame", "peanut", "milk"]));
        });
    }

    [Fact]
    public async Task No_is_an_answer_with_its_own_exit_code()
    {
        var response = (await BuiltConsole.Run("variant", Hazelnut, "--without", "egg", "--new-ingredients", "0", "--json")).Ends(1).Read<VaryFormulaResponse>();
        Assert.Empty(response.Answers);
        Assert.NotEmpty(response.Conflict);
        Assert.NotNull(response.Nearest);
    }

    [Fact]
    public async Task No_is_said_in_words_too()
    {
        var ran = (await BuiltConsole.Run("variant", Hazelnut, "--max-net-carbs", "0.01")).Ends(1);
        Assert.StartsWith("No formula meets all of these wishes.", ran.Out, StringComparison.Ordinal);
        Assert.Contains("Nearest, but it does not meet them", ran.Out, StringComparison.Ordinal);
        Assert.Empty(ran.Faults);
    }

    [Fact]
    public async Task An_allergen_that_does_not_exist_is_refused_with_the_nearest() =>
        (await BuiltConsole.Run("variant", Hazelnut, "--without", "tree-nutz")).Refuses("without[0]", "tree-nutz", "tree-nuts");

    [Fact]
    public async Task What_is_allowed_to_come_in_is_named_by_id_and_a_slip_brings_the_nearest() =>
        (await BuiltConsole.Run("variant", Hazelnut, "--without", "tree-nuts", "--allow", "sesame-meal,sesame-flouer"))
            .Refuses("habits.allow[1]", "sesame-flouer", "sesame-flour");

    [Fact]
    public async Task A_variant_of_nothing_in_particular_is_refused() =>
        (await BuiltConsole.Run("variant", Hazelnut)).Refuses("no wish", "name what to leave out");

    [Fact]
    public async Task A_diet_that_is_not_known_is_refused_with_those_that_are() =>
        (await BuiltConsole.Run("variant", Hazelnut, "--diet", "vegn")).Refuses("vegn", "VEGAN");

    [Fact]
    public async Task A_line_in_cups_is_told()
    {
        using var loaf = FormulaFile.Of(""" "text": "1 metric cup water" """);
        var ran = await BuiltConsole.Run("variant", loaf.Location, "--without", "tree-nuts", "--system", "metric");
        // 250 mL, 3 % either way.
        Assert.Matches(@"1 metric cup water\s+water\s+250\s+242\.5 to 257\.5", ran.Out);
    }
}
