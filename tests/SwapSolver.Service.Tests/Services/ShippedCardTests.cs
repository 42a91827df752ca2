using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;
using Format = SwapSolver.V1.PrintCardRequest.Types.Format;

namespace SwapSolver.Service.Tests.Services;

/// <summary>The cards of <c>data/cards</c> are what the service prints of the demo formulas today. DEVELOPERS.md says how to print
/// them anew where a fact or a word was changed on purpose.</summary>
[Collection(OpenKitchen.Name)]
public sealed class ShippedCardTests(OpenKitchen kitchen)
{
    private static readonly string Data = Path.Combine(AppContext.BaseDirectory, "data");

    private static IEnumerable<string> Ids => Directory.GetFiles(Path.Combine(Data, "formulas"), "*.json").Select(path => Path.GetFileNameWithoutExtension(path)).Order(StringComparer.Ordinal);

    public static TheoryData<string, Format, string> Cards
    {
        get
        {
            var cards = new TheoryData<string, Format, string>();
            foreach (var id in Ids)
            {
                cards.Add(id, Format.Markdown, "md");
                cards.Add(id, Format.Html, "html");
                cards.Add(id, Format.Jsonld, "jsonld");
            }

            return cards;
        }
    }

    [Theory]
    [MemberData(nameof(Cards))]
    public async Task A_shipped_card_is_what_is_printed_today(string id, Format format, string ending)
    {
        var response = await kitchen.Service.Cards.PrintCardAsync(new PrintCardRequest
        {
            Name = $"formulas/{id}",
            Format = format,
            Measures = Line.Types.System.UsCustomary,
            Label = Label.Types.Law.Us,
        });
        var shipped = await File.ReadAllTextAsync(Path.Combine(Data, "cards", $"{id}.{ending}"));

        Assert.Equal(shipped, response.Markdown + response.Html + response.Jsonld);
    }

    [Fact]
    public void Every_demo_formula_has_its_three_cards_and_no_card_is_left_over() => Assert.Equal(
        Ids.SelectMany(id => new[] { $"{id}.html", $"{id}.jsonld", $"{id}.md" }).Order(StringComparer.Ordinal),
        Directory.GetFiles(Path.Combine(Data, "cards")).Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal));
}
