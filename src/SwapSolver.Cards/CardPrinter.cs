using System.Text.Encodings.Web;
using System.Text.Unicode;
using Fluid;
using SwapSolver.Cards.Linked;
using SwapSolver.Cards.Texts;
using SwapSolver.Cards.Views;

namespace SwapSolver.Cards;

/// <summary>Prints cards: Markdown, one HTML page that needs no other file, and linked data.</summary>
/// <param name="Room">What cards are printed with.</param>
public sealed record CardPrinter(CardRoom Room)
{
    private static readonly TemplateOptions Options = new() { MemberAccessStrategy = new UnsafeMemberAccessStrategy() };

    private static readonly IFluidTemplate MarkdownCard = EmbeddedTexts.Template("card.md.liquid");

    private static readonly IFluidTemplate HtmlCard = EmbeddedTexts.Template("card.html.liquid");

    private static readonly string Style = EmbeddedTexts.Read("card.css");

    /// <summary>Letters of every script stay readable in the source; what means something to HTML never gets through.</summary>
    private static readonly HtmlEncoder Encoder = HtmlEncoder.Create(UnicodeRanges.All);

    /// <summary>The card in Markdown (CommonMark with tables).</summary>
    public string Markdown(Card card) =>
        MarkdownCard.Render(new TemplateContext(new CardViewWriter(Room, MarkdownWords.Of).Write(card), Options), NullEncoder.Default);

    /// <summary>The card as one HTML page.</summary>
    public string Html(Card card)
    {
        var context = new TemplateContext(new CardViewWriter(Room, static words => words).Write(card), Options);
        context.SetValue("Style", Style);
        context.SetValue("LinkedData", LinkedData(card));
        return HtmlCard.Render(context, Encoder);
    }

    /// <summary>The card as linked data, in the vocabulary of schema.org.</summary>
    public string LinkedData(Card card) => new RecipeData(Room).Write(card);
}
