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
