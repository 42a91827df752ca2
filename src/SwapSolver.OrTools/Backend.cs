namespace SwapSolver.OrTools;

/// <summary>A way to solve with the package, each measured by the benchmarks.</summary>
public enum Backend
{
    /// <summary>Branch and bound of our own over the package's linear solver: the fastest here, and stops between any two
    /// linear solves. Hands over to CBC, in turns, what it cannot settle.</summary>
    Branching,

    /// <summary>CBC: cannot be stopped from outside before its own time limit, which it keeps on models of our size.</summary>
    Cbc,

    /// <summary>SCIP: stops at once when told to.</summary>
    Scip,

    /// <summary>HiGHS: prints a banner to standard output, and cannot be stopped from outside.</summary>
    Highs,
}
