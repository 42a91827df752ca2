using System.Text.RegularExpressions;
using DbUp.Engine;

namespace SwapSolver.Records.Storage;

/// <summary>The types of our one set of scripts in the words of PostgreSQL, so that both engines hold and sort the same: text by
/// its code points, whole numbers of 64 bits, and doubles (its own REAL has half their digits).</summary>
internal sealed partial class PostgresTypes : IScriptPreprocessor
{
    /// <inheritdoc/>
    public string Process(string contents) =>
        Real().Replace(Integer().Replace(Text().Replace(Comment().Replace(contents, string.Empty), "TEXT COLLATE \"C\""), "BIGINT"), "DOUBLE PRECISION");

    [GeneratedRegex(@"--[^\n]*")]
    private static partial Regex Comment();

    [GeneratedRegex(@"\bTEXT\b")]
    private static partial Regex Text();

    [GeneratedRegex(@"\bINTEGER\b")]
    private static partial Regex Integer();

    [GeneratedRegex(@"\bREAL\b")]
    private static partial Regex Real();
}
