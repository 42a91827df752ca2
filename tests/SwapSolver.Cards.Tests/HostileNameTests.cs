using System.Text.Json;
using System.Text.RegularExpressions;
using SwapSolver.Loaves;

namespace SwapSolver.Cards.Tests;

/// <summary>What somebody typed stays words, in every format.</summary>
public sealed partial class HostileNameTests
{
    public static TheoryData<string> Names =>
    [
        "<script>alert(1)</script>", "\"><img src=x onerror=alert(1)>", "'; DROP TABLE loaves; --", "{{ Style }} {% raw %}", "| a | b |\n| --- | --- |",
        "# Heading\n\n- list", "`code` **bold** [link](javascript:alert(1))", "</script><script>alert(1)</script>", "\u202Eloaf\u202C", "\u2066\u0627\u0644\u062E\u0628\u0632\u2069 bread",
        "&lt;b&gt; &amp; Söhne", new string('x', 500), "日本のパン 🍞", "]]><!-- -->", "\u0000\u0007bell",
    ];

    [Theory]
    [MemberData(nameof(Names))]
    public void Html_gets_no_element_that_the_template_did_not_write(string name)
    {
        var plain = Elements(TestCards.Printer.Html(Card("Plain loaf")));

        Assert.Equal(plain, Elements(TestCards.Printer.Html(Card(name))));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Markdown_keeps_its_tables_and_headings(string name)
    {
        static IEnumerable<string> Shape(string card) => card.Split('\n').Where(line => line.StartsWith('#') || line.StartsWith('|') || line.StartsWith("- ", StringComparison.Ordinal)).Select(line => line[..2]);
        var (plain, card) = (TestCards.Printer.Markdown(Card("Plain loaf")), TestCards.Printer.Markdown(Card(name)));

        Assert.Equal(Shape(plain), Shape(card));
        Assert.DoesNotMatch(@"(?<!\\)<", card);
        Assert.Equal(plain.Count(letter => letter == '\n'), card.Count(letter => letter == '\n'));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Linked_data_gives_the_name_back_and_nothing_that_ends_a_script(string name)
    {
        var text = TestCards.Printer.LinkedData(Card(name));
        using var data = JsonDocument.Parse(text);

        Assert.Equal(Texts.PlainWords.Of(name), data.RootElement.GetProperty("name").GetString());
        Assert.DoesNotContain('<', text);
    }

    [Theory]
    [InlineData("\u202Eloaf\u202C", "loaf")]
    [InlineData("\u2066\u0627\u0644\u062E\u0628\u0632\u2069", "\u0627\u0644\u062E\u0628\u0632")]
    [InlineData("a\r\nb\u2028c", "a  b c")]
    [InlineData("\uFEFFSöhne & co", "Söhne & co")]
    public void Marks_that_turn_or_hide_text_go_and_letters_stay(string typed, string plain) => Assert.Equal(plain, Texts.PlainWords.Of(typed));

    private static Card Card(string name) => TestCards.Of(
        Loaf.Walnut with { DisplayName = name, Description = name, Steps = [name] }, version: name.Length > 100 ? name[..100] : name, law: "eu");

    /// <summary>The elements and attributes that stand in the page; the title's own words are not among them.</summary>
    private static List<string> Elements(string html) => [.. Element().Matches(html).Select(match => match.Value)];

    [GeneratedRegex(@"</?[a-zA-Z!][^>]*>")]
    private static partial Regex Element();
}
