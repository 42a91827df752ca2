using SwapSolver.Data.Acids;
using SwapSolver.Data.Balances;
using SwapSolver.Data.Files;
using SwapSolver.Data.Foods;
using SwapSolver.Data.Forecasts;
using SwapSolver.Data.Ingredients;
using SwapSolver.Data.Labels;
using SwapSolver.Data.Measures;
using SwapSolver.Data.Panels;
using SwapSolver.Data.Practice;
using SwapSolver.Data.Wording;
using SwapSolver.Kitchen.Acids;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Labels;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Panels;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Wording;
using SwapSolver.Loaves;

namespace SwapSolver.Data.Tests;

/// <summary>A copy of the shipped data that a test may spoil; it is gone after the test.</summary>
internal sealed class SpoiltFolder : IDisposable
{
    private readonly string path = Directory.CreateTempSubdirectory("swapsolver-data-").FullName;

    public SpoiltFolder()
    {
        foreach (var file in Directory.EnumerateFiles(TestKitchen.Folder.Path, "*.json", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(path, Path.GetRelativePath(TestKitchen.Folder.Path, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }

    private DataFolder Folder => new(path);

    /// <summary>Writes one text in place of another; the first must stand in the file once.</summary>
    public string Replace(string file, string written, string spoilt)
    {
        var text = File.ReadAllText(Path.Combine(path, file));
        Assert.Equal(2, text.Split(written).Length);
        return Rewrite(file, whole => whole.Replace(written, spoilt, StringComparison.Ordinal));
    }

    public string Rewrite(string file, Func<string, string> change)
    {
        var text = change(File.ReadAllText(Path.Combine(path, file)));
        File.WriteAllText(Path.Combine(path, file), text);
        return text;
    }

    public void Remove(string file) => File.Delete(Path.Combine(path, file));

    public Pantry ReadPantry() => PantryFiles.Read(Folder, SourceKeys.Read(Folder));

    public MeasureTables ReadMeasures() => MeasureFiles.Read(Folder, SourceKeys.Read(Folder), ReadPantry());

    public FoodRules ReadFoodRules() => FoodRulesFile.Read(Folder, SourceKeys.Read(Folder));

    public TableRules ReadTableRules() => TableRulesFile.Read(Folder, SourceKeys.Read(Folder));

    public BalanceList ReadBalances() => BalanceFiles.Read(Folder, SourceKeys.Read(Folder));

    public GoalList ReadGoals() => GoalFile.Read(Folder, SourceKeys.Read(Folder), ReadBalances());

    public LeaveningChemistry ReadAcids() => AcidFiles.Read(Folder, SourceKeys.Read(Folder), ReadPantry());

    public AcidityPractice ReadAcidity() => ForecastFiles.ReadAcidity(Folder, SourceKeys.Read(Folder));

    public RisePractice ReadRise() => ForecastFiles.ReadRise(Folder, SourceKeys.Read(Folder));

    public BakePractice ReadBake() => BakeFile.Read(Folder, SourceKeys.Read(Folder));

    public PanelRules ReadPanelRules() => PanelRulesFile.Read(Folder, SourceKeys.Read(Folder));

    public LabelLaws ReadLaws() => LawFiles.Read(Folder, SourceKeys.Read(Folder), ReadPanelRules());

    public Locales ReadLocales() => LocaleFile.Read(Folder, SourceKeys.Read(Folder), ReadLaws());

    public OvenDials ReadDials() => OvenDialFile.Read(Folder, SourceKeys.Read(Folder));

    public QuestionWords ReadQuestions() => QuestionFiles.Read(Folder, SourceKeys.Read(Folder));

    public Phrases ReadPhrases() => PhraseFile.Read(Folder);

    public void Dispose() => Directory.Delete(path, recursive: true);
}
