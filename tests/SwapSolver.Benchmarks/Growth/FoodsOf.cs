using System.Collections.Immutable;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Loaves;

namespace SwapSolver.Benchmarks.Growth;

/// <summary>Foods of the two kinds that a kitchen can put in by thousands.</summary>
internal static class FoodsOf
{
    /// <summary>Composition and nothing else: used where they are named.</summary>
    public const string Table = "a table's, nothing said";

    /// <summary>Each says what it is like, so each may be offered: the harder case.</summary>
    public const string Like = "each like one of ours";

    /// <summary>So many foods of a kind.</summary>
    public static ImmutableArray<StatedFood> Kind(string kind, int count) =>
        kind == Table ? ManyFoods.OfTable(count) : ManyFoods.LikeOurs(count);
}
