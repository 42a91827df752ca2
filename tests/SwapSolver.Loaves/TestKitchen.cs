using SwapSolver.Data.Acids;
using SwapSolver.Data.Balances;
using SwapSolver.Data.Files;
using SwapSolver.Data.Forecasts;
using SwapSolver.Data.Ingredients;
using SwapSolver.Data.Practice;
using SwapSolver.Data.Wording;
using SwapSolver.Forecasts;
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
        var pantry = PantryFiles.Read(Folder, sources);
        var balances = BalanceFiles.Read(Folder, sources);
        var phrases = PhraseFile.Read(Folder);
        var acidity = new Acidity(AcidFiles.Read(Folder, sources, pantry), ForecastFiles.ReadAcidity(Folder, sources));
        return new Bakehouse(
            pantry,
            balances,
            phrases,
            PracticeFile.Read(Folder, sources),
            new Rise(acidity, ForecastFiles.ReadRise(Folder, sources), phrases),
            new Bake(BakeFile.Read(Folder, sources), phrases),
            GoalFile.Read(Folder, sources, balances));
    }
}
