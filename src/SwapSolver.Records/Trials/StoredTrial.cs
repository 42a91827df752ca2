namespace SwapSolver.Records.Trials;

/// <summary>One bake as it was written down.</summary>
/// <param name="Formula">Id of the formula.</param>
/// <param name="Number">Its number among the formula's trials, from 1.</param>
/// <param name="Revision">Number of the revision that was baked.</param>
/// <param name="Document">The trial as JSON.</param>
/// <param name="Created">When it was written down (RFC 3339).</param>
public sealed record StoredTrial(string Formula, long Number, long Revision, string Document, string Created);
