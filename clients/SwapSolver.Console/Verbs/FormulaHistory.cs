using System.CommandLine;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Screens;
using SwapSolver.V1;

namespace SwapSolver.Console.Verbs;

/// <summary><c>formula history</c>: the revisions of a formula.</summary>
internal static class FormulaHistory
{
    /// <summary>The verb.</summary>
    public static Command Create(Errand errand)
    {
        var name = new FormulaName();
        var verb = new VerbCommand("history", "The revisions of a formula, newest first.", "swapsolver formula history my-tin-loaf") { name };
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<ListRevisionsResponse>(
                _ => Task.FromResult<Checked<ServiceCall<ListRevisionsResponse>>>(Ask(name.Read(parse))),
                HistoryScreen.Show,
                _ => ExitCode.Answer),
            cancel));
        return verb;
    }

    private static ServiceCall<ListRevisionsResponse> Ask(string name) => (service, options) => AllPages.OfAsync(
        token => new FormulaService.FormulaServiceClient(service).ListRevisionsAsync(
            new ListRevisionsRequest { Name = name, PageSize = AllPages.Size, PageToken = token }, options));
}
