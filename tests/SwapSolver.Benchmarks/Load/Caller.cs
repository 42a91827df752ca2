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
        // Scattered: of kinds that come in rows, those that take long would hold the places while the next row is refused.
        var kind = (unchecked((uint)number * Scatter) >> 16) % 4;
        var code = await (kind switch
        {
            0 => End(balances.BalanceFormulaAsync(new BalanceFormulaRequest { Formula = formula }, options)),
            1 => End(reformulations.ResizeFormulaAsync(new ResizeFormulaRequest { Formula = formula, Factor = 1.5 }, options)),
            _ => End(substitutions.VaryFormulaAsync(new VaryFormulaRequest { Formula = formula, Without = { kind == 2 ? "egg" : "tree-nuts" } }, options)),
        });
        return new Called(code, Stopwatch.GetElapsedTime(began));
    }

    /// <summary>The code that a call ends with. A fault is read, not thrown once more: the callers run on the processors that are measured.</summary>
    private static async Task<StatusCode> End<T>(AsyncUnaryCall<T> call)
    {
        using (call)
        {
            await ((Task)call.ResponseAsync).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            return call.GetStatus().StatusCode;
        }
    }
}

/// <summary>How a call ended.</summary>
/// <param name="Code">Its code.</param>
/// <param name="Took">Time from its start to its end, as its caller sees it.</param>
internal readonly record struct Called(StatusCode Code, TimeSpan Took);
