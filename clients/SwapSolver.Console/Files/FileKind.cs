namespace SwapSolver.Console.Files;

/// <summary>A kind of file that a caller names.</summary>
/// <param name="Name">What it holds, in one word.</param>
/// <param name="LargestBytes">Largest that is read [bytes].</param>
/// <param name="WayOut">What to give in place of a path that leads nowhere.</param>
internal sealed record FileKind(string Name, int LargestBytes, string WayOut)
{
    private const int Mebibyte = 1 << 20;

    /// <summary>A formula; the 200 lines that one may have need about 20 kB.</summary>
    public static readonly FileKind Formula = new(
        "formula", Mebibyte, "Give the path of a formula file, - for standard input, or a stored formula as formulas/ID.");

    /// <summary>Lines of text.</summary>
    public static readonly FileKind Lines = new("text", Mebibyte, "Give the path of a text file, or - for standard input.");

    /// <summary>The panel of a packet.</summary>
    public static readonly FileKind Panel = new("panel", Mebibyte, "Give the path of a panel file, or - for standard input.");

    /// <summary>A table of foods; that of the USDA has some 8,000 rows in 3 MB.</summary>
    public static readonly FileKind Table = new("table", 64 * Mebibyte, "Give the path of a table, or - for standard input.");

    /// <summary>A backup or export of everything; a thousand formulas with ten revisions each need about 10 MB.</summary>
    public static readonly FileKind Backup = new("backup", 1024 * Mebibyte, "Give the path of a file that records backup or records export wrote.");
}
