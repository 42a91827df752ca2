using System.Globalization;
using SwapSolver.Solving.Models;

namespace SwapSolver.Loaves.IndependentSolvers;

/// <summary>The stand-alone GLPK solver: another author, another code than any backend of ours.</summary>
public static class Glpsol
{
    /// <summary>What it says of a model, as written in free MPS.</summary>
    /// <remarks>
    /// It takes a yes-or-no within 1e-5 for whole, and prints the objective of that point: 5e-6 of a "changed" times the
    /// hundred grams that a line may move lets it move half a milligram unpaid (seen in the cocoa cake without butter, where
    /// its own KKT report then says "max.abs.err = 5.26e-04, Low quality"). So its choices are made exactly whole, and it
    /// solves the rest once more: what is compared is the exact objective of the choices that it holds for the best.
    /// </remarks>
    public static Verdict Judge(Model model, string mpsFile)
    {
        File.WriteAllText(mpsFile, MpsText.Of(model));
        var written = Solve(mpsFile);
        if (written is null)
        {
            return Verdict.Infeasible;
        }

        var chosen = written.Where(line => line[0] == "j").Select(line => Number(line[2])).ToList();
        var settled = model with
        {
            Columns =
            [
                .. model.Columns.Select((column, index) => column.IsWhole
                    ? column with { Low = Math.Round(chosen[index]), High = Math.Round(chosen[index]), IsWhole = false }
                    : column),
            ],
        };
        var settledFile = $"{mpsFile}.settled";
        File.WriteAllText(settledFile, MpsText.Of(settled));
        var rest = Solve(settledFile) ?? throw new InvalidOperationException("glpsol's own choices have no solution once they are whole");
        return new Verdict(true, Number(rest.Single(line => line[0] == "s")[^1]));
    }

    private static double Number(string printed) => double.Parse(printed, NumberStyles.Float, CultureInfo.InvariantCulture);

    /// <summary>The lines of the solution that it writes (format of glp_write_mip and glp_write_sol in its manual: "s mip
    /// ROWS COLUMNS STATUS OBJECTIVE", "s bas ROWS COLUMNS PRIMAL DUAL OBJECTIVE", "j COLUMN VALUE"); null where it has none.</summary>
    private static List<string[]>? Solve(string mpsFile)
    {
        var written = $"{mpsFile}.glpk";
        var said = NativeProgram.Run("glpsol", "--freemps", mpsFile, "--mipgap", "0", "--cuts", "--write", written);
        if (said.Contains("HAS NO PRIMAL FEASIBLE SOLUTION", StringComparison.Ordinal)
            || said.Contains("HAS NO INTEGER FEASIBLE SOLUTION", StringComparison.Ordinal))
        {
            return null;
        }

        var lines = File.ReadLines(written).Select(line => line.Split(' ')).ToList();
        return lines.Single(line => line[0] == "s") is ["s", "mip", _, _, "o", _] or ["s", "bas", _, _, "f", "f", _]
            ? [.. lines.Select(line => line is ["j", var column, _, var value, ..] ? ["j", column, value] : line)]
            : throw new InvalidOperationException($"glpsol proved nothing:\n{said}");
    }
}
