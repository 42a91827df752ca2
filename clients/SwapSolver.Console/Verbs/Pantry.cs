using System.CommandLine;
using SwapSolver.Console.Asking;

namespace SwapSolver.Console.Verbs;

/// <summary><c>pantry</c>: what the service knows of ingredients, and what this kitchen knows better.</summary>
internal static class Pantry
{
    /// <summary>The verb with its own verbs.</summary>
    public static Command Create(Errand errand) =>
        new("pantry", "The ingredients and their facts.")
        {
            PantryList.Create(errand),
            PantryShow.Create(errand),
            PantryAdd.Create(errand),
            PantryImport.Create(errand),
            PantryMeasure.Create(errand),
            PantryRemove.Create(errand),
        };
}
