namespace SwapSolver.Console.Arguments;

/// <summary>What the shared options of one call say.</summary>
/// <param name="Json">Print the response as JSON.</param>
/// <param name="Server">The service to ask; null for the embedded one.</param>
/// <param name="Key">Key to that service; null where none is shown.</param>
/// <param name="Records">Folder of the embedded service's records; null for the usual one.</param>
/// <param name="Deadline">Longest wait for an answer.</param>
/// <param name="StreamDeadline">The same for an answer that comes piece by piece.</param>
/// <param name="NoColour">The caller wants no colour.</param>
internal sealed record SharedSettings(bool Json, Uri? Server, string? Key, string? Records, TimeSpan Deadline, TimeSpan StreamDeadline, bool NoColour);
