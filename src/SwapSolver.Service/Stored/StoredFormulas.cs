using Google.Protobuf;

namespace SwapSolver.Service.Stored;

/// <summary>The demo formulas of the fictional Larkfield Bakehouse, by resource name. They are read only.</summary>
internal sealed class StoredFormulas
{
    private readonly Dictionary<string, V1.Formula> byName;

    private StoredFormulas(Dictionary<string, V1.Formula> byName) => this.byName = byName;

    /// <summary>Names that are known.</summary>
    public IEnumerable<string> Names => byName.Keys;

    /// <summary>Reads <c>formulas/</c> below the data folder.</summary>
    public static StoredFormulas Read(string dataPath) => new(
        Directory.EnumerateFiles(Path.Combine(dataPath, "formulas"), "*.json").ToDictionary(
            path => $"formulas/{Path.GetFileNameWithoutExtension(path)}",
            path => JsonParser.Default.Parse<V1.Formula>(File.ReadAllText(path)),
            StringComparer.Ordinal));

    /// <summary>The formula of a name, or null.</summary>
    public V1.Formula? Find(string name) => byName.GetValueOrDefault(name);
}
