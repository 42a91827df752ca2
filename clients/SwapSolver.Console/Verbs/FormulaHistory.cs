using System.CommandLine;
using Grpc.Core;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Screens;
using SwapSolver.V1;

namespace SwapSolver.Console.Verbs;

/// <summary><c>formula history</c>: the revisions of a formula.</summary>
internal static class FormulaHistory
{
    private const int PageSize = 1000;

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

    private static ServiceCall<ListRevisionsResponse> Ask(string name) => (service, options) => ListAsync(service, name, options);

    private static async Task<ListRevisionsResponse> ListAsync(CallInvoker service, string name, CallOptions options)
    {
        var client = new FormulaService.FormulaServiceClient(service);
        var request = new ListRevisionsRequest { Name = name, PageSize = PageSize };
        var all = new ListRevisionsResponse();
        do
        {
            var page = await client.ListRevisionsAsync(request, options);
            all.Revisions.AddRange(page.Revisions);
            request.PageToken = page.NextPageToken;
        }
        while (request.PageToken.Length > 0);
        return all;
    }
}
