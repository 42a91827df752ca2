using System.Collections.Immutable;
using Grpc.Core;
using SwapSolver.Cards;
using SwapSolver.Cards.Swaps;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Solves;
using SwapSolver.Service.Translation;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Questions;
using SwapSolver.V1;
using Format = SwapSolver.V1.PrintCardRequest.Types.Format;

namespace SwapSolver.Service.Services;

/// <summary>Prints cards and labels.</summary>
internal sealed class CardService(AnswerSearch search, Subject subject, SolveRoom room, AnswerCache cache, CardRoom cards, CardPrinter printer)
    : V1.CardService.CardServiceBase
{
    private static readonly ImmutableArray<Format> HasPictures = [Format.Unspecified, Format.Markdown, Format.Html, Format.Svg];

    private readonly AnswerWriter writer = new(search.Bakehouse);

    /// <inheritdoc/>
    public override Task<PrintCardResponse> PrintCard(PrintCardRequest request, ServerCallContext context)
    {
        var problems = new ProblemList();
        var read = subject.ReadAsGiven(request.Name, request.Formula, problems);
        var wishes = new CardReader(cards, subject, problems).Read(request, read?.Formula);
        problems.ThrowIfAny();
        return cache.Get(request, context, async () =>
        {
            var card = await room.Run(context, (_, _) => new CardMaker(search.Bakehouse, cards).Make(
                read!.Formula, wishes!, HasPictures.Contains(request.Format) ? new Measurement(read.Formula, read.Measured).Read(search) : []));
            return (Write(read!, card, request.Format), false);
        });
    }

    /// <inheritdoc/>
    public override Task<PrintSwapTableResponse> PrintSwapTable(PrintSwapTableRequest request, ServerCallContext context)
    {
        var problems = new ProblemList();
        var asked = new ChartSwapsRequest { Habits = request.Habits };
        asked.Ingredients.AddRange(request.Ingredients);
        if (request.Formula is { } formula)
        {
            asked.Formula = formula;
        }
        else
        {
            asked.Name = request.Name;
        }

        var reader = new ChartReader(search.Bakehouse, subject, problems);
        var chart = reader.Read(asked);
        var locale = new CardReader(cards, subject, problems).LocaleOf(request.Locale);
        if (request.Format is not (Format.Unspecified or Format.Markdown or Format.Html))
        {
            problems.Add("format", request.Format.ToString(), "is no way to print a table of swaps", "give MARKDOWN or HTML");
        }

        problems.ThrowIfAny();
        return cache.Get(request, context, async () =>
        {
            var pairs = chart!.Pairs(search.Bakehouse);
            var charted = await room.RunLong(context, (clock, cancel) => chart.Trace(search, pairs, clock, cancel).ToList());
            OutOfTime.ThrowIf(charted.Count == 0 && pairs.Length > 0);
            return (Write(reader, SwapTable.Of(chart.Formula, charted, pairs.Length, locale), request.Format), charted.Count < pairs.Length);
        });
    }

    private PrintSwapTableResponse Write(ChartReader reader, SwapTable table, Format format)
    {
        var written = new PrintSwapTableResponse { Judged = table.Judged, Pairs = table.Pairs };
        written.Swaps.AddRange(table.Swaps.Select((swap, index) => ChartWriter.Write(swap, index + 1, table.Pairs)));
        written.LinesRead.AddRange(reader.LinesRead);
        if (format == Format.Html)
        {
            written.Html = printer.Html(table);
        }
        else
        {
            written.Markdown = printer.Markdown(table);
        }

        return written;
    }

    private PrintCardResponse Write(ReadFormula read, Card card, Format format)
    {
        var words = new LabelWriter(cards.Phrases);
        var written = new PrintCardResponse
        {
            LabelLaw = words.Write(card.Formula, card.Label),
            Nutrition = writer.Nutrition(card.Formula),
            Allergens = writer.Allergens(card.Formula),
            Version = card.Version,
        };
        written.Label.AddRange(card.Label.Figures.Select(figure => words.Write(card.Label, figure)));
        written.Statements.AddRange(card.Statements);
        written.Cautions.AddRange(card.Cautions);
        written.LinesRead.AddRange(read.LinesRead);
        switch (format)
        {
            case Format.Unspecified or Format.Markdown:
                written.Markdown = printer.Markdown(card);
                break;
            case Format.Html:
                written.Html = printer.Html(card);
                break;
            case Format.Jsonld:
                written.Jsonld = printer.LinkedData(card);
                break;
            case Format.Csv:
                written.Csv = CardPrinter.Csv(card);
                break;
            case Format.Svg:
                written.Svg = printer.Svg(card);
                break;
        }

        return written;
    }
}
