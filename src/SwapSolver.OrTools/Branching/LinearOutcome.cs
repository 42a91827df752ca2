namespace SwapSolver.OrTools.Branching;

/// <summary>How a linear solve within limits ended.</summary>
internal enum LinearOutcome
{
    /// <summary>The best point was found.</summary>
    Best,

    /// <summary>No point lies within the limits, by a proof from the model itself.</summary>
    Nothing,

    /// <summary>No point is better than what is worth a look, by such a proof.</summary>
    TooDear,

    /// <summary>Nothing is known: too many steps, or digits that ran out.</summary>
    Unsettled,
}
