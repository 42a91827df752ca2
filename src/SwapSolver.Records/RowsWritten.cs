namespace SwapSolver.Records;

/// <summary>What a writing of foods or household weights did.</summary>
/// <param name="Added">How many were new.</param>
/// <param name="Changed">How many stood there in other words.</param>
/// <param name="Same">How many stood there already, to the digit.</param>
public sealed record RowsWritten(int Added, int Changed, int Same)
{
    /// <summary>What two writings did.</summary>
    public static RowsWritten operator +(RowsWritten one, RowsWritten other) =>
        new(one.Added + other.Added, one.Changed + other.Changed, one.Same + other.Same);
}
