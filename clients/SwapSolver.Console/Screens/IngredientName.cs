namespace SwapSolver.Console.Screens;

/// <summary>Ingredients and other ids in words.</summary>
internal static class IngredientName
{
    /// <summary>A resource name or an id in words: <c>ingredients/hazelnut-flour</c> is 'hazelnut flour'.</summary>
    public static string Of(string resourceName) => Id(resourceName).Replace('-', ' ');

    /// <summary>The id that a resource name ends with.</summary>
    public static string Id(string resourceName) => resourceName[(resourceName.LastIndexOf('/') + 1)..];

    /// <summary>Several, with commas between.</summary>
    public static string List(IEnumerable<string> resourceNames) => string.Join(", ", resourceNames.Select(Of));
}
