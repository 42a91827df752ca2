using SwapSolver.Solving.Questions;
using SwapSolver.V1;

namespace SwapSolver.Service.Translation;

/// <summary>Writes verdicts in the contract's words.</summary>
internal static class VerdictWriter
{
    /// <summary>The verdict.</summary>
    public static CheckSwapResponse.Types.Verdict Write(Verdict verdict) => verdict switch
    {
        Verdict.Balances => CheckSwapResponse.Types.Verdict.Balances,
        Verdict.BalancesWithRepair => CheckSwapResponse.Types.Verdict.BalancesWithRepair,
        _ => CheckSwapResponse.Types.Verdict.DoesNotBalance,
    };
}
