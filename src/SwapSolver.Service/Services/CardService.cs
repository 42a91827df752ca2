using Grpc.Core;
using SwapSolver.Kitchen.Labels;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Solves;
using SwapSolver.Service.Translation;
using SwapSolver.Solving.Answers;
using SwapSolver.V1;

namespace SwapSolver.Service.Services;

/// <summary>Prints cards and labels.</summary>
internal sealed class CardService(AnswerSearch search, Subject subject, AnswerCache cache, LabelRoom labels)
    : V1.CardService.CardServiceBase
{
    private const string UsualLaw = "us";

    private readonly AnswerWriter writer = new(search.Bakehouse);

    /// <inheritdoc/>
    public override Task<PrintCardResponse> PrintCard(PrintCardRequest request, ServerCallContext context)
    {
        var problems = new ProblemList();
        var read = subject.Read(request.Name, request.Formula, problems);
        var reader = new LabelReader(labels.Laws, problems);
        var law = reader.LawOf(request.Label, UsualLaw);
        var method = reader.Method(request.EnergyMethod, law);
        var serving = reader.ServingSlices(request, read?.Formula);
        problems.ThrowIfAny();
        return cache.Get(request, () => Task.FromResult((Write(read!, LabelSheet.Of(read!.Formula, law!, method, serving)), false)));
    }

    private PrintCardResponse Write(ReadFormula read, LabelSheet sheet)
    {
        var formula = read.Formula;
        var words = new LabelWriter(labels.Phrases);
        var written = new PrintCardResponse
        {
            LabelLaw = words.Write(formula, sheet),
            Nutrition = writer.Nutrition(formula),
            Allergens = writer.Allergens(formula),
        };
        written.Label.AddRange(sheet.Figures.Select(figure => words.Write(sheet, figure)));
        written.Statements.AddRange(new LabelStatements(search.Bakehouse.Pantry.Allergens, labels.Phrases).Of(formula, sheet.Law));
        written.Cautions.AddRange(new CautionList(search.Bakehouse).Of(formula));
        written.LinesRead.AddRange(read.LinesRead);
        return written;
    }
}
