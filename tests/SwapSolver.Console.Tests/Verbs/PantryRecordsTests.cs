using System.Globalization;
using System.Text;
using SwapSolver.Console.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Console.Tests.Verbs;

/// <summary>What a kitchen writes down. Packets and tables are invented, of the fictional Larkfield Bakehouse.</summary>
public sealed class PantryRecordsTests
{
    private const string Header = "id,long_description,water_g,energy_kcal,protein_g,fat_g,ash_g,carbohydrate_by_difference_g,fibre_g,contains";

    private static readonly string[] Packet =
    [
        "pantry", "add", "larkfield-almond", "--like", "almond-flour-blanched", "--basis", "us", "--serving", "28", "--energy-kcal", "170", "--fat", "15",
        "--carbohydrate", "6", "--fibre", "3", "--protein", "6", "--contains", "tree-nuts",
    ];

    [Fact]
    public async Task A_bag_is_added_shown_and_removed()
    {
        using var kitchen = new OwnKitchen();
        var added = (await kitchen.Run(Packet)).Ends(0);
        Assert.Contains("larkfield-almond", added.Out, StringComparison.Ordinal);
        Assert.Contains("Taken for granted", added.Out, StringComparison.Ordinal);

        var shown = (await kitchen.Run("pantry", "show", "larkfield-almond", "--json")).Ends(0).Read<Ingredient>();
        Assert.Equal("larkfield almond", shown.DisplayName);
        (await kitchen.Run("pantry", "remove", "larkfield-almond")).Ends(0);
        (await kitchen.Run("pantry", "show", "larkfield-almond")).Ends(2);
    }

    [Fact]
    public async Task A_dry_run_writes_nothing_down()
    {
        using var kitchen = new OwnKitchen();
        (await kitchen.Run([.. Packet, "--dry-run"])).Ends(0);
        (await kitchen.Run("pantry", "show", "larkfield-almond")).Ends(2);
    }

    [Fact]
    public async Task A_number_in_a_panel_file_keeps_its_digits()
    {
        using var kitchen = new OwnKitchen();
        async Task<Fact> Fibre(string printed)
        {
            var file = kitchen.File("panel.json", $$"""{ "basis": "EU", "servingG": 100, "fatG": 14, "carbohydrateG": 22, "fibreG": {{printed}}, "proteinG": 17 }""");
            var added = (await kitchen.Run("pantry", "add", "larkfield-coconut", "--panel", file, "--dry-run", "--json")).Ends(0).Read<AddIngredientResponse>();
            return added.Ingredient.Facts.Single(fact => fact.Fact_ == "fibreGPer100G");
        }

        // EU guidance on rounding of 2012, table 4: whole grams from 10 g up, tenths below.
        Assert.Equal((36.5, 37.5), ((await Fibre("37")).Low, (await Fibre("37")).High));
        var finer = await Fibre("5.0");
        Assert.Equal((4.95, 5.05), (finer.Low, finer.High));
    }

    [Fact]
    public async Task A_panel_that_cannot_be_true_is_refused_naming_the_figures()
    {
        using var kitchen = new OwnKitchen();
        (await kitchen.Run(
            "pantry", "add", "larkfield-bag", "--basis", "EU", "--serving", "100", "--energy-kcal", "600", "--fat", "2", "--carbohydrate", "5", "--protein", "6", "--dry-run"))
            .Refuses("energy 600 kcal", "panel.energyKcal", "panel.fatG");
    }

    [Fact]
    public async Task What_may_be_in_it_says_nothing_without_what_is() =>
        (await BuiltConsole.Run([.. Packet.Take(Packet.Length - 2), "--may-contain", "milk"])).Refuses("--contains");

    [Fact]
    public async Task A_line_stands_in_the_file_or_on_the_command_line()
    {
        using var kitchen = new OwnKitchen();
        var file = kitchen.File("panel.json", """{ "basis": "EU", "servingG": 100, "fatG": 14 }""");
        (await kitchen.Run("pantry", "add", "larkfield-bag", "--panel", file, "--fat", "3")).Refuses("--fat", "--panel");
    }

    [Theory]
    [InlineData("{ \"fat\": 14 }", "fat", "fatG")]
    [InlineData("{ \"fatG\": 14, \"fatG\": 15 }", "fatG", "twice")]
    [InlineData("{ \"fatG\": [14] }", "fatG", "text")]
    [InlineData("fat 14", "line 1", "JSON")]
    [InlineData("", "empty", "panel")]
    public async Task A_panel_file_that_cannot_be_read_is_named(string text, string place, string says)
    {
        using var kitchen = new OwnKitchen();
        (await kitchen.Run("pantry", "add", "larkfield-bag", "--panel", kitchen.File("panel.json", text))).Refuses("panel.json", place, says);
    }

