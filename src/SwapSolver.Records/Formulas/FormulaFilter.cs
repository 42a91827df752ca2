using System.Collections.Immutable;

namespace SwapSolver.Records.Formulas;

/// <summary>Which formulas are meant.</summary>
/// <param name="Words">All of these stand in the name, in any case.</param>
/// <param name="IsPublished">Only published ones, or only others; null for both.</param>
/// <param name="WithPutAway">Those that were put away too.</param>
public sealed record FormulaFilter(ImmutableArray<string> Words, bool? IsPublished, bool WithPutAway)
{
    /// <summary>Every formula that is in use.</summary>
    public static readonly FormulaFilter InUse = new([], null, false);
}
