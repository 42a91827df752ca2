namespace SwapSolver.Forecasts;

/// <summary>Which side of a loaf a piece of its skin lies on.</summary>
internal enum Face
{
    /// <summary>Open to the oven.</summary>
    Top,

    /// <summary>Against the wall of the tin, or open where there is none.</summary>
    Side,

    /// <summary>On the bottom of the tin, or on the tray.</summary>
    Under,
}
