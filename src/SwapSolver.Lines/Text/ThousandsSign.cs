namespace SwapSolver.Lines.Text;

/// <summary>A sign before exactly three digits, which can part thousands or decimals.</summary>
internal enum ThousandsSign
{
    /// <summary>None, or one that can only be a decimal sign.</summary>
    None,

    /// <summary>A comma: thousands to some, decimals to others.</summary>
    Comma,

    /// <summary>A point: decimals to some, thousands to others.</summary>
    Point,
}
