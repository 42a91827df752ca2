using System.Collections.Immutable;
using SwapSolver.Data.Files;

namespace SwapSolver.Data.Measures;

/// <summary>Refuses a name that stands twice: the second would never be found.</summary>
internal sealed class NamesOnce
{
    private readonly HashSet<string> seen = new(StringComparer.Ordinal);

    /// <summary>The names of a list, each of them new.</summary>
    public ImmutableArray<string> Read(JsonPlace list) => [.. list.Items.Select(One)];

    private string One(JsonPlace place) => seen.Add(place.Text) ? place.Text : throw place.Fault($"'{place.Text}' stands twice; keep one");
}
