using System.CommandLine;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Files;
using SwapSolver.Console.Screens;
using SwapSolver.V1;

namespace SwapSolver.Console.Verbs;

/// <summary><c>label</c>: the nutrition label of a formula by the law of one place.</summary>
internal sealed class Label
{
    private readonly FormulaArgument formula = new();
    private readonly LawOption law = new("--law");
    private readonly WholeFigureOption serving = new("--serving", "Slices in a serving. Without it: 1.");

    private readonly Option<string?> energy = new("--energy")
    {
        Description = "How energy is counted, of the methods that the law allows. Without it: the first of them.",
        HelpName = "METHOD",
    };

    /// <summary>The verb.</summary>
    public static Command Create(Errand errand)
    {
        var label = new Label();
        var verb = new VerbCommand(
            "label",
            "The nutrition label of a formula by the law of one place, figures as printed and not rounded, with its allergens.",
            "swapsolver label data/formulas/hazelnut-tin-loaf.json --law eu")
        {
            label.formula,
            label.formula.System,
            label.law,
            label.serving,
            label.energy,
        };
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<PrintCardResponse>(
                async token => (await label.formula.ReadAsync(parse, token)).Then(subject => label.Ask(parse, subject)),
                LabelScreen.Show,
                _ => ExitCode.Answer),
            cancel));
        return verb;
    }

    private ServiceCall<PrintCardResponse> Ask(ParseResult parse, FormulaSubject subject)
    {
        var request = new PrintCardRequest
        {
            Format = PrintCardRequest.Types.Format.LabelOnly,
            Label = parse.GetValue(law) ?? V1.Label.Types.Law.Unspecified,
            EnergyMethod = parse.GetValue(energy) ?? string.Empty,
        };
        if (parse.GetValue(serving) is int slices)
        {
            request.ServingSlices = slices;
        }

        subject.PutInto(formula => request.Formula = formula, name => request.Name = name);
        return async (service, options) => await new CardService.CardServiceClient(service).PrintCardAsync(request, options);
    }
}
