using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>What differs from the reference formula: out, in, more, less.</summary>
internal static class ChangesTable
{
    /// <summary>Shows the changes, or that there are none.</summary>
    public static void Show(Screen screen, IReadOnlyCollection<Change> changes)
    {
        screen.Part("Changes");
        if (changes.Count == 0)
        {
            screen.Item("Nothing changes.");
            return;
        }

        if (screen.IsNarrow)
        {
            Sentences(screen, changes);
            return;
        }

        var table = new PlainTable().Marks("").Words("what").Figures("before").Figures("after").Words("why");
        foreach (var change in changes)
        {
            table.Row(Direction(change), What(change), Before(change), After(change), change.Reason);
        }

        screen.Table(table);
    }

    private static void Sentences(Screen screen, IEnumerable<Change> changes)
    {
        foreach (var change in changes)
        {
            screen.Item($"{Direction(change)}: {What(change)}, {Before(change)} to {After(change)}: {change.Reason}");
        }
    }

    private static string What(Change change) =>
        change.DisplayName.Length > 0 ? change.DisplayName : IngredientName.Of(change.Ingredient);

    private static string Before(Change change) =>
        Amount.Of(change.Ingredient, change.BeforeGrams, change.HasBeforeCount ? change.BeforeCount : null);

    private static string After(Change change) =>
        Amount.Of(change.Ingredient, change.AfterGrams, change.HasAfterCount ? change.AfterCount : null);

    private static string Direction(Change change) => (change.BeforeGrams, change.AfterGrams) switch
    {
        (0, 0) => "",
        (_, 0) => "out",
        (0, _) => "in",
        var (before, after) when after > before => "more",
        var (before, after) when after < before => "less",
        _ => "same",
    };
}
