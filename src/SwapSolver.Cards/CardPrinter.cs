using System.Text.Encodings.Web;
using System.Text.Unicode;
using Fluid;
using SwapSolver.Cards.Linked;
using SwapSolver.Cards.Pictures;
using SwapSolver.Cards.Swaps;
using SwapSolver.Cards.Tables;
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

    private static readonly IFluidTemplate MarkdownSwaps = EmbeddedTexts.Template("swaps.md.liquid");

    private static readonly IFluidTemplate HtmlSwaps = EmbeddedTexts.Template("swaps.html.liquid");

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

    /// <summary>Lines and label as a table of comma-separated values.</summary>
    public static string Csv(Card card) => CardTable.Write(card);

    /// <summary>The pictures of the card, one below the other, as one SVG.</summary>
    public string Svg(Card card) => Pen.Stack(PlainWords.Of(card.Formula.DisplayName), [.. new CardPictures(Room).Of(card).Select(picture => picture.Drawing)]).ToString();

    /// <summary>The swaps of a formula that balance, for readers, in Markdown.</summary>
    public string Markdown(SwapTable table) =>
        MarkdownSwaps.Render(new TemplateContext(new SwapViewWriter(Room, MarkdownWords.Of).Write(table), Options), NullEncoder.Default);

    /// <summary>The same as one HTML page.</summary>
    public string Html(SwapTable table)
    {
        var context = new TemplateContext(new SwapViewWriter(Room, static words => words).Write(table), Options);
        context.SetValue("Style", Style);
        return HtmlSwaps.Render(context, Encoder);
    }

    /// <summary>The card as linked data, in the vocabulary of schema.org.</summary>
    public string LinkedData(Card card) => new RecipeData(Room).Write(card);
}
