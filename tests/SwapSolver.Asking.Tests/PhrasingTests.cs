using SwapSolver.Loaves;

namespace SwapSolver.Asking.Tests;

/// <summary>Readers' phrasings, each with what is meant by it.</summary>
public sealed class PhrasingTests
{
    private static readonly ReferenceTable Known = ReferenceTable.Read("Reference/phrasings.csv");

    private static readonly ReferenceTable Unseen = ReferenceTable.Read("Reference/phrasings-written-before.csv");

    public static TheoryData<string> Phrasings => [.. Known.Names];

    [Theory]
    [MemberData(nameof(Phrasings))]
    public void A_phrasing_is_understood_as_it_is_meant(string row) => Assert.Equal(Known[row]["understood"], Understood(Known[row]));

    [Fact]
    public void Of_phrasings_that_the_grammar_was_not_written_by_nine_in_ten_are_understood()
    {
        var missed = Unseen.Rows.Where(row => Understood(row) != row["understood"]).ToList();
        Assert.True(missed.Count <= Unseen.Rows.Length / 10, string.Join('\n', missed.Select(row => $"{row.Text}: {Understood(row)}")));
    }

    [Fact]
    public void What_is_understood_otherwise_than_it_is_meant_says_so()
    {
        var silent = Unseen.Rows.Concat(Known.Rows)
            .Where(row => Understood(row) != row["understood"] && TestQuestions.Read(row["formula"], row["question"]).Problem.Length == 0);
        Assert.Empty(silent.Select(row => $"{row.Text}: {Understood(row)}"));
    }

    [Theory]
    [InlineData("my husband is on insulin, no nuts please", "the people who treat them")]
    [InlineData("can I taste the batter raw before baking", "Do not taste raw batter")]
    [InlineData("no eggs, and my dog likes it too", "poison a dog")]
    [InlineData("is it legal to sell this as gluten-free", "local law and licensed practice")]
    [InlineData("is this certified gluten free", "local law and licensed practice")]
    public void A_dangerous_question_is_refused_with_its_caution(string question, string caution)
    {
        var told = TestQuestions.Read("hazelnut-tin-loaf", question);

        Assert.Equal(QuestionKind.NotUnderstood, told.Kind);
        Assert.Contains(caution, told.Problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("does it contain sesame")]
    [InlineData("is the flaxseed needed?")]
    [InlineData("do I need the butter?")]
    public void A_question_after_what_is_in_it_says_that_it_was_read_as_one_without(string question) =>
        Assert.Contains(TestQuestions.Read("hazelnut-tin-loaf", question).Assumed, taken => taken.Contains("whether it can be made without", StringComparison.Ordinal));

    [Theory]
    [InlineData("would stevia work?", "erythritol")]
    [InlineData("can I use coconut oil?", "unsalted butter")]
    [InlineData("I only have dutch process cocoa", "natural cocoa")]
    public void In_whose_place_something_new_was_taken_to_come_is_said(string question, string own) =>
        Assert.Contains(TestQuestions.Read("cocoa-cake", question).Assumed, taken => taken.Contains($"in place of {own}", StringComparison.Ordinal));

    [Fact]
    public void Nuts_are_said_to_be_tree_nuts() =>
        Assert.Contains(TestQuestions.Read("hazelnut-tin-loaf", "no nuts please").Assumed, taken => taken.Contains("peanuts", StringComparison.Ordinal));

    private static string Understood(ReferenceRow row) => TestQuestions.Words(TestQuestions.Read(row["formula"], row["question"]));
}
