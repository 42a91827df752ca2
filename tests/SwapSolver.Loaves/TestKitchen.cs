using SwapSolver.Data.Balances;
using SwapSolver.Data.Files;
using SwapSolver.Data.Ingredients;
using SwapSolver.Data.Practice;
using SwapSolver.Data.Wording;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Solving;

namespace SwapSolver.Loaves;

/// <summary>The bakehouse of the shipped data, opened once for all tests of a run.</summary>
public static class TestKitchen
{
    private static readonly Lazy<Bakehouse> Opened = new(Open);

    /// <summary>The folder of the shipped data.</summary>
    public static DataFolder Folder { get; } = new(Path.Combine(AppContext.BaseDirectory, "data"));

    /// <summary>Facts, rules and words as they are shipped.</summary>
    public static Bakehouse Bakehouse => Opened.Value;

    /// <summary>An ingredient that must be there.</summary>
    public static Ingredient Ingredient(string id) =>
        Bakehouse.Pantry.TryGet(id, out var found) ? found : throw new ArgumentException($"no ingredient '{id}'", nameof(id));

    private static Bakehouse Open()
    {
        var sources = SourceKeys.Read(Folder);
        var balances = BalanceFiles.Read(Folder, sources);
        return new Bakehouse(
            PantryFiles.Read(Folder, sources), balances, PhraseFile.Read(Folder), PracticeFile.Read(Folder, sources), GoalFile.Read(Folder, sources, balances));
    }
}
