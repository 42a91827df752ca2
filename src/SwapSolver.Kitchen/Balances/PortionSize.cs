namespace SwapSolver.Kitchen.Balances;

/// <summary>How much of a loaf an amount is told of.</summary>
public enum PortionSize
{
    /// <summary>One slice or piece.</summary>
    Slice,

    /// <summary>The whole loaf.</summary>
    Loaf,
}
