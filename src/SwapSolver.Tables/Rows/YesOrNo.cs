using SwapSolver.Tables.Columns;

namespace SwapSolver.Tables.Rows;

/// <summary>Reads a field that says yes or no.</summary>
internal static class YesOrNo
{
    /// <summary>What a column says; null where it says nothing. The result is false where it cannot be read; the problem
    /// is then added.</summary>
    public static bool TryRead(TableRow row, string column, out bool? said)
    {
        var text = row[column];
        said = text.ToLowerInvariant() switch
        {
            "yes" => true,
            "no" => false,
            _ => null,
        };
        if (said is not null || text.Length == 0)
        {
            return true;
        }

        row.Refuse(column, "is neither yes nor no", "write yes or no, or leave the field empty where nobody says");
        return false;
    }
}
