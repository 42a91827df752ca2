using System.CommandLine;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.V1;

namespace SwapSolver.Console.Verbs;

/// <summary><c>pantry remove</c>: forgets what this kitchen wrote down of an ingredient.</summary>
internal static class PantryRemove
{
    /// <summary>The verb.</summary>
    public static Command Create(Errand errand)
    {
        var id = new Argument<string>("ID") { Description = "The ingredient, as coconut-flour." };
        var verb = new VerbCommand(
            "remove", "Forgets what this kitchen wrote down of an ingredient; a shipped one has its own figures again.", "swapsolver pantry remove coconut-flour") { id };
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<DeleteIngredientResponse>(
                _ => Task.FromResult<Checked<ServiceCall<DeleteIngredientResponse>>>(Ask(parse.GetRequiredValue(id))),
                (screen, response) => screen.Sentence(response.Ingredient is null
                    ? "Removed."
                    : $"What was measured is forgotten; {response.Ingredient.DisplayName} has its shipped figures again."),
                _ => ExitCode.Answer),
            cancel));
        return verb;
    }

    private static ServiceCall<DeleteIngredientResponse> Ask(string id)
    {
        var request = new DeleteIngredientRequest { Name = IngredientId.ToResourceName(id) };
        return async (service, options) => await new IngredientService.IngredientServiceClient(service).DeleteIngredientAsync(request, options);
    }
}
