using SwapSolver.Console.Tests.Running;

namespace SwapSolver.Console.Tests.Files;

public sealed class FormulaFileTests
{
    [Theory]
    [InlineData(""" "ingredient": "ingredients/water", "gramms": 5 """, "lines[1].gramms", "grams")]
    [InlineData(""" "ingredient": "ingredients/water", "grams": "a cup" """, "lines[1].grams", "a cup")]
    [InlineData(""" "ingredient": "ingredients/water", "grams": 5, "grams": 6 """, "lines[1].grams", "twice")]
    [InlineData(""" "ingredient": "ingredients/egg-whole", "count": 2, "size": "HUGE" """, "HUGE", "LARGE_US")]
    [InlineData(""" "ingredient": 7, "grams": 5 """, "lines[1].ingredient", "7")]
    public async Task A_line_that_cannot_be_read_is_named_by_its_place(string line, string place, string wayOut)
    {
        using var file = FormulaFile.Of(line);
        (await BuiltConsole.Run("balance", file.Location)).Refuses(place, wayOut);
    }

    [Theory]
    [InlineData(""" "ingredient": "ingredients/water", "grams": -5 """, "lines[1].grams", "'-5'", "give 0 to")]
    [InlineData(""" "ingredient": "ingredients/water", "grams": "NaN" """, "lines[1].grams", "NaN", "")]
    [InlineData(""" "ingredient": "ingredients/watter", "grams": 5 """, "lines[1].ingredient", "watter", "water")]
    [InlineData(""" "text": "1 1/2 tsp nutritional yeast" """, "lines[1].text", "1 1/2 tsp nutritional yeast", "yeast-active-dry")]
    public async Task A_line_that_cannot_be_weighed_is_named_by_its_place(string line, string place, string value, string wayOut)
    {
        using var file = FormulaFile.Of(line);
        (await BuiltConsole.Run("balance", file.Location, "--json")).Refuses(place, value, wayOut);
    }

    [Theory]
    [InlineData("{\n  \"lines\": [\n    { \"grams\": 5, }\n  ]\n}", "line 3", "loaf.json")]
    [InlineData("Grandmother's loaf", "line 1", "loaf.json")]
    [InlineData("", "loaf.json", "")]
    [InlineData("[]", "loaf.json", "object")]
    [InlineData("{}", "lines", "")]
    public async Task What_is_not_a_formula_file_is_named_with_its_line(string text, string place, string words)
    {
        using var file = new FormulaFile(text);
        (await BuiltConsole.Run("balance", file.Location)).Refuses(place, words);
    }

    [Fact]
    public async Task A_file_that_is_not_there_is_named() =>
        (await BuiltConsole.Run("balance", "no-such-loaf.json")).Refuses("no-such-loaf.json", "no such file");

    [Fact]
    public async Task A_folder_is_no_formula() =>
        (await BuiltConsole.Run("balance", Path.Combine(BuiltConsole.Root, "data"))).Refuses("folder");

    [Fact]
    public async Task A_stored_formula_that_is_not_there_brings_the_nearest() =>
        (await BuiltConsole.Run("balance", "formulas/hazelnut-loaf")).Refuses("formulas/hazelnut-loaf", "formulas/hazelnut-tin-loaf");

    [Fact]
    public async Task Nothing_on_standard_input_is_no_formula() =>
        (await BuiltConsole.RunWithInput(string.Empty, "balance", "-")).Ends(2).SaysOnlyOnError("standard input");
}
