namespace SwapSolver.Console.Arguments;

/// <summary>Ids of ingredients as they are typed, bare or as resource names.</summary>
internal static class IngredientId
{
    private const string Collection = "ingredients/";

    /// <summary>The resource name, <c>ingredients/{id}</c>.</summary>
    public static string ToResourceName(string text)
    {
        var id = text.Trim();
        return id.StartsWith(Collection, StringComparison.Ordinal) ? id : Collection + id;
    }

    /// <summary>The bare id of a resource name.</summary>
    public static string OfResourceName(string name) => name[Collection.Length..];
}
