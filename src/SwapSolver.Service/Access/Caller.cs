namespace SwapSolver.Service.Access;

/// <summary>Who asks, in this one call.</summary>
internal sealed class Caller
{
    /// <summary>What the caller may do.</summary>
    public Role Role { get; set; } = Role.Anonymous;

    /// <summary>Whether the caller sees only what is published.</summary>
    public bool SeesOnlyPublished => Role == Role.Anonymous;
}
