using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Services;

/// <summary>What a formula's lines of words and household measures were read as.</summary>
[Collection(OpenKitchen.Name)]
public sealed class LinesReadTests(OpenKitchen kitchen)
{
    [Fact]
    public async Task Each_line_without_grams_tells_what_it_was_read_as_and_the_others_tell_nothing()
    {
        var response = await Bakes.Balance(kitchen.Service, Loaf(
            """ "text": "1 cup coconut flour" """,
            """ "ingredient": "ingredients/baking-soda", "amount": 1.5, "unit": "tsp" """,
            """ "ingredient": "ingredients/egg-whole", "count": 2 """,
            """ "ingredient": "ingredients/egg-whole", "count": 2, "size": "LARGE_US" """));
        Assert.Equal(["1 cup coconut flour", "1.5 tsp baking soda", "2 whole egg"], response.LinesRead.Select(line => line.Text));
        Assert.Equal(["ingredients/coconut-flour", "ingredients/baking-soda", "ingredients/egg-whole"], response.LinesRead.Select(line => line.Ingredient));
        // 112 g a cup by our estimate, 15 % either way; soda 4.6 g a teaspoon and a large US egg 50 g (USDA SR 26).
        Assert.Equal((95.2, 112, 128.8), (response.LinesRead[0].LowGrams, response.LinesRead[0].Grams, response.LinesRead[0].HighGrams));
        Assert.Equal([112, 6.9, 100], response.LinesRead.Select(line => line.Grams));
        Assert.Contains(response.LinesRead[0].Assumed, words => words.Contains("US customary cup", StringComparison.Ordinal));
        Assert.Contains(response.LinesRead[2].Assumed, words => words.Contains("US size large", StringComparison.Ordinal));
        Assert.All(response.LinesRead, line => Assert.True(line.Problem.Length == 0 && line.Candidates.Count == 0, line.ToString()));
    }

    [Fact]
    public async Task A_formula_in_grams_has_no_such_lines() =>
        Assert.Empty((await Bakes.Balance(kitchen.Service, Bakes.Hazelnut)).LinesRead);

    [Fact]
    public async Task A_line_is_read_as_convert_reads_it()
    {
        const string Text = "2 large eggs + 1 white, room temp";
        var converted = await kitchen.Service.Measures.ConvertLinesAsync(new ConvertLinesRequest { Lines = { Text }, System = Line.Types.System.UkImperial });
        var loaf = Loaf($""" "text": "{Text}" """);
        loaf.System = Line.Types.System.UkImperial;
        Assert.Equal(converted.Lines, (await Bakes.Balance(kitchen.Service, loaf)).LinesRead);
    }

    [Fact]
    public async Task Every_question_tells_it()
    {
        var loaf = Bakes.Hazelnut;
        var butter = loaf.Lines.Single(line => line.Ingredient == "ingredients/butter");
        // 14.2 g a tablespoon (USDA SR 26): 28.4 g in place of 30.
        loaf.Lines[loaf.Lines.IndexOf(butter)] = new Line { Text = "2 tbsp butter" };
        Assert.All(
            new[]
            {
                (await Bakes.Balance(kitchen.Service, loaf)).LinesRead,
                (await Bakes.Check(kitchen.Service, loaf)).LinesRead,
                (await Bakes.Vary(kitchen.Service, loaf)).LinesRead,
                (await Bakes.Resize(kitchen.Service, loaf)).LinesRead,
            },
            told => Assert.Equal(28.4, Assert.Single(told).Grams));
    }

    [Theory]
    // A tablespoon of 20 mL against one of 15 mL: of the litre of water of 1000 g, 20 g and 15 g.
    [InlineData(Line.Types.System.Australian, 20)]
    [InlineData(Line.Types.System.Metric, 15)]
    public async Task The_system_of_the_formula_is_meant_by_words_and_by_units(Line.Types.System system, double grams)
    {
        var loaf = Loaf(""" "text": "1 tbsp water" """, """ "ingredient": "ingredients/water", "amount": 1, "unit": "tbsp" """);
        loaf.System = system;
        var told = (await Bakes.Balance(kitchen.Service, loaf)).LinesRead;
        Assert.Equal([grams, grams], told.Select(line => line.Grams));
        Assert.All(told, line => Assert.Empty(line.Assumed));
    }

    [Theory]
    [InlineData(Line.Types.System.Unspecified, "LargeUs")]
    [InlineData(Line.Types.System.Metric, "MediumEu")]
    public async Task Eggs_of_no_size_are_the_usual_ones_of_the_system(Line.Types.System system, string size)
    {
        var loaf = Loaf(""" "ingredient": "ingredients/egg-whole", "count": 2 """);
        loaf.System = system;
        Assert.Equal(size, (await Bakes.Balance(kitchen.Service, loaf)).Formula.Lines[1].Size.ToString());
    }

    [Fact]
    public async Task A_loaf_measured_by_the_cup_is_less_sure_than_the_same_loaf_weighed()
    {
        var measured = await Bakes.Balance(kitchen.Service, Loaf(""" "text": "1 cup coconut flour" """, """ "text": "1 cup water" """));
        // 112 g and 237 g, the same typical grams.
        var weighed = await Bakes.Balance(kitchen.Service, Loaf(
            """ "ingredient": "ingredients/coconut-flour", "grams": 112 """, """ "ingredient": "ingredients/water", "grams": 237 """));
        foreach (var (cups, scale) in measured.Readings.Zip(weighed.Readings))
        {
            Assert.Equal(scale.Value, cups.Value, 12);
        }

        Reading Hydration(BalanceFormulaResponse response) => response.Readings.Single(reading => reading.Balance == "hydration");
        Assert.True(Hydration(measured).Low < Hydration(weighed).Low && Hydration(measured).High > Hydration(weighed).High, $"{Hydration(measured)} {Hydration(weighed)}");
    }

    private static Formula Loaf(params string[] lines) =>
        Bakes.From($$"""{ "lines": [{ "ingredient": "ingredients/almond-meal", "grams": 200 }, {{string.Join(", ", lines.Select(line => $"{{{line}}}"))}}], "slices": 12 }""");
}
