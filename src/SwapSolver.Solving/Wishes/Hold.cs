using SwapSolver.Kitchen.Balances;

namespace SwapSolver.Solving.Wishes;

/// <summary>One thing that an answer must keep: a balance and the band for it. A default band, a caller's limit and
/// something to leave out are all of this shape.</summary>
/// <param name="Id">Id of the wish, as <c>hydration</c> or <c>without:tree-nuts</c>.</param>
/// <param name="Balance">The rule.</param>
/// <param name="Band">The band that its reading must keep.</param>
/// <param name="FromCaller">Whether the caller asked for it; else it is a default of the kitchen.</param>
/// <param name="IsAnchored">Whether the band hangs on the reference's own reading, and so moves with its facts.</param>
public sealed record Hold(string Id, Balance Balance, Band Band, bool FromCaller, bool IsAnchored = false)
{
    /// <summary>Where the band is so much of the reference's own reading, the shares; else null.</summary>
    public OwnShare? Share { get; init; }

    /// <summary>What is to be left out, where this is such a wish; else null.</summary>
    public LeftOut? LeftOut => Balance as LeftOut;
}
