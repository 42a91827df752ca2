using System.Diagnostics;
using System.Text.Json;

namespace SwapSolver.Web.Tests;

/// <summary>The pages in a real browser against the real service: a test a journey.</summary>
[Collection(WalkedJourneys.Name)]
public sealed class JourneyTests(WalkedJourneys journeys)
{
    /// <summary>Fewest journeys that the pages are to be walked in.</summary>
    private const int FewestJourneys = 25;

    /// <summary>A picture of less is of an empty page [bytes].</summary>
    private const int LeastPicture = 5_000;

    public static TheoryData<string> Sentences => [.. Listed()];

    private static string[] Listed()
    {
        // The same list that is walked, told by the same program: no journey can be forgotten here.
        using var lister = Process.Start(new ProcessStartInfo("node", [Path.Combine(Repository.Root, "tests", "web", "list.mjs")]) { RedirectStandardOutput = true })!;
        var sentences = JsonSerializer.Deserialize<string[]>(lister.StandardOutput.ReadToEnd())!;
        lister.WaitForExit();
        return sentences;
    }

    [Theory]
    [MemberData(nameof(Sentences))]
    public void A_journey_ends_well(string sentence)
    {
        var found = journeys.Of(sentence);
        Assert.True(found.GetProperty("passed").GetBoolean(), found.ToString());
    }

    [Fact]
    public void Every_journey_was_walked() => Assert.Equal(Listed().Order(StringComparer.Ordinal), journeys.Sentences.Order(StringComparer.Ordinal));

    [Fact]
    public void There_are_as_many_journeys_as_were_asked_for() => Assert.InRange(journeys.Sentences.Count(), FewestJourneys, int.MaxValue);

    [Fact]
    public void A_picture_of_each_end_can_be_looked_at()
    {
        Assert.InRange(journeys.Pictures.Count, FewestJourneys, int.MaxValue);
        Assert.All(journeys.Pictures, size => Assert.InRange(size, LeastPicture, long.MaxValue));
    }
}
