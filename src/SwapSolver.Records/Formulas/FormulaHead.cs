namespace SwapSolver.Records.Formulas;

/// <summary>Where a formula stands now.</summary>
/// <param name="Id">Its id.</param>
/// <param name="DisplayName">What the baker calls it.</param>
/// <param name="Newest">Number of its newest revision, from 1.</param>
/// <param name="Published">Number of the revision that everybody may read; null where none is.</param>
/// <param name="Edition">Goes up with every change, of whatever kind.</param>
/// <param name="Etag">Tag of this state.</param>
/// <param name="Created">When it was first saved (RFC 3339).</param>
/// <param name="Updated">When it was last changed (RFC 3339).</param>
/// <param name="Deleted">When it was put away (RFC 3339); null where it was not.</param>
public sealed record FormulaHead(
    string Id, string DisplayName, long Newest, long? Published, long Edition, string Etag, string Created, string Updated, string? Deleted);
