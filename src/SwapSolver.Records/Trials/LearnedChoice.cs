namespace SwapSolver.Records.Trials;

/// <summary>What a kitchen chose about a fact that it learned.</summary>
/// <param name="Fact">Id of the fact.</param>
/// <param name="IsOff">1 where answers do not go by it.</param>
/// <param name="ForgottenBefore">What was measured up to then counts no more (RFC 3339); empty where everything counts.</param>
public sealed record LearnedChoice(string Fact, long IsOff, string ForgottenBefore);
