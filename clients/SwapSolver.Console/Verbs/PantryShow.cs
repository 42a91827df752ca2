using System.CommandLine;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Screens;
using SwapSolver.V1;

namespace SwapSolver.Console.Verbs;

/// <summary><c>pantry show</c>: one ingredient with every figure, range and source.</summary>
internal static class PantryShow
{
    /// <summary>The verb.</summary>
    public static Command Create(Errand errand)
    {
        var id = new Argument<string>("ID") { Description = "The ingredient, as hazelnut-flour." };
        var verb = new VerbCommand("show", "One ingredient with every figure, range and source.", "swapsolver pantry show hazelnut-flour") { id };
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<Ingredient>(
                _ => Task.FromResult<Checked<ServiceCall<Ingredient>>>(Ask(parse.GetRequiredValue(id))),
                PantryItemScreen.Show,
                _ => ExitCode.Answer),
            cancel));
        return verb;
    }

    private static ServiceCall<Ingredient> Ask(string id)
    {
        var request = new GetIngredientRequest { Name = IngredientId.ToResourceName(id) };
        return async (service, options) => await new IngredientService.IngredientServiceClient(service).GetIngredientAsync(request, options);
    }
}
