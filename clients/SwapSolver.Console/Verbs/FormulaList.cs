using System.CommandLine;
using Grpc.Core;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Screens;
using SwapSolver.V1;

namespace SwapSolver.Console.Verbs;

/// <summary><c>formula list</c>: the stored formulas, by id.</summary>
internal static class FormulaList
{
    private const int PageSize = 1000;

    /// <summary>The verb.</summary>
    public static Command Create(Errand errand)
    {
        var words = new Option<string[]>("--named") { Description = "Only formulas whose name holds this word. May be given again.", HelpName = "WORD" };
        var published = new Option<bool>("--published") { Description = "Only formulas that everybody may read." };
        var removed = new Option<bool>("--removed") { Description = "Those that were put away too." };
        var verb = new VerbCommand("list", "The stored formulas, by id; shipped ones too.", "swapsolver formula list --named loaf") { words, published, removed };
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<ListFormulasResponse>(
                _ => Task.FromResult<Checked<ServiceCall<ListFormulasResponse>>>(Ask(new ListFormulasRequest
                {
                    PageSize = PageSize,
                    Filter = string.Join(" AND ", Terms(parse.GetValue(words) ?? [], parse.GetValue(published))),
                    ShowDeleted = parse.GetValue(removed),
                })),
                FormulaListScreen.Show,
                _ => ExitCode.Answer),
            cancel));
        return verb;
    }

    private static IEnumerable<string> Terms(string[] words, bool published) =>
        words.Select(word => $"displayName:\"{word.Replace("\"", string.Empty, StringComparison.Ordinal)}\"").Concat(published ? ["published=true"] : []);

    private static ServiceCall<ListFormulasResponse> Ask(ListFormulasRequest request) => (service, options) => ListAsync(service, request, options);

    // All pages as one, so that neither a script nor a person sees where they were cut.
    private static async Task<ListFormulasResponse> ListAsync(CallInvoker service, ListFormulasRequest request, CallOptions options)
    {
        var client = new FormulaService.FormulaServiceClient(service);
        var all = new ListFormulasResponse();
        do
        {
            var page = await client.ListFormulasAsync(request, options);
            all.Formulas.AddRange(page.Formulas);
            request.PageToken = page.NextPageToken;
        }
        while (request.PageToken.Length > 0);
        return all;
    }
}
