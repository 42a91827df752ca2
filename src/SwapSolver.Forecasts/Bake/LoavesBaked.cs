using BitFaster.Caching.Lru;

namespace SwapSolver.Forecasts;

/// <summary>
/// The bakes of loaves asked about lately. A kitchen's loaves are few and its readers many: the loaf that all of them ask
/// about is baked once, not once for each.
/// </summary>
internal sealed class LoavesBaked
{
    /// <summary>Loaves that are kept: some tens of kilobytes each.</summary>
    internal const int Most = 256;

    private readonly ConcurrentLru<LoafToBake, BakeCase> kept = new(Most);

    /// <summary>How a loaf bakes: as found before, else as baked now.</summary>
    /// <param name="loaf">The loaf.</param>
    /// <param name="bake">Bakes it.</param>
    public BakeCase Of(LoafToBake loaf, Func<BakeCase> bake) =>
        // One that was cooled too was baked before that.
        !loaf.ToSlice && kept.TryGet(loaf with { ToSlice = true }, out var cooled) ? cooled : kept.GetOrAdd(loaf, static (_, run) => run(), bake);
}
