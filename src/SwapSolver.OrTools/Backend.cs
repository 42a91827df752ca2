namespace SwapSolver.OrTools;

/// <summary>A backend of the package, each measured by the benchmarks.</summary>
public enum Backend
{
    /// <summary>SCIP: stops at once when told to, prints nothing.</summary>
    Scip,

    /// <summary>CBC: cannot be stopped from outside before its own time limit.</summary>
    Cbc,

    /// <summary>HiGHS: prints a banner to standard output, and cannot be stopped from outside.</summary>
    Highs,
}
