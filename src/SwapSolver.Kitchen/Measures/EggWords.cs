using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Measures;

/// <summary>Finds the size of eggs in the words of a line.</summary>
/// <param name="classes">The classes of eggs.</param>
/// <param name="system">Whose measures are meant; null where that is not said.</param>
public sealed class EggWords(EggClasses classes, MeasureSystem? system)
{
    /// <summary>The size, with what was assumed of it.</summary>
    public (EggSize Size, ImmutableArray<string> Assumed) SizeOf(ImmutableArray<string> words)
    {
        var said = words.Contains("eu") || words.Contains("uk") ? EggRule.Eu : words.Contains("us") ? EggRule.Us : (EggRule?)null;
        var text = $" {string.Join(' ', words)} ";
        var found = classes.All
            .SelectMany(one => one.Names.Select(name => (Class: one, Name: name)))
            .Where(pair => text.Contains($" {pair.Name} ", StringComparison.Ordinal))
            .Where(pair => said is null || pair.Class.Rule == said)
            .ToList();
        var rule = said ?? (system is MeasureSystem.Metric or MeasureSystem.UkImperial ? EggRule.Eu : EggRule.Us);
        if (found.Count == 0)
        {
            var usual = rule == EggRule.Us ? EggSize.LargeUs : EggSize.MediumEu;
            return (usual, [rule == EggRule.Us ? "eggs of US size large" : "eggs of EU size M"]);
        }

        // 'extra large' holds 'large' too: the longer word is meant; then the rule of the kitchen, where it has such a word.
        var (size, _) = found.OrderByDescending(pair => pair.Name.Length).ThenBy(pair => pair.Class.Rule == rule ? 0 : 1).First();
        return (size.Size, said is null ? [size.Rule == EggRule.Us ? "a US size of egg" : "an EU size of egg"] : []);
    }
}
