using System.CommandLine;
using System.Globalization;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Screens;
using SwapSolver.V1;

namespace SwapSolver.Console.Verbs;

/// <summary><c>formula diff</c>: what changed from one revision to another.</summary>
internal sealed class FormulaDiff
{
    private readonly FormulaName name = new();

    private readonly WholeFigureOption from = new("--from", "Number of the first revision. Without it: the one before the second.");

    private readonly WholeFigureOption to = new("--to", "Number of the second revision. Without it: the newest.");

    private readonly Option<string?> with = new("--with") { Description = "Another stored formula, to hold this one against.", HelpName = "NAME" };

    /// <summary>The verb.</summary>
    public static Command Create(Errand errand)
    {
        var diff = new FormulaDiff();
        var verb = new VerbCommand(
            "diff", "What changed from one revision to another: lines, readings, nutrition, cost, and whether its goals came nearer.", "swapsolver formula diff my-tin-loaf --from 1 --to 3")
        {
            diff.name, diff.from, diff.to, diff.with,
        };
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<DiffRevisionsResponse>(_ => Task.FromResult<Checked<ServiceCall<DiffRevisionsResponse>>>(diff.Ask(parse)), DiffScreen.Show, _ => ExitCode.Answer),
            cancel));
        return verb;
    }

    private ServiceCall<DiffRevisionsResponse> Ask(ParseResult parse)
    {
        var formula = name.Read(parse);
        var first = parse.GetValue(with) is { } other ? FormulaName.ToResourceName(other) : formula;
        var request = new DiffRevisionsRequest
        {
            From = parse.GetValue(from) is { } number ? Revision(first, number) : first == formula ? string.Empty : first,
            To = parse.GetValue(to) is { } second ? Revision(formula, second) : formula,
        };
        return async (service, options) => await new FormulaService.FormulaServiceClient(service).DiffRevisionsAsync(request, options);
    }

    private static string Revision(string name, int number) => string.Create(CultureInfo.InvariantCulture, $"{name}/revisions/{number}");
}
