using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Data.Ingredients;

/// <summary>Reads <c>data/ingredients/</c>: one file an ingredient.</summary>
public static class PantryFiles
{
    /// <summary>The pantry of a data folder.</summary>
    /// <exception cref="DataFaultException">A file cannot be believed.</exception>
    public static Pantry Read(DataFolder folder, SourceKeys sources)
    {
        var vocabulary = Vocabulary.Read(folder, sources);
        var reader = new IngredientFile(sources, vocabulary);
        // The file's name is the id and a folder holds a name once, so ids are unique.
        var ingredients = folder.JsonFilesOf("ingredients")
            .Select(name => reader.Read(folder.Read(name), Path.GetFileNameWithoutExtension(name)));
        return new Pantry(ingredients, vocabulary.Allergens, vocabulary.Groups);
    }
}
