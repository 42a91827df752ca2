namespace SwapSolver.Benchmarks.Race;

/// <summary>How a solver ended with a model.</summary>
/// <param name="Milliseconds">Time taken; the most that it was given where it proved nothing.</param>
/// <param name="IsProven">Whether it proved an optimum, or that there is none.</param>
/// <param name="Objective">The optimum; NaN where there is none.</param>
public sealed record Finish(double Milliseconds, bool IsProven, double Objective);
