using System.Diagnostics;
using Grpc.Core;
using SwapSolver.Benchmarks.Calls;
using SwapSolver.V1;

namespace SwapSolver.Benchmarks.Load;

/// <summary>Asks usual questions of all kinds in turn, none of them twice, so that nothing comes from what is kept.</summary>
internal sealed class Caller(CallInvoker channel)
{
    private static readonly Formula[] Loaves = [.. Questions.All.Select(question => FormulaMessage.Of(question.Formula))];

    /// <summary>Any large odd number: its products run through all remainders without an order that is seen.</summary>
    private const uint Scatter = 2_654_435_761;

    private readonly BalanceService.BalanceServiceClient balances = new(channel);

    private readonly SubstitutionService.SubstitutionServiceClient substitutions = new(channel);

    private readonly ReformulationService.ReformulationServiceClient reformulations = new(channel);

    /// <summary>Asks the question of a number.</summary>
    /// <param name="number">Number of the question; another number is another question.</param>
    /// <param name="deadline">When it must be answered; null for no end.</param>
    public async Task<Called> Ask(int number, DateTime? deadline = null)
    {
        var formula = new Formula(Loaves[number % Loaves.Length]) { DisplayName = $"Loaf {number}" };
        var options = new CallOptions(deadline: deadline);
        var began = Stopwatch.GetTimestamp();
        try
        {
            // Scattered: of kinds that come in rows, those that take long would hold the places while the next row is refused.
            var kind = (unchecked((uint)number * Scatter) >> 16) % 4;
            switch (kind)
            {
                case 0:
                    await balances.BalanceFormulaAsync(new BalanceFormulaRequest { Formula = formula }, options);
                    break;
                case 1:
                    await reformulations.ResizeFormulaAsync(new ResizeFormulaRequest { Formula = formula, Factor = 1.5 }, options);
                    break;
                default:
                    await substitutions.VaryFormulaAsync(new VaryFormulaRequest { Formula = formula, Without = { kind == 2 ? "egg" : "tree-nuts" } }, options);
                    break;
            }

            return new Called(StatusCode.OK, Stopwatch.GetElapsedTime(began));
        }
        catch (RpcException fault)
        {
            return new Called(fault.StatusCode, Stopwatch.GetElapsedTime(began));
        }
    }
}

/// <summary>How a call ended.</summary>
/// <param name="Code">Its code.</param>
/// <param name="Took">Time from its start to its end, as its caller sees it.</param>
internal readonly record struct Called(StatusCode Code, TimeSpan Took);