    [Fact]
    public async Task A_table_goes_in_by_pieces_with_its_line_numbers_and_twice_is_once()
    {
        using var kitchen = new OwnKitchen();
        var table = new StringBuilder($"# invented\r\n{Header}\r\n");
        const int rows = 4000;
        for (var row = 0; row < rows; row++)
        {
            var water = row % 1000 == 999 ? 55 : 5;
            table.Append(CultureInfo.InvariantCulture, $"larkfield-{row},\"Larkfield seed, lot {row}\r\nof the mill, \"\"Nutbourne\"\"\",{water},573,20,45,3,27,10,none\r\n");
        }

        var file = kitchen.File("table.csv", table.ToString());
        var first = (await kitchen.Run("pantry", "import", file, "--json")).Ends(0).Read<ImportIngredientsResponse>();
        Assert.Equal((rows - 4, 4), (first.Added, first.LeftOut));
        // Each row has two lines, below two of comment and header.
        Assert.Equal([3 + (2 * 999), 3 + (2 * 1999), 3 + (2 * 2999), 3 + (2 * 3999)], first.Problems.Select(problem => problem.Line));
        var again = (await kitchen.Run("pantry", "import", file, "--json")).Ends(0).Read<ImportIngredientsResponse>();
        Assert.Equal((0, 0, rows - 4), (again.Added, again.Changed, again.Same));
    }

    [Fact]
    public async Task A_vinegar_of_a_table_goes_in_pours_and_claims_nothing_that_nobody_stated()
    {
        using var kitchen = new OwnKitchen();
        // Row 02053 of USDA release 26, which has no column for the acid; a tablespoon of it weighs 14.9 g by the same table.
        var file = kitchen.File("table.csv", "ndb_no,long_description,water_g,energy_kcal,protein_g,fat_g,ash_g,carbohydrate_by_difference_g\n02053,\"Vinegar, distilled\",94.78,18,0,0,0,0.04");
        (await kitchen.Run("pantry", "import", file)).Ends(0);
        var shown = (await kitchen.Run("pantry", "show", "usda-02053")).Ends(0);
        var line = Assert.Single((await kitchen.Run("convert", "--text", "1 tbsp usda-02053", "--json")).Ends(0).Read<ConvertLinesResponse>().Lines);

        Assert.Contains("Allergens (US list): not stated", shown.Out, StringComparison.Ordinal);
        Assert.Contains("vegan: not stated", shown.Out, StringComparison.Ordinal);
        Assert.Equal("ingredients/usda-02053", line.Ingredient);
        Assert.Equal(14.9, line.Grams, 0.2);
        Assert.DoesNotContain(line.Assumed, words => words.Contains("spooned", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_row_that_comes_again_far_below_is_reported_by_its_line()
    {
        using var kitchen = new OwnKitchen();
        var rows = Enumerable.Range(0, 5000).Select(row => $"larkfield-seed-{row % 4999},Larkfield seed {row},5,573,20,45,3,27,10,none");
        var answer = (await kitchen.Run("pantry", "import", kitchen.File("table.csv", $"{Header}\n{string.Join('\n', rows)}"), "--json")).Ends(0).Read<ImportIngredientsResponse>();

        Assert.Equal((4999, 0, 1), (answer.Added, answer.Changed, answer.LeftOut));
        Assert.Equal((5001, "larkfield-seed-0"), (Assert.Single(answer.Problems).Line, answer.Problems[0].Value));
    }

    [Fact]
    public async Task A_table_of_which_nothing_goes_in_is_a_no()
    {
        using var kitchen = new OwnKitchen();
        var ran = (await kitchen.Run("pantry", "import", kitchen.File("table.csv", $"{Header}\nbad,Bad,1,1,1,1,1,1,1,none"))).Ends(1);
        Assert.Contains("line 2", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_older_table_in_Latin_1_keeps_its_letters()
    {
        using var kitchen = new OwnKitchen();
        var file = kitchen.File("table.csv", string.Empty);
        await System.IO.File.WriteAllBytesAsync(file, Encoding.Latin1.GetBytes($"{Header}\nlarkfield-creme,Larkfield crème,5,573,20,45,3,27,10,milk"));
        (await kitchen.Run("pantry", "import", file)).Ends(0);
        Assert.Equal("Larkfield crème", (await kitchen.Run("pantry", "show", "larkfield-creme", "--json")).Ends(0).Read<Ingredient>().DisplayName);
    }

    [Fact]
    public async Task A_table_that_is_not_there_is_named() =>
        (await BuiltConsole.Run("pantry", "import", "no-such-table.csv")).Refuses("no-such-table.csv", "no such file");

    [Fact]
    public async Task A_soaking_test_is_written_down_and_forgotten()
    {
        using var kitchen = new OwnKitchen();
        Assert.Contains("as this kitchen knows it", (await kitchen.Run("pantry", "measure", "coconut-flour", "--dry", "10", "--drained", "60")).Ends(0).Out, StringComparison.Ordinal);
        var held = (await kitchen.Run("pantry", "show", "coconut-flour", "--json")).Ends(0).Read<Ingredient>().Facts.Single(fact => fact.Fact_ == "waterBoundCentrifugeGPerG");
        // 50 g of water on 10 g of flour.
        Assert.Equal(5, held.Value, 9);
        Assert.Contains("shipped figures", (await kitchen.Run("pantry", "remove", "coconut-flour")).Ends(0).Out, StringComparison.Ordinal);
        (await kitchen.Run("pantry", "remove", "coconut-flour")).Refuses("coconut-flour");
    }

    [Fact]
    public async Task Half_of_a_soaking_test_is_refused() =>
        (await BuiltConsole.Run("pantry", "measure", "coconut-flour", "--dry", "10")).Refuses("--drained");
}
