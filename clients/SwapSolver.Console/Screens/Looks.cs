using Spectre.Console;

namespace SwapSolver.Console.Screens;

/// <summary>Weight and colour. Each only repeats what a word beside it says.</summary>
internal static class Looks
{
    /// <summary>What opens an answer.</summary>
    public static readonly Style Heading = new(decoration: Decoration.Bold | Decoration.Underline);

    /// <summary>What opens a part.</summary>
    public static readonly Style Part = new(decoration: Decoration.Bold);

    /// <summary>Heads of columns.</summary>
    public static readonly Style ColumnHead = new(decoration: Decoration.Dim);

    /// <summary>What must not be overlooked.</summary>
    public static readonly Style Warning = new(Color.Yellow);

    /// <summary>What is as it should be.</summary>
    public static readonly Style Good = new(Color.Green);
}
