namespace SwapSolver.Kitchen.Ingredients;

/// <summary>How a figure is known.</summary>
public enum Mark
{
    /// <summary>Seen in the source that stands beside it.</summary>
    Published,

    /// <summary>Worked out from published figures.</summary>
    Calculated,

    /// <summary>A habit of the trade; no source.</summary>
    Practice,

    /// <summary>From memory; the source named is where it is believed to stand.</summary>
    Memory,
}

/// <summary>One figure of an ingredient with where it is from.</summary>
/// <param name="Range">The values, in the unit of the fact.</param>
/// <param name="Source">Key of the source of the typical value in <c>data/sources.json</c>.</param>
/// <param name="Mark">How the typical value is known.</param>
/// <param name="RangeSource">Key of the source of low and high; null where it is <paramref name="Source"/>.</param>
public sealed record Figure(Range Range, string Source, Mark Mark, string? RangeSource);
