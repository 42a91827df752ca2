namespace SwapSolver.Solving.Questions;

/// <summary>Whether swaps balance.</summary>
public enum Verdict
{
    /// <summary>Yes, as proposed.</summary>
    Balances,

    /// <summary>Yes, with this dose, if other lines are corrected.</summary>
    BalancesWithRepair,

    /// <summary>No, not with this dose.</summary>
    DoesNotBalance,
}
