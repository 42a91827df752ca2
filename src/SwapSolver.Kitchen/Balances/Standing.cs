namespace SwapSolver.Kitchen.Balances;

/// <summary>Where a level stands against a band.</summary>
public enum Standing
{
    /// <summary>Within, ends included.</summary>
    Inside,

    /// <summary>Too low.</summary>
    Below,

    /// <summary>Too high.</summary>
    Above,
}
