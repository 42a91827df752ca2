using SwapSolver.Service.Records;

namespace SwapSolver.Service.Access;

/// <summary>Who asks, in this one call.</summary>
internal sealed class Caller
{
    /// <summary>What the caller may do.</summary>
    public Role Role { get; set; } = Role.Anonymous;

    /// <summary>The stamp of the records that was looked at when the call came in; null where it was not.</summary>
    public long? Stamp { get; set; }

    /// <summary>The kitchen by which the question is answered that this call is asked for; null where it is asked for itself.</summary>
    public KitchenToday? Kitchen { get; set; }

    /// <summary>Whether the caller sees only what is published.</summary>
    public bool SeesOnlyPublished => Role == Role.Anonymous;
}
