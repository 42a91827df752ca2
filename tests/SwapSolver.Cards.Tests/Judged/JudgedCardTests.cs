using System.Text.Json;

namespace SwapSolver.Cards.Tests.Judged;

/// <summary>What an HTML validator, an accessibility checker, a browser, the vocabulary of schema.org and a JSON-LD processor
/// say of printed cards (npm packages html-validate, axe-core, playwright-core with Chromium, schema-dts, jsonld).</summary>
[Collection(JudgedCards.Name)]
public sealed class JudgedCardTests(JudgedCards cards)
{
    public static TheoryData<string> Cards => [.. JudgedCards.Cards];

    public static TheoryData<int> HostileCards => [0, 1, 2, 3, 4, 5, 6];

    [Theory]
    [MemberData(nameof(Cards))]
    public void A_page_is_valid_html(string card) => Assert.Empty(Said(cards.Of($"{card}.html"), "invalid"));

    [Theory]
    [MemberData(nameof(Cards))]
    public void A_page_has_no_barrier_by_day_or_by_night(string card) => Assert.Empty(Said(cards.Of($"{card}.html"), "barriers"));

    [Theory]
    [MemberData(nameof(Cards))]
    public void Nothing_runs_over_the_edge_of_a_telephone_or_of_a_sheet_of_paper(string card)
    {
        foreach (var width in new[] { "phone", "sheet" })
        {
            var look = cards.Of($"{card}.html").GetProperty(width);
            Assert.Equal((0, 0), (look.GetProperty("wide").GetInt32(), look.GetProperty("outside").GetInt32()));
        }

        Assert.True(cards.Picture(card, 360) > 10_000 && cards.Picture(card, 794) > 10_000, "a picture is empty");
    }

    [Theory]
    [MemberData(nameof(Cards))]
    public void A_page_needs_no_other_file_runs_nothing_and_prints_on_both_papers(string card)
    {
        var found = cards.Of($"{card}.html");

        Assert.Empty(Said(found, "alarms"));
        Assert.Equal(0, found.GetProperty("scripts").GetInt32());
        Assert.All(new[] { "A4", "Letter" }, paper => Assert.InRange(found.GetProperty("pages").GetProperty(paper).GetInt32(), 1, 8));
    }

    [Theory]
    [MemberData(nameof(Cards))]
    public void Linked_data_has_only_what_the_vocabulary_knows_and_loses_nothing(string card)
    {
        var found = cards.Of($"{card}.jsonld");

        Assert.Empty(Said(found, "unknown"));
        Assert.Empty(Said(found, "lost"));
        Assert.True(found.GetProperty("statements").GetInt32() > 20);
    }

    [Theory]
    [MemberData(nameof(HostileCards))]
    public void A_hostile_name_is_read_as_it_was_typed(int place)
    {
        var name = SwapSolver.Cards.Texts.PlainWords.Of(JudgedCards.HostileName(place));
        var found = cards.Of($"hostile-{place}.html");

        Assert.Equal(name, found.GetProperty("heading").GetString());
        Assert.Equal(name, found.GetProperty("title").GetString());
    }

    /// <summary>A judge that finds nothing in a spoilt page judges nothing.</summary>
    [Fact]
    public void The_judges_see_what_is_wrong_with_a_spoilt_card()
    {
        var page = cards.Of("spoilt.html");
        var data = cards.Of("spoilt.jsonld");

        Assert.NotEmpty(Said(page, "invalid"));
        Assert.NotEmpty(Said(page, "barriers"));
        Assert.Contains(Said(page, "alarms"), alarm => alarm.StartsWith("dialog", StringComparison.Ordinal));
        Assert.Contains(Said(page, "alarms"), alarm => alarm.StartsWith("asked for", StringComparison.Ordinal));
        Assert.True(page.GetProperty("phone").GetProperty("wide").GetInt32() > 0);
        Assert.Contains("$.oven: Recipe has no such property", Said(data, "unknown"));
        Assert.Contains(Said(data, "unknown"), problem => problem.StartsWith("$.nutrition: HowToStep is none of", StringComparison.Ordinal));
    }

    private static List<string> Said(JsonElement found, string name) => [.. found.GetProperty(name).EnumerateArray().Select(text => text.GetString()!)];
}
