using Google.Protobuf;
using SwapSolver.Data.Files;

namespace SwapSolver.Service.Stored;

/// <summary>The demo formulas of the fictional Larkfield Bakehouse, by resource name. They are read only, and each when it is first asked
/// for: what reads them is not small, and most who ask bring a formula of their own.</summary>
internal sealed class StoredFormulas
{
    private readonly Dictionary<string, Lazy<V1.Formula>> byName;

    private StoredFormulas(Dictionary<string, Lazy<V1.Formula>> byName) => this.byName = byName;

    /// <summary>Names that are known.</summary>
    public IEnumerable<string> Names => byName.Keys;

    /// <summary>Looks what stands in <c>formulas/</c> below the data folder.</summary>
    /// <exception cref="DataFaultException">There is no such folder.</exception>
    public static StoredFormulas In(DataFolder folder) => new(
        folder.JsonFilesOf("formulas").ToDictionary(
            name => Path.ChangeExtension(name, null),
            name => new Lazy<V1.Formula>(() => Read(Path.Combine(folder.Path, name))),
            StringComparer.Ordinal));

    /// <summary>The formula of a name, or null.</summary>
    /// <exception cref="InvalidDataException">Its file is no formula.</exception>
    public V1.Formula? Find(string name) => byName.GetValueOrDefault(name)?.Value;

    private static V1.Formula Read(string path)
    {
        try
        {
            return JsonParser.Default.Parse<V1.Formula>(File.ReadAllText(path));
        }
        catch (Exception fault) when (fault is InvalidJsonException or InvalidProtocolBufferException)
        {
            throw new InvalidDataException($"{path}: {fault.Message}", fault);
        }
    }
}
