using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Tables.Tests;

/// <summary>How a plain table may be written.</summary>
public sealed class PlainTableTests
{
    private const string Header = "long_description,water_g,energy_kcal,protein_g,fat_g,ash_g,carbohydrate_by_difference_g";

    private const string Flour = "Larkfield flour,6,414,20,10,3,61";

    private const string Meal = "Larkfield meal,6,414,20,10,3,61";

    [Theory]
    [InlineData("line ends of another system", Header + "\r\n" + Flour + "\r\n" + Meal + "\r\n")]
    [InlineData("line ends of an old system", Header + "\r" + Flour + "\r" + Meal)]
    [InlineData("a mark in front", "\uFEFF" + Header + "\n" + Flour + "\n" + Meal)]
    [InlineData("blank lines", "\n\n" + Header + "\n\n" + Flour + "\n  \n" + Meal + "\n\n\n")]
    [InlineData("blank rows of a spreadsheet", Header + "\n" + Flour + "\n" + Meal + "\n,,,,,,\n,,,,,,\n")]
    [InlineData("blank columns of a spreadsheet", Header + ",,\n" + Flour + ",,\n" + Meal + "\n")]
    [InlineData("comments", "# a head line\n" + Header + "\n# another, \"with a quote\n" + Flour + "\n" + Meal)]
    [InlineData("quotes round everything", "\"long_description\",\"water_g\",\"energy_kcal\",\"protein_g\",\"fat_g\",\"ash_g\",\"carbohydrate_by_difference_g\"\n\"Larkfield flour\",\"6\",\"414\",\"20\",\"10\",\"3\",\"61\"\n" + Meal)]
    [InlineData("blanks round fields", "long_description , water_g,energy_kcal,protein_g,fat_g,ash_g,carbohydrate_by_difference_g\n Larkfield flour , 6,414 ,20,10,3,61\n \"Larkfield meal\" ,6,414,20,10,3,61")]
    [InlineData("names in capitals", "Long_Description,WATER_G,energy_kcal,protein_g,fat_g,ash_g,carbohydrate_by_difference_g\n" + Flour + "\n" + Meal)]
    public void A_table_is_read_however_it_was_saved(string saved, string text)
    {
        var reading = TestTables.Reader.Read(new TableSlice(text));

        Assert.True(reading.Problems.IsEmpty, $"{saved}: {string.Join("; ", reading.Problems)}");
        Assert.Equal(["larkfield-flour", "larkfield-meal"], reading.Foods.Select(food => food.Id));
    }

    [Fact]
    public void A_name_may_have_commas_quotes_and_line_ends()
    {
        var food = Assert.Single(TestTables.Read(Header, "\"Flour, \"\"fine\"\",\n  sifted\",6,414,20,10,3,61").Foods);

        Assert.Equal("Flour, \"fine\", sifted", food.Name);
        Assert.Equal("flour-fine-sifted", food.Id);
    }

    [Fact]
    public void An_inch_sign_in_a_name_is_no_quote() =>
        Assert.Equal("Wafers 3\" wide", Assert.Single(TestTables.Read(Header, "Wafers 3\" wide,6,414,20,10,3,61", Meal).Rows, row => row.Line == 2).Food.Name);

    [Theory]
    [InlineData("a quote that is never closed", "\"Larkfield bran,6,414,20,10,3,61")]
    [InlineData("a quote that a later one closes", "\"Larkfield bran,6,414,20,10,3,61\n\"Larkfield germ\",6,414,20,10,3,61")]
    public void A_forgotten_quote_does_not_swallow_the_rows_below_it(string forgotten, string rows)
    {
        var reading = TestTables.Read(Header, Flour, rows, Meal, "\"Larkfield husk\",6,414,20,10,3,61");

        Assert.True(reading.Foods.Select(food => food.Id).Intersect(["larkfield-flour", "larkfield-meal", "larkfield-husk"]).Count() == 3, forgotten);
        Assert.Equal(3, Assert.Single(reading.Problems).Line);
        Assert.Equal(1, reading.LeftOut);
    }

