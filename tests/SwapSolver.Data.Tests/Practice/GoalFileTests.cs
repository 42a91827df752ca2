using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Data.Tests.Practice;

public sealed class GoalFileTests
{
    private const string Goals = "practice/goals.json";

    private const string Salt = "{ \"balance\": \"salt\", \"highPercentOfOwn\": 75 }";

    [Theory]
    [InlineData(Salt, "{ \"balance\": \"slat\", \"highPercentOfOwn\": 75 }", "^\"slat\"", "'slat'")]
    [InlineData(Salt, "{ \"balance\": \"salt\", \"highPercentOfOwn\": -75 }", "^-75", "-75")]
    [InlineData(Salt, "{ \"balance\": \"salt\", \"highPercent\": 75 }", "\"highPercent\": ^75", "'highPercent'")]
    [InlineData(Salt, "{ \"balance\": \"salt\" }", "^{ \"balance\": \"salt\" }", "aims at nothing")]
    [InlineData(Salt, "{ \"balance\": \"salt\", \"lowPercentOfOwn\": 80, \"highPercentOfOwn\": 75 }", "\"lowPercentOfOwn\": ^80", "above")]
    [InlineData("[" + Salt + "]", "[]", "\"aims\": ^[]", "moves no reading")]
    [InlineData("\"also\": [\"less-sodium\", \"lower-salt\"]", "\"also\": [\"softer\"]", "\"also\": [^\"softer\"", "'softer'")]
    [InlineData("\"also\": [\"less-sodium\", \"lower-salt\"]", "\"also\": [\"salt\"]", "\"also\": [^\"salt\"", "'salt'")]
    [InlineData("\"title\": \"less salt\",", "", "\"less-salt\": ^{", "'title' is missing")]
    public void A_goal_that_cannot_be_read_is_shown_where_it_stands(string written, string spoilt, string place, string says)
    {
        using var folder = new SpoiltFolder();
        var text = folder.Replace(Goals, written, spoilt);
        var mark = place.IndexOf('^', StringComparison.Ordinal);

        // Where a spoilt text stands elsewhere too, the second of them is the spoilt one.
        var fault = Assert.Throws<DataFaultException>(() => folder.ReadGoals());
        if (text.Split(place.Remove(mark, 1)).Length == 2)
        {
            fault.AssertPointsAt(Goals, text, place, says);
        }

        Assert.Equal(Goals, fault.File);
        Assert.Contains(says, fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_goal_without_a_source_is_refused()
    {
        using var folder = new SpoiltFolder();
        folder.Rewrite(Goals, text => text.Replace("\"eu-1924-2006\"", "\"hearsay\"", StringComparison.Ordinal));
        Assert.Contains("'hearsay'", Assert.Throws<DataFaultException>(() => folder.ReadGoals()).Message, StringComparison.Ordinal);
    }

    [Theory]
    // Memory of Regulation (EC) No 1924/2006, annex: reduced and increased mean 30 % against a similar product, and a
    // quarter for sodium or salt.
    [InlineData("less-salt", "salt", null, 75.0)]
    [InlineData("less-fat", "fat", null, 70.0)]
    [InlineData("less-sugar", "sugars", null, 70.0)]
    [InlineData("less-energy", "energy", null, 70.0)]
    [InlineData("more-protein", "protein", 130.0, null)]
    [InlineData("more-fibre", "fibre", 130.0, null)]
    public void A_word_of_the_law_goes_as_far_as_the_law_asks(string word, string balance, double? low, double? high)
    {
        using var folder = new SpoiltFolder();
        var aim = folder.ReadGoals().Find(word)!.Aims.Single(one => one.Balance.Id == balance);
        Assert.Equal(new OwnShare(PercentOf(low), PercentOf(high)), aim.Share);
    }

    [Theory]
    [InlineData("softer")]
    [InlineData("Fewer carbs")]
    [InlineData("less salt")]
    [InlineData("cheaper")]
    [InlineData("more-protein")]
    [InlineData("fewer-eggs")]
    public void The_words_that_bakers_ask_with_are_known(string word)
    {
        using var folder = new SpoiltFolder();
        Assert.NotNull(folder.ReadGoals().Find(word));
    }

    [Fact]
    public void No_word_means_two_things()
    {
        using var folder = new SpoiltFolder();
        GoalList goals = folder.ReadGoals();
        Assert.Equal(goals.Words.Count(), goals.Words.Distinct().Count());
    }

    private static Percent? PercentOf(double? value) => value is { } percent ? new Percent(percent) : null;
}
