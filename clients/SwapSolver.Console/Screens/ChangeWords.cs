using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>Changes in one breath, for the cell of a table.</summary>
internal static class ChangeWords
{
    /// <summary>The changes, as 'walnut meal 180 to 90 g, no butter'; what nothing changes says so.</summary>
    public static string Of(IReadOnlyCollection<Change> changes) =>
        changes.Count == 0 ? "nothing" : string.Join(", ", changes.Select(Of));

    private static string Of(Change change)
    {
        var name = change.DisplayName.Length > 0 ? change.DisplayName : IngredientName.Of(change.Ingredient);
        return (change.BeforeGrams, change.AfterGrams) switch
        {
            (_, 0) => $"no {name}",
            (0, var after) => $"{Amount.Grams(after)} g {name}",
            var (before, after) => $"{name} {Amount.Grams(before)} to {Amount.Grams(after)} g",
        };
    }
}
