namespace SwapSolver.Records.Formulas;

/// <summary>One state of a formula, which never changes.</summary>
/// <param name="Formula">Id of the formula.</param>
/// <param name="Number">Its number, from 1.</param>
/// <param name="Document">The formula as JSON.</param>
/// <param name="Note">Words to it.</param>
/// <param name="Goals">What it was to reach, as a JSON list of words.</param>
/// <param name="Created">When it was saved (RFC 3339).</param>
public sealed record Revision(string Formula, long Number, string Document, string Note, string Goals, string Created);
