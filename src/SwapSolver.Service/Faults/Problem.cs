namespace SwapSolver.Service.Faults;

/// <summary>A caller's mistake.</summary>
/// <param name="Path">Field, as <c>formula.lines[2].grams</c>.</param>
/// <param name="Value">The bad value, as the caller wrote it; empty where none was given.</param>
/// <param name="Reason">What is wrong with it.</param>
/// <param name="WayOut">How to do it right.</param>
internal sealed record Problem(string Path, string Value, string Reason, string WayOut)
{
    /// <summary>The mistake in one sentence.</summary>
    public string Sentence => string.IsNullOrEmpty(Value) ? $"{Reason}; {WayOut}" : $"'{Value}' {Reason}; {WayOut}";
}
