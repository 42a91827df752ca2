using SwapSolver.Data.Files;

namespace SwapSolver.Data.Tests;

/// <summary>Where a fault is shown: file, line, column, the line itself and a caret below it.</summary>
internal static class FaultPlace
{
    /// <summary>Asserts that a fault points at a place of a text.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="file">The file that it must name.</param>
    /// <param name="text">The text of that file.</param>
    /// <param name="place">A part of the text with <c>^</c> before the letter that the caret must stand under.</param>
    /// <param name="says">What the message must name: the value, or what is missing.</param>
    public static void AssertPointsAt(this DataFaultException fault, string file, string text, string place, string says)
    {
        var mark = place.IndexOf('^', StringComparison.Ordinal);
        var found = text.IndexOf(place.Remove(mark, 1), StringComparison.Ordinal);
        Assert.True(found >= 0, $"the test's own text has no '{place}'");
        var before = text[..(found + mark)].Split('\n');

        Assert.Equal(file, fault.File);
        Assert.Equal(before.Length, fault.Line);
        Assert.Equal(before[^1].Length + 1, fault.Column);
        var shown = fault.Message.Split(Environment.NewLine);
        Assert.StartsWith($"{file}, line {fault.Line}, column {fault.Column}: ", shown[0], StringComparison.Ordinal);
        Assert.Contains(says, shown[0], StringComparison.Ordinal);
        Assert.Equal($"  {text.Split('\n')[fault.Line - 1]}", shown[1]);
        Assert.Equal($"{new string(' ', fault.Column + 1)}^", shown[2]);
    }
}
