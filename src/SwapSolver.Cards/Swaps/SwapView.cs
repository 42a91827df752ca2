using System.Collections.Immutable;

namespace SwapSolver.Cards.Swaps;

/// <summary>A table of swaps in words only, as templates read it.</summary>
internal sealed record SwapTableView(
    string Title, string About, string Part, string None, ImmutableDictionary<string, string> Heads, ImmutableArray<SwapRow> Rows);

/// <summary>One swap in words.</summary>
/// <param name="Instead">What goes out.</param>
/// <param name="Use">What comes in, and how much of it.</param>
/// <param name="Change">What else changes.</param>
/// <param name="Mind">Its cautions.</param>
internal sealed record SwapRow(string Instead, string Use, string Change, string Mind);
