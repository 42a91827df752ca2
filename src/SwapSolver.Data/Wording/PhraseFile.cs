using System.Collections.Immutable;
using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Data.Wording;

/// <summary>Reads <c>data/wording/answers.json</c>.</summary>
public static class PhraseFile
{
    /// <summary>The sentences of answers and cautions.</summary>
    /// <exception cref="DataFaultException">The file cannot be believed.</exception>
    public static Phrases Read(DataFolder folder)
    {
        var root = folder.Read("wording/answers.json").Only("about", "phrases");
        return new Phrases(root.Get("phrases").Properties.ToImmutableDictionary(
            pair => pair.Key, pair => pair.Value.Text, StringComparer.Ordinal));
    }
}
