namespace SwapSolver.Console.Tests.Running;

/// <summary>A formula file of a test's own, gone after it.</summary>
internal sealed class FormulaFile : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("swapsolver-tests-");

    public FormulaFile(string text)
    {
        Location = Path.Combine(folder.FullName, "loaf.json");
        File.WriteAllText(Location, text);
    }

    public string Location { get; }

    /// <summary>A loaf that is good but for one thing.</summary>
    public static FormulaFile Of(string line, string rest = "") => new(
        $$"""{ "displayName": "Test loaf", "lines": [{ "ingredient": "ingredients/almond-meal", "grams": 200 }, { {{line}} }], "slices": 12{{rest}} }""");

    public void Dispose() => folder.Delete(recursive: true);
}
