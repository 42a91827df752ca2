using System.Text.RegularExpressions;
using SwapSolver.Data.Files;
using SwapSolver.Data.Wording;
using SwapSolver.Kitchen.Wording;
using SwapSolver.Loaves;

namespace SwapSolver.Data.Tests.Wording;

public sealed partial class PhraseFileTests
{
    private static readonly Phrases Shipped = PhraseFile.Read(TestKitchen.Folder);

    /// <summary>Every gap that an answer or a caution fills.</summary>
    private static readonly HashSet<string> Gaps =
    [
        "after", "aims", "allergens", "balance", "before", "caution", "changes", "count", "factor", "figures", "food", "formula", "from", "goal", "grams", "high",
        "gone", "hundred", "ingredient", "ingredients", "like", "limit", "low", "meaning", "minutes", "missed", "names", "reason", "reasons", "size", "slices", "swap", "thing", "measure", "tin", "title", "to",
        "unit", "value", "whole", "why", "wish", "wishes", "words",
    ];

    private static readonly Phrases OfCards = PhraseFile.ReadCard(TestKitchen.Folder);

    /// <summary>Every gap that a card fills.</summary>
    private static readonly HashSet<string> CardGaps =
        [
        "after", "allergen", "allergens", "baked", "before", "condition", "convention", "count", "date", "fan", "first", "food", "formula", "from", "grams", "height", "high", "ingredient", "ingredients", "law",
        "length", "lines", "list", "low", "mark", "method", "number", "place", "portion", "rest", "second", "share", "size", "slices", "standing", "temperature", "title", "total", "unit", "value", "version", "width",
    ];

    public static TheoryData<string> CardSentences => [.. OfCards.ById.Keys.Order(StringComparer.Ordinal)];

    public static TheoryData<string> Sentences => [.. Shipped.ById.Keys.Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Sentences))]
    public void A_sentence_has_only_gaps_that_are_known(string id)
    {
        var sentence = Shipped.ById[id];

        Assert.Empty(Gap().Matches(sentence).Select(match => match.Groups["name"].Value).Except(Gaps));
        Assert.DoesNotContain(Gap().Replace(sentence, string.Empty), letter => letter is '{' or '}');
    }

    [Theory]
    [MemberData(nameof(CardSentences))]
    public void A_sentence_of_a_card_has_only_gaps_that_are_known(string id)
    {
        var sentence = OfCards.ById[id];

        Assert.Empty(Gap().Matches(sentence).Select(match => match.Groups["name"].Value).Except(CardGaps));
        Assert.DoesNotContain(Gap().Replace(sentence, string.Empty), letter => letter is '{' or '}');
    }

    [Fact]
    public void A_sentence_that_is_no_text_is_shown_where_it_stands()
    {
        using var folder = new SpoiltFolder();
        var text = folder.Replace("wording/answers.json", "\"the same weight\"", "42");

        Assert.Throws<DataFaultException>(folder.ReadPhrases)
            .AssertPointsAt("wording/answers.json", text, "\"same-weight\": ^42", "a text");
    }

    [GeneratedRegex(@"\{(?<name>[a-z]+)\}")]
    private static partial Regex Gap();
}
