namespace SwapSolver.Forecasts;

/// <summary>Whether a batter fits its tin.</summary>
public enum FillStanding
{
    /// <summary>It fits.</summary>
    Fits,

    /// <summary>It may rise over the rim.</summary>
    MayOverflow,

    /// <summary>It will rise over the rim.</summary>
    Overflows,
}
