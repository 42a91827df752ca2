namespace SwapSolver.OrTools;

/// <summary>A backend of the package, each measured by the benchmarks.</summary>
public enum Backend
{
    /// <summary>CBC: the fastest here by several times; cannot be stopped from outside before its own time limit, which
    /// it keeps on models of our size.</summary>
    Cbc,

    /// <summary>SCIP: stops at once when told to.</summary>
    Scip,

    /// <summary>HiGHS: prints a banner to standard output, and cannot be stopped from outside.</summary>
    Highs,
}