    [Fact]
    public void A_row_longer_than_any_food_needs_is_refused_without_a_wait()
    {
        var reading = TestTables.Read(Header, Flour, $"{new string('a', 70_000)},6,414,20,10,3,61", Meal);

        Assert.Equal(2, reading.Foods.Length);
        Assert.Contains("longer than 65536", Assert.Single(reading.Problems).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_piece_that_is_too_long_is_refused_whole() =>
        Assert.Contains("too long", Assert.Single(TestTables.Reader.Read(new TableSlice(new string('a', FoodTable.MostLetters + 1))).Problems).Reason, StringComparison.Ordinal);

    [Theory]
    [InlineData("ndb_no;long_description;water_g", "", "semicolons", "commas")]
    [InlineData("ndb_no\tlong_description\twater_g", "", "tabs", "commas")]
    [InlineData(Header + ",proteins_g", "proteins_g", "is no column", "protein_g")]
    [InlineData(Header + ",fibre", "fibre", "is no column", "fibre_g")]
    [InlineData(Header + ",water_g", "water_g", "twice", "one of the two")]
    [InlineData(Header + ",,id", "", "column 8 has no name", "take it out")]
    [InlineData("long_description,energy_kcal,protein_g,fat_g,carbohydrate_by_difference_g", "water_g", "water_g is missing", "exactly so")]
    [InlineData("water_g,energy_kcal,protein_g,fat_g,carbohydrate_by_difference_g", "long_description", "long_description is missing", "exactly so")]
    [InlineData("\"" + Header, "", "header cannot be read", "names of the columns")]
    public void A_header_that_cannot_be_read_stops_the_table(string header, string field, string reason, string wayOut)
    {
        var reading = TestTables.Reader.Read(new TableSlice($"{Flour}\n{Meal}", header, 2, TableFormat.Foods));

        Assert.Empty(reading.Foods);
        Assert.Equal(2, reading.LeftOut);
        var problem = Assert.Single(reading.Problems);
        Assert.Equal((1, field), (problem.Line, problem.Field));
        Assert.Contains(reason, problem.Reason, StringComparison.Ordinal);
        Assert.Contains(wayOut, problem.WayOut, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("\n\n")]
    [InlineData("# nothing\n")]
    public void A_table_of_nothing_says_so(string text) =>
        Assert.Contains("no header", Assert.Single(TestTables.Reader.Read(new TableSlice(text)).Problems).Reason, StringComparison.Ordinal);

    [Theory]
    [InlineData("~01001~^~BUTTER,WITH SALT~^15.87", TableFormat.UsdaAbbreviated)]
    [InlineData("\uFEFF~01001~^~BUTTER", TableFormat.UsdaAbbreviated)]
    [InlineData("01001^BUTTER^15.87", TableFormat.UsdaAbbreviated)]
    [InlineData("ndb_no,amount,measure,grams", TableFormat.HouseholdWeights)]
    [InlineData("\"id\",\"measure\", Grams,amount", TableFormat.HouseholdWeights)]
    [InlineData(TestTables.Header, TableFormat.Foods)]
    [InlineData("anything else", TableFormat.Foods)]
    public void A_table_is_known_by_its_first_line(string line, TableFormat format) => Assert.Equal(format, FoodTable.FormatOf(line));

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(int.MaxValue)]
    public void A_line_number_that_no_table_has_is_a_fault(int firstLine) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => TestTables.Reader.Read(new TableSlice(Flour, Header, firstLine)));

    [Fact]
    public void A_spreadsheet_that_drops_the_nought_in_front_of_a_number_does_no_harm()
    {
        var food = Assert.Single(TestTables.Read($"ndb_no,{Header}", $"1001,{Flour}").Foods);

        Assert.Equal(("usda-01001", "01001"), (food.Id, food.UsdaFoodNumber));
    }

    [Theory]
    [InlineData("wheat", "wheat")]
    [InlineData("Milk; EGG ;egg", "egg;milk")]
    [InlineData("nuts;soya", "soy;tree-nuts")]
    [InlineData("none", "")]
    [InlineData("", null)]
    public void Allergens_are_stated_by_id_or_by_another_word_for_it(string written, string? stated)
    {
        var food = Assert.Single(TestTables.Read($"{Header},contains", $"{Flour},{written}").Foods);

        Assert.Equal(stated, food.Allergens is { } allergens ? string.Join(';', allergens.Contains) : null);
        Assert.Equal(stated is not null, TestTables.IngredientOf(food).Allergens.AreKnown);
    }

    [Fact]
    public void A_food_that_states_no_ash_goes_in_and_its_ash_stays_unknown()
    {
        var food = Assert.Single(TestTables.Read(Header, "Larkfield flour,6,414,20,10,,61").Foods);

        Assert.False(food.Figures.ContainsKey(Fact.Ash));
        Assert.Null(TestTables.IngredientOf(food).RangeOf(Fact.Ash));
        Assert.Contains("add up to 80 g", Assert.Single(TestTables.Read(Header, "Larkfield flour,6,414,20,10,,44").Problems).Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(",,", "almond-meal", true, true, true)]
    [InlineData("no,,", "almond-meal", false, true, true)]
    [InlineData(",no,", "almond-meal", false, false, true)]
    [InlineData("yes,,", "", true, true, false)]
    [InlineData(",,yes", "", false, false, true)]
    [InlineData(",,", "", false, false, false)]
    [InlineData(",,yes", "oat-bran", true, true, false)]
    public void Who_can_eat_it_is_what_is_said_and_else_what_its_like_says(string said, string like, bool vegan, bool vegetarian, bool glutenFree)
    {
        var food = Assert.Single(TestTables.Read($"{Header},like,vegan,vegetarian,gluten_free", $"{Flour},{like},{said}").Foods);

        Assert.Equal(new Suits(vegan, vegetarian, glutenFree), TestTables.IngredientOf(food).Suits);
    }

    [Fact]
    public void A_food_like_another_takes_its_behaviour_and_keeps_its_own_figures()
    {
        var ingredient = TestTables.IngredientOf(Assert.Single(TestTables.Read($"{Header},like", $"{Flour},almond-meal").Foods));
        var almonds = TestKitchen.Ingredient("almond-meal");

        Assert.Equal(almonds.Role, ingredient.Role);
        Assert.Equal(20, ingredient.RangeOf(Fact.Protein)!.Value.Typical);
        Assert.Equal(almonds.RangeOf(Fact.WaterBound)!.Value.Typical, ingredient.RangeOf(Fact.WaterBound)!.Value.Typical);
        Assert.True(ingredient.Allergens.Carries("tree-nuts"));
    }
}
