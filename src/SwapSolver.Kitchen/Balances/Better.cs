namespace SwapSolver.Kitchen.Balances;

/// <summary>Which way of a reading is wished for.</summary>
public enum Better
{
    /// <summary>Neither by itself: it hangs on the loaf.</summary>
    Neither,

    /// <summary>The less of it the better, as net carbs and price.</summary>
    Lower,

    /// <summary>The more of it the better, as protein and fibre.</summary>
    Higher,
}
