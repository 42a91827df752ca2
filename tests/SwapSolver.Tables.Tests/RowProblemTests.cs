namespace SwapSolver.Tables.Tests;

/// <summary>A row that cannot be true is named by line, column, value, reason and way out; its neighbours go in.</summary>
public sealed class RowProblemTests
{
    private const string Header = "id,long_description,water_g,energy_kcal,protein_g,fat_g,ash_g,carbohydrate_by_difference_g,fibre_g,sugars_g,sodium_mg,saturated_fat_g,polyols_g,erythritol_g,like,role,contains,may_contain,vegan,vegetarian,gluten_free";

    /// <summary>An invented flour whose parts make 100 g; 4 x 20 + 9 x 10 + 4 x 61 = 414 kcal.</summary>
    private const string Sound = "my-flour,Larkfield flour,6,414,20,10,3,61,30,5,12,1.5,0,0,,flour,none,,yes,yes,yes";

    [Theory]
    [InlineData("an id with capitals", "my-flour,", "My-Flour,", "id", "My-Flour", "is no id", "my-coconut-flour")]
    [InlineData("an id with a blank", "my-flour,", "my flour,", "id", "my flour", "is no id", "hyphens")]
    [InlineData("an id that is there already", "my-flour,", "almond-meal,", "id", "almond-meal", "is there already", "my-almond-meal")]
    [InlineData("a name that is there already", "my-flour,Larkfield flour", ",Almond Meal!", "long_description", "Almond Meal!", "is there already", "my-almond-meal")]
    [InlineData("a name without a letter", "my-flour,Larkfield flour", ",!?", "long_description", "!?", "makes no id", "give the food one")]
    [InlineData("no name", ",Larkfield flour,", ",,", "long_description", "", "long_description is missing", "write it")]
    [InlineData("a name that was saved in another code page", ",Larkfield flour,", ",Cr\uFFFDme,", "long_description", "Cr\uFFFDme", "cannot be read", "UTF-8")]
    [InlineData("a name that turns the writing round", ",Larkfield flour,", ",a\u202Eb,", "long_description", "a\u202Eb", "cannot be read", "UTF-8")]
    [InlineData("a nought for a letter", ",Larkfield flour,", ",a\0b,", "long_description", "a\0b", "cannot be read", "UTF-8")]
    [InlineData("no water", "flour,6,", "flour,,", "water_g", "", "water_g is missing", "never nothing")]
    [InlineData("a trace", ",5,12,", ",tr,12,", "sugars_g", "tr", "is not a number", "leave the field empty")]
    [InlineData("less than", ",5,12,", ",<0.5,12,", "sugars_g", "<0.5", "is not a number", "leave the field empty")]
    [InlineData("a decimal comma", ",6,414,", ",\"6,0\",414,", "water_g", "6,0", "is not a number", "a point in decimals")]
    [InlineData("no number", ",6,414,", ",NaN,414,", "water_g", "NaN", "is not a number", "digits")]
    [InlineData("no end", ",6,414,", ",Infinity,414,", "water_g", "Infinity", "is not a number", "digits")]
    [InlineData("a number with an exponent", ",12,1.5,", ",1e400,1.5,", "sodium_mg", "1e400", "is not a number", "digits")]
    [InlineData("digits of another script", ",12,1.5,", ",\u0661\u0662,1.5,", "sodium_mg", "\u0661\u0662", "is not a number", "digits")]
    [InlineData("a point alone", ",12,1.5,", ",.,1.5,", "sodium_mg", ".", "is not a number", "digits")]
    [InlineData("two points", ",12,1.5,", ",1.2.3,1.5,", "sodium_mg", "1.2.3", "is not a number", "digits")]
    [InlineData("a plus", ",12,1.5,", ",+12,1.5,", "sodium_mg", "+12", "is not a number", "digits")]
    [InlineData("below nothing", ",12,1.5,", ",-12,1.5,", "sodium_mg", "-12", "is below nothing", "from 0")]
    [InlineData("more than all of it", ",12,1.5,", ",100001,1.5,", "sodium_mg", "100001", "is above 100000 mg/100 g", "from 0 to 100000")]
    [InlineData("parts of 90 g", ",20,10,3,61,", ",10,10,3,61,", "water_g", "", "add up to 90 g", "alcohol_g")]
    [InlineData("parts of 110 g", ",20,10,3,61,", ",30,10,3,61,", "water_g", "", "add up to 110 g", "its source")]
    [InlineData("more fibre and sugar than carbohydrate", ",30,5,12,", ",30,35,12,", "carbohydrate_by_difference_g", "", "add up to 65 g", "its source")]
    [InlineData("more saturated fat than fat", ",12,1.5,", ",12,11,", "saturated_fat_g", "", "saturated fat 11 g of fat 10 g", "its source")]
    [InlineData("more erythritol than polyols", ",0,0,,flour", ",5,6,,flour", "erythritol_g", "", "erythritol 6 g of polyols 5 g", "its source")]
    [InlineData("kilojoules", ",6,414,", ",6,900,", "energy_kcal", "", "energy 900 kcal does not follow", "its source")]
    [InlineData("energy of another row", ",6,414,", ",6,41.4,", "energy_kcal", "", "energy 41.4 kcal does not follow", "its source")]
    [InlineData("an ingredient that nobody knows", ",,flour,none", ",almond-meel,flour,none", "like", "almond-meel", "is no ingredient", "almond-meal")]
    [InlineData("a role that nobody knows", ",,flour,none", ",,flours,none", "role", "flours", "is no role", "leavening-blend")]
    [InlineData("an allergen that nobody knows", ",none,,yes", ",milk;treenuts,,no", "contains", "milk;treenuts", "'treenuts'", "tree-nuts")]
    [InlineData("none among others", ",none,,yes", ",none;egg,,no", "contains", "none;egg", "'none'", "none")]
    [InlineData("separators alone", ",none,,yes", ",;,,no", "contains", ";", "names no allergen", "none")]
    [InlineData("what may be in it, not what is", ",none,,yes", ",,sesame,no", "contains", "", "what it contains is not", "none")]
    [InlineData("neither yes nor no", ",yes,yes,yes", ",maybe,yes,yes", "vegan", "maybe", "neither yes nor no", "nobody says")]
    [InlineData("vegan and not vegetarian", ",yes,yes,yes", ",yes,no,yes", "vegan", "yes", "not vegetarian", "one of the two")]
    [InlineData("vegan with milk", ",none,,yes", ",milk,,yes", "vegan", "yes", "contains milk", "one of the two")]
    [InlineData("vegetarian with fish", ",none,,yes", ",fish,,no", "vegetarian", "yes", "contains fish", "one of the two")]
    [InlineData("gluten-free with wheat", ",none,,yes", ",wheat,,yes", "gluten_free", "yes", "contains wheat", "one of the two")]
    [InlineData("a field too many", ",yes,yes,yes", ",yes,yes,yes,yes", "", "", "has 22 fields", "point")]
    [InlineData("a field too few", ",yes,yes,yes", ",yes,yes", "", "", "has 20 fields", "empty fields")]
    [InlineData("text behind a quote", ",Larkfield flour,", ",\"Larkfield\" flour,", "", "", "quotes", "twice")]
    public void A_row_that_cannot_be_true_is_left_out_and_the_others_go_in(
        string spoilt, string written, string instead, string field, string value, string reason, string wayOut)
    {
        Assert.Contains(written, Sound, StringComparison.Ordinal);
        var reading = TestTables.Read(Header, Other(1), Sound.Replace(written, instead, StringComparison.Ordinal), Other(2));

        Assert.True(reading.Foods.Length == 2, spoilt);
        Assert.Equal(1, reading.LeftOut);
        var problem = Assert.Single(reading.Problems);
        Assert.Equal((3, field, value), (problem.Line, problem.Field, problem.Value));
        Assert.Contains(reason, problem.Reason, StringComparison.Ordinal);
        Assert.Contains(wayOut, problem.WayOut, StringComparison.Ordinal);
    }

