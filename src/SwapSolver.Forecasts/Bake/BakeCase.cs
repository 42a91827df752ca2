namespace SwapSolver.Forecasts;

/// <summary>How one loaf bakes.</summary>
/// <param name="Fine">The bake itself, in fine cells.</param>
/// <param name="Runs">What it may be, in coarse cells.</param>
internal sealed record BakeCase(BakeRun Fine, Scattered<BakeRun> Runs);
