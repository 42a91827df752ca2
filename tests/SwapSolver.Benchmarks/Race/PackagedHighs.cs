using System.Diagnostics;
using System.Globalization;

namespace SwapSolver.Benchmarks.Race;

/// <summary>HiGHS as its npm package has it. One process for all models; the time is that of reading and solving.</summary>
public sealed class PackagedHighs : IRunner
{
    private readonly Process node = Process.Start(new ProcessStartInfo(
        "node", ["tests/SwapSolver.Benchmarks/Race/highs.mjs", IRunner.MostSeconds.ToString(CultureInfo.InvariantCulture)])
    {
        RedirectStandardInput = true,
        RedirectStandardOutput = true,
    }) ?? throw new InvalidOperationException("'node' did not start");

    /// <inheritdoc/>
    public string Name => "highs (npm)";

    /// <inheritdoc/>
    public Finish Run(FixedQuestion question, string file)
    {
        node.StandardInput.WriteLine($"{file}.lp");
        node.StandardInput.Flush();
        var answer = node.StandardOutput.ReadLine()?.Split('\t')
            ?? throw new InvalidOperationException("node ended; 'npm ci' in tests/SwapSolver.Benchmarks/Race brings what it needs");
        var isProven = answer[1] is "Optimal" or "Infeasible";
        return new Finish(
            isProven ? double.Parse(answer[0], CultureInfo.InvariantCulture) : IRunner.MostSeconds * 1000,
            isProven,
            answer[1] == "Optimal" ? double.Parse(answer[2], CultureInfo.InvariantCulture) : double.NaN);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        node.StandardInput.Close();
        node.WaitForExit();
        node.Dispose();
    }
}