    [Fact]
    public void The_sound_row_is_sound()
    {
        var food = Assert.Single(TestTables.Read(Header, Sound).Foods);

        Assert.Equal("my-flour", food.Id);
        Assert.Equal(Kitchen.Ingredients.Role.Flour, food.Role);
        Assert.Empty(food.Allergens!.Contains);
        Assert.Equal(new Kitchen.Ingredients.Suits(true, true, true), food.Suits);
    }

    [Fact]
    public void Kilojoules_are_recognised()
    {
        // 98 kcal of an invented broth are 410 kJ: 4 x 4 + 9 x 2 + 4 x 16 = 98.
        var problem = Assert.Single(TestTables.Read("long_description,water_g,energy_kcal,protein_g,fat_g,ash_g,carbohydrate_by_difference_g", "Larkfield broth,77,410,4,2,1,16").Problems);

        Assert.Contains("kilojoules", problem.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void All_that_is_wrong_with_a_row_is_said_at_once()
    {
        var reading = TestTables.Read(Header, "My Flour,,x,-1,20,10,3,61,30,5,12,1.5,0,0,nobody,nothing,;,,maybe,yes,yes");

        Assert.Equal(
            ["contains", "energy_kcal", "like", "long_description", "role", "vegan", "water_g"],
            reading.Problems.Select(problem => problem.Field).Order(StringComparer.Ordinal));
        Assert.Equal(1, reading.LeftOut);
    }

    [Fact]
    public void Of_two_rows_with_one_id_neither_is_believed()
    {
        var reading = TestTables.Read(Header, Sound, Other(1), Sound.Replace(",414,", ",415,", StringComparison.Ordinal));

        Assert.Equal("other-1", Assert.Single(reading.Foods).Id);
        Assert.Equal([(2, "stands on line 4 too"), (4, "stands on line 2 too")], reading.Problems.Select(problem => (problem.Line, problem.Reason)));
    }

    [Fact]
    public void No_more_problems_are_listed_than_can_be_read_and_all_are_counted()
    {
        var reading = TestTables.Read([Header, .. Enumerable.Repeat(",x", 3000), Sound]);

        Assert.Equal(FoodTable.MostProblems, reading.Problems.Length);
        Assert.Equal(3000, reading.LeftOut);
        Assert.Single(reading.Foods);
    }

    [Fact]
    public void What_is_shown_of_a_long_value_is_short()
    {
        var problem = Assert.Single(TestTables.Read(Header, Sound.Replace(",414,", $",{new string('9', 5000)},", StringComparison.Ordinal)).Problems);

        Assert.Equal(100, problem.Value.Length);
        Assert.Equal($"'{problem.Value}' {problem.Reason}; {problem.WayOut}", problem.Sentence);
    }

    private static string Other(int number) => Sound.Replace("my-flour", $"other-{number}", StringComparison.Ordinal);
}
