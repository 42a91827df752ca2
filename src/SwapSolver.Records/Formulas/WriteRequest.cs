namespace SwapSolver.Records.Formulas;

/// <summary>A request to change something.</summary>
/// <param name="Id">Its own id, so that it is done once however often it is sent; empty where the caller gave none.</param>
/// <param name="Fingerprint">Tells it from any other request.</param>
/// <param name="At">When it came in (RFC 3339).</param>
/// <param name="ForgottenBefore">Requests done before are forgotten (RFC 3339).</param>
/// <param name="IsOnlyTried">Everything is done and looked at, and nothing of it is kept.</param>
public sealed record WriteRequest(string Id, string Fingerprint, string At, string ForgottenBefore, bool IsOnlyTried = false);
