namespace SwapSolver.Forecasts;

/// <summary>Where a loaf is.</summary>
public enum BakeStage
{
    /// <summary>In the oven.</summary>
    Oven,

    /// <summary>On the rack, out of its tin.</summary>
    Rack,
}
