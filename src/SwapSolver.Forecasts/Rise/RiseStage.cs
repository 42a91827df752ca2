namespace SwapSolver.Forecasts;

/// <summary>Where a batter is.</summary>
public enum RiseStage
{
    /// <summary>In the bowl, being mixed.</summary>
    Mixing,

    /// <summary>Mixed, and not yet in the oven.</summary>
    Bench,

    /// <summary>In the oven.</summary>
    Oven,
}
