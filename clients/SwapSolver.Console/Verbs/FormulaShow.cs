using System.CommandLine;
using System.Globalization;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Screens;
using SwapSolver.V1;

namespace SwapSolver.Console.Verbs;

/// <summary><c>formula show</c>: one stored formula, or one of its revisions.</summary>
internal static class FormulaShow
{
    /// <summary>The verb.</summary>
    public static Command Create(Errand errand)
    {
        var name = new FormulaName();
        var revision = new WholeFigureOption("--revision", "Number of the revision. Without it: the newest.");
        var verb = new VerbCommand(
            "show", "One stored formula. Its --json is a formula file, and with its etag it can be changed and saved again.", "swapsolver formula show hazelnut-tin-loaf") { name, revision };
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<Formula>(
                _ => Task.FromResult<Checked<ServiceCall<Formula>>>(Ask(name.Read(parse), parse.GetValue(revision))),
                StoredFormulaScreen.Show,
                _ => ExitCode.Answer),
            cancel));
        return verb;
    }

    private static ServiceCall<Formula> Ask(string name, int? revision)
    {
        var request = new GetFormulaRequest { Name = revision is { } number ? string.Create(CultureInfo.InvariantCulture, $"{name}/revisions/{number}") : name };
        return async (service, options) => await new FormulaService.FormulaServiceClient(service).GetFormulaAsync(request, options);
    }
}
