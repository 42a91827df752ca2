namespace SwapSolver.Solving.Answers;

/// <summary>When the gas comes, beside when it came before.</summary>
public enum GasTiming
{
    /// <summary>About as before.</summary>
    AsFast,

    /// <summary>More of it while mixing.</summary>
    Faster,

    /// <summary>Less of it while mixing.</summary>
    Slower,

    /// <summary>Next to all of it in the oven, and it was not so before.</summary>
    OvenOnly,
}
