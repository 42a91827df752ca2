namespace SwapSolver.Kitchen.Balances;

/// <summary>Which side of a band a row holds.</summary>
public enum Side
{
    /// <summary>The floor: the reading is not below the low end.</summary>
    Low,

    /// <summary>The ceiling: the reading is not above the high end.</summary>
    High,
}
