using System.Globalization;
using SwapSolver.Solving.Models;

namespace SwapSolver.Loaves.IndependentSolvers;

/// <summary>The stand-alone CBC of the system's own packages, told to leave no gap and to look for every better point: by itself
/// it looks for none that is less than 1e-5 better.</summary>
public static class CbcProgram
{
    private const string Optimal = "Optimal - objective value";

    /// <summary>What it says of a model.</summary>
    /// <param name="model">The model.</param>
    /// <param name="mpsFile">Where the same model's free MPS text is.</param>
    public static Verdict Judge(Model model, string mpsFile)
    {
        var written = $"{mpsFile}.cbc";
        var said = NativeProgram.Run(
            "cbc", mpsFile, "-ratioGap", "0", "-allowableGap", "0", "-increment", "1e-9", "-solve", "-solution", written);
        var lines = File.ReadAllLines(written);
        return lines[0].StartsWith(Optimal, StringComparison.Ordinal)
                ? new Verdict(true, Number(lines[0][Optimal.Length..])) { Values = Values(model, lines.Skip(1)) }
            : lines[0].StartsWith("Infeasible", StringComparison.Ordinal) || lines[0].StartsWith("Integer infeasible", StringComparison.Ordinal)
                ? Verdict.Infeasible
                : throw new InvalidOperationException($"cbc said '{lines[0]}' and:\n{said}");
    }

    /// <summary>It writes "INDEX NAME VALUE REDUCED-COST" for each column that is not 0, and "**" before one that it holds for a
    /// little off; what such a point is worth shows where its choices are solved again in fractions.</summary>
    private static double[] Values(Model model, IEnumerable<string> lines)
    {
        var values = new double[model.Columns.Count];
        foreach (var words in lines.Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries).SkipWhile(word => word == "**").ToArray()))
        {
            var column = int.Parse(words[0], CultureInfo.InvariantCulture);
            values[column] = words[1] == model.Columns[column].Name
                ? Number(words[2])
                : throw new InvalidOperationException($"cbc's column {column} is '{words[1]}' and not '{model.Columns[column].Name}'");
        }

        return values;
    }

    private static double Number(string printed) => double.Parse(printed, NumberStyles.Float, CultureInfo.InvariantCulture);
}
