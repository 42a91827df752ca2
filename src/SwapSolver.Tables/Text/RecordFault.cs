namespace SwapSolver.Tables.Text;

/// <summary>Why a row cannot be cut into fields.</summary>
internal enum RecordFault
{
    /// <summary>A quote is opened and not closed, or text follows a closing quote.</summary>
    Quotes,

    /// <summary>The row is longer than any food needs.</summary>
    TooLong,
}
