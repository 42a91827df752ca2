using SwapSolver.Data.Files;

namespace SwapSolver.Data.Tests.Wording;

public sealed class QuestionFilesTests
{
    [Theory]
    [InlineData("words/baking.json", "\"degree\": [", "\"hard\": [", "\"hard\": ^[", "stands in another file")]
    [InlineData("words/baking.json", "\"words\": {", "\"word\": {", "\"word\": ^{", "'word'")]
    [InlineData("values.json", "\"valued\": {", "\"values\": {", "\"values\": ^{", "'values'")]
    [InlineData("tins.json", "\"tins-practice\"", "\"hearsay\"", "\"tinSource\": ^\"hearsay\"", "'hearsay'")]
    [InlineData("tins.json", "\"loafGrams\": 450", "\"loafGrams\": \"450\"", "\"loafGrams\": ^\"450\"", "a number")]
    public void Words_of_questions_that_cannot_be_read_are_shown_where_they_stand(string name, string written, string spoilt, string place, string says)
    {
        using var folder = new SpoiltFolder();
        var text = folder.Replace($"wording/questions/{name}", written, spoilt);

        var fault = Assert.Throws<DataFaultException>(folder.ReadQuestions);

        Assert.Contains(says, fault.Message, StringComparison.Ordinal);
        // A class that stands twice is told in whichever file is read later.
        if (!says.StartsWith("stands", StringComparison.Ordinal))
        {
            fault.AssertPointsAt($"wording/questions/{name}", text, place, says);
        }
    }
}
