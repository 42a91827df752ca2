using System.CommandLine;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Screens;
using SwapSolver.V1;

namespace SwapSolver.Console.Verbs;

/// <summary><c>formula list</c>: the stored formulas, by id.</summary>
internal static class FormulaList
{
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
                    PageSize = AllPages.Size,
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

    private static ServiceCall<ListFormulasResponse> Ask(ListFormulasRequest request) => (service, options) => AllPages.OfAsync(token =>
    {
        request.PageToken = token;
        return new FormulaService.FormulaServiceClient(service).ListFormulasAsync(request, options);
    });
}
