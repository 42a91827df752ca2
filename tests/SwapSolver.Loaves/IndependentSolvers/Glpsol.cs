using System.Globalization;
using SwapSolver.Solving.Models;

namespace SwapSolver.Loaves.IndependentSolvers;

/// <summary>The stand-alone GLPK solver: another author, another code than any backend of ours.</summary>
public static class Glpsol
{
    /// <summary>How far a row is let out in fractions, in its own unit: a thousandth of any solver's tolerance.</summary>
    private const double Dust = 1e-9;

    /// <summary>What it says of a model, as written in free MPS; null where the choices that it holds for the best have no point
    /// once they are exactly whole, so that it has said nothing.</summary>
    /// <remarks>
    /// It takes a yes-or-no within 1e-5 for whole, and prints the objective of that point: 5e-6 of a "changed" times the
    /// hundred grams that a line may move lets it move half a milligram unpaid (seen in the cocoa cake without butter, where
    /// its own KKT report then says "max.abs.err = 5.26e-04, Low quality"). So its choices are made exactly whole, and it
    /// solves the rest once more: what is compared is the exact objective of the choices that it holds for the best.
    /// </remarks>
    public static Verdict? Judge(Model model, string mpsFile)
    {
        File.WriteAllText(mpsFile, MpsText.Of(model));
        var found = Solve(mpsFile);
        if (!found.IsFeasible)
        {
            return found;
        }

        var settled = Settle(model, found.Values, $"{mpsFile}.settled");
        return settled.IsFeasible ? settled : null;
    }

    /// <summary>What the best point counts with these choices made exactly whole, found by its simplex in fractions
    /// (<c>--exact</c>), which has no tolerance of its own. Rows are let out by <see cref="Dust"/>: three eggs of 50.3 g are
    /// not the same binary number as 150.9 g.</summary>
    /// <param name="model">The model.</param>
    /// <param name="values">One value a column; those of whole columns are rounded and kept.</param>
    /// <param name="mpsFile">Where the text goes.</param>
    public static Verdict InFractions(Model model, IReadOnlyList<double> values, string mpsFile) =>
        Settle(model with { Rows = [.. model.Rows.Select(row => row with { Low = row.Low - Dust, High = row.High + Dust })] }, values, mpsFile, "--exact");

    private static Verdict Settle(Model model, IReadOnlyList<double> values, string mpsFile, params string[] options)
    {
        var settled = model with
        {
            Columns =
            [
                .. model.Columns.Select((column, index) => column.IsWhole
                    ? column with { Low = Math.Round(values[index]), High = Math.Round(values[index]), IsWhole = false }
                    : column),
            ],
        };
        File.WriteAllText(mpsFile, MpsText.Of(settled));
        return Solve(mpsFile, options);
    }

    private static double Number(string printed) => double.Parse(printed, NumberStyles.Float, CultureInfo.InvariantCulture);

    /// <summary>What it writes (format of glp_write_mip and glp_write_sol in its manual: "s mip ROWS COLUMNS STATUS OBJECTIVE",
    /// "s bas ROWS COLUMNS PRIMAL DUAL OBJECTIVE", "j COLUMN VALUE", "j COLUMN STATUS VALUE DUAL").</summary>
    private static Verdict Solve(string mpsFile, params string[] options)
    {
        var written = $"{mpsFile}.glpk";
        var said = NativeProgram.Run("glpsol", ["--freemps", mpsFile, "--mipgap", "0", "--cuts", "--write", written, .. options]);
        if (said.Contains("PROBLEM HAS NO FEASIBLE SOLUTION", StringComparison.Ordinal)
            || said.Contains("HAS NO PRIMAL FEASIBLE SOLUTION", StringComparison.Ordinal)
            || said.Contains("HAS NO INTEGER FEASIBLE SOLUTION", StringComparison.Ordinal))
        {
            return Verdict.Infeasible;
        }

        var lines = File.ReadLines(written).Select(line => line.Split(' ')).ToList();
        return lines.Single(line => line[0] == "s") is (["s", "mip", _, _, "o", _] or ["s", "bas", _, _, "f", "f", _]) and [.., var objective]
            ? new Verdict(true, Number(objective))
            {
                Values = [.. lines.Where(line => line[0] == "j").Select(line => Number(line is ["j", _, _, var value, ..] ? value : line[2]))],
            }
            : throw new InvalidOperationException($"glpsol proved nothing:\n{said}");
    }
}
