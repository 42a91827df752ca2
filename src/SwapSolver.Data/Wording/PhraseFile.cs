using System.Collections.Immutable;
using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Data.Wording;

/// <summary>Reads the words of <c>data/wording/</c>.</summary>
public static class PhraseFile
{
    /// <summary>The sentences of answers and cautions.</summary>
    /// <exception cref="DataFaultException">The file cannot be believed.</exception>
    public static Phrases Read(DataFolder folder) => Read(folder, "wording/answers.json");

    /// <summary>The words of cards and labels.</summary>
    /// <exception cref="DataFaultException">The file cannot be believed.</exception>
    public static Phrases ReadCard(DataFolder folder) => Read(folder, "wording/card.json");

    private static Phrases Read(DataFolder folder, string name)
    {
        var root = folder.Read(name).Only("about", "phrases");
        return new Phrases(root.Get("phrases").Properties.ToImmutableDictionary(
            pair => pair.Key, pair => pair.Value.Text, StringComparer.Ordinal));
    }
}
