using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;

namespace SwapSolver.Benchmarks.Race;

/// <summary>A program of its own. What it takes to start, to read the very model and to end without solving is taken off: ours is
/// given no text to read.</summary>
/// <param name="name">Name of the program.</param>
/// <param name="arguments">Its arguments for a model's file.</param>
/// <param name="readOnly">Its arguments to read the file and do nothing with it.</param>
/// <param name="optimum">Finds the optimum in what it prints.</param>
/// <param name="infeasible">Finds that there is none.</param>
public sealed class NativeRunner(string name, Func<string, string[]> arguments, Func<string, string[]> readOnly, Regex optimum, Regex infeasible) : IRunner
{
    /// <inheritdoc/>
    public string Name => name;

    /// <summary>The stand-alone GLPK solver.</summary>
    public static NativeRunner Glpsol { get; } = new(
        "glpsol",
        file => ["--freemps", $"{file}.mps", "--mipgap", "0", "--cuts", "--tmlim", IRunner.MostSeconds.ToString(CultureInfo.InvariantCulture), "--output", $"{file}.glpk"],
        file => ["--freemps", $"{file}.mps", "--check"],
        new Regex(@"INTEGER OPTIMAL SOLUTION FOUND|OPTIMAL LP SOLUTION FOUND"),
        new Regex(@"HAS NO (PRIMAL|INTEGER) FEASIBLE SOLUTION"));

    /// <summary>The stand-alone CBC.</summary>
    public static NativeRunner Cbc { get; } = new(
        "cbc",
        file => [$"{file}.mps", "-seconds", IRunner.MostSeconds.ToString(CultureInfo.InvariantCulture), "-ratioGap", "0", "-allowableGap", "0", "-solve"],
        file => [$"{file}.mps", "-quit"],
        new Regex(@"Result - Optimal solution found\s|Optimal - objective value|Optimal objective"),
        new Regex(@"proven infeasible|Problem is infeasible|Infeasible"));

    /// <inheritdoc/>
    public Finish Run(FixedQuestion question, string file)
    {
        var reading = Math.Min(Timed(readOnly(file)).Milliseconds, Timed(readOnly(file)).Milliseconds);
        var (milliseconds, printed) = Timed(arguments(file));
        var isInfeasible = infeasible.IsMatch(printed);
        var isProven = isInfeasible || optimum.IsMatch(printed);
        return new Finish(
            isProven ? Math.Max(0, milliseconds - reading) : IRunner.MostSeconds * 1000,
            isProven,
            isInfeasible || !isProven ? double.NaN : Objective(file, printed));
    }

    /// <inheritdoc/>
    public void Dispose()
    {
    }

    private static double Objective(string file, string printed)
    {
        var text = File.Exists($"{file}.glpk") ? File.ReadAllText($"{file}.glpk") : printed;
        var found = Regex.Matches(text, @"[Oo]bjective(?: value)?:\s+(?:cost = )?(\S+)|[Oo]bjective value\s+(\S+)");
        File.Delete($"{file}.glpk");
        return found.Count == 0
            ? double.NaN
            : double.Parse(found[^1].Groups[1].Success ? found[^1].Groups[1].Value : found[^1].Groups[2].Value, CultureInfo.InvariantCulture);
    }

    private (double Milliseconds, string Printed) Timed(string[] words)
    {
        var clock = Stopwatch.StartNew();
        using var process = Process.Start(new ProcessStartInfo(name, words) { RedirectStandardOutput = true, RedirectStandardError = true })
            ?? throw new InvalidOperationException($"'{name}' did not start");
        var errors = process.StandardError.ReadToEndAsync();
        var printed = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (clock.Elapsed.TotalMilliseconds, printed + errors.GetAwaiter().GetResult());
    }
}
