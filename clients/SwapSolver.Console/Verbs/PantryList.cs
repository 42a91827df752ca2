using System.CommandLine;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Screens;
using SwapSolver.V1;

namespace SwapSolver.Console.Verbs;

/// <summary><c>pantry list</c>: the ingredients, by id.</summary>
internal static class PantryList
{
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

    private static ServiceCall<ListIngredientsResponse> Ask(string role) => (service, options) => AllPages.OfAsync(
        token => new IngredientService.IngredientServiceClient(service).ListIngredientsAsync(
            new ListIngredientsRequest { Role = role, PageSize = AllPages.Size, PageToken = token }, options));
}
