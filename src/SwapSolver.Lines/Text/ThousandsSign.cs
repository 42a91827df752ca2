namespace SwapSolver.Lines.Text;

/// <summary>A number that can be read in two ways, as by a sign before exactly three digits, which can part thousands or decimals.</summary>
internal enum ThousandsSign
{
    /// <summary>None, or one that can only be a decimal sign.</summary>
    None,

    /// <summary>A comma: thousands to some, decimals to others.</summary>
    Comma,

    /// <summary>A point: decimals to some, thousands to others.</summary>
    Point,

    /// <summary>A fraction whose space may be lost, as 11/2 for 1 1/2.</summary>
    LostSpace,
}
