namespace SwapSolver.Records.Formulas;

/// <summary>A formula as it is to be saved.</summary>
/// <param name="Document">The formula as JSON.</param>
/// <param name="DisplayName">What the baker calls it.</param>
/// <param name="Note">Words to it.</param>
/// <param name="Goals">What it is to reach, as a JSON list of words.</param>
public sealed record FormulaDraft(string Document, string DisplayName, string Note, string Goals);
