using System.CommandLine;
using Grpc.Core;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Screens;
using SwapSolver.V1;

namespace SwapSolver.Console.Verbs;

/// <summary><c>pantry list</c>: the ingredients, by id.</summary>
internal static class PantryList
{
    private const int PageSize = 1000;

    /// <summary>The verb.</summary>
    public static Command Create(Errand errand)
    {
        var role = new Option<string>("--role")
        {
            Description = "Only ingredients of this role, as flour, gel, egg, liquid, fat, acid, base or sweetener.",
            HelpName = "ROLE",
        };
        var verb = new VerbCommand("list", "The ingredients, by id.", "swapsolver pantry list --role flour") { role };
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<ListIngredientsResponse>(
                _ => Task.FromResult<Checked<ServiceCall<ListIngredientsResponse>>>(Ask(parse.GetValue(role) ?? "")),
                PantryListScreen.Show,
                _ => ExitCode.Answer),
            cancel));
        return verb;
    }

    private static ServiceCall<ListIngredientsResponse> Ask(string role) => (service, options) => ListAsync(service, role, options);

    // All pages as one, so that neither a script nor a person sees where they were cut.
    private static async Task<ListIngredientsResponse> ListAsync(CallInvoker service, string role, CallOptions options)
    {
        var client = new IngredientService.IngredientServiceClient(service);
        var request = new ListIngredientsRequest { PageSize = PageSize, Role = role };
        var all = new ListIngredientsResponse();
        do
        {
            var page = await client.ListIngredientsAsync(request, options);
            all.Ingredients.AddRange(page.Ingredients);
            request.PageToken = page.NextPageToken;
        }
        while (request.PageToken.Length > 0);
        return all;
    }
}
