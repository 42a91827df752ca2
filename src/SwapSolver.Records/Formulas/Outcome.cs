namespace SwapSolver.Records.Formulas;

/// <summary>What became of a change.</summary>
public enum Outcome
{
    /// <summary>It was done, or there was nothing to do.</summary>
    Done,

    /// <summary>There is nothing of this name.</summary>
    NotThere,

    /// <summary>There is something of this name already.</summary>
    AlreadyThere,

    /// <summary>Somebody else changed it meanwhile.</summary>
    Stale,

    /// <summary>It is put away.</summary>
    PutAway,

    /// <summary>It is published.</summary>
    Published,

    /// <summary>It has no revision of this number.</summary>
    NoSuchRevision,

    /// <summary>The request's id was used for another request.</summary>
    OtherRequest,
}
