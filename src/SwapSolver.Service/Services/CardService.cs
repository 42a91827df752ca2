using Grpc.Core;
using SwapSolver.Cards;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Solves;
using SwapSolver.Service.Translation;
using SwapSolver.Solving.Answers;
using SwapSolver.V1;
using Format = SwapSolver.V1.PrintCardRequest.Types.Format;

namespace SwapSolver.Service.Services;

/// <summary>Prints cards and labels.</summary>
internal sealed class CardService(AnswerSearch search, Subject subject, SolveRoom room, AnswerCache cache, CardRoom cards, CardPrinter printer)
    : V1.CardService.CardServiceBase
{
    private readonly AnswerWriter writer = new(search.Bakehouse);

    /// <inheritdoc/>
    public override Task<PrintCardResponse> PrintCard(PrintCardRequest request, ServerCallContext context)
    {
        var problems = new ProblemList();
        var read = subject.Read(request.Name, request.Formula, problems);
        var wishes = new CardReader(cards, subject, problems).Read(request, read?.Formula);
        problems.ThrowIfAny();
        return cache.Get(request, async () =>
        {
            var card = await room.Run(context, (_, _) => new CardMaker(search.Bakehouse, cards).Make(read!.Formula, wishes!, []));
            return (Write(read!, card, request.Format), false);
        });
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
            case Format.Markdown:
                written.Markdown = printer.Markdown(card);
                break;
            case Format.Html:
                written.Html = printer.Html(card);
                break;
            case Format.Jsonld:
                written.Jsonld = printer.LinkedData(card);
                break;
        }

        return written;
    }
}
