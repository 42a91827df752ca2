using SwapSolver.Solving.Models;

namespace SwapSolver.OrTools.Branching;

/// <summary>Reads a point of the full model from one of the reduced model.</summary>
internal sealed class Restoring
{
    private readonly List<(int Column, double[] Terms, double Constant)> sums = [];
    private readonly double[] fixedValues;

    /// <summary>Begins with the columns that stand still.</summary>
    /// <param name="fixedValues">A value for each column of the full model; of those that move, nothing is read.</param>
    public Restoring(double[] fixedValues) => this.fixedValues = fixedValues;

    /// <summary>The full model's column of each column of the reduced one.</summary>
    public required int[] Kept { get; init; }

    /// <summary>What a unit of each column of the reduced model is in the full one.</summary>
    public required double[] Units { get; init; }

    /// <summary>Takes down a column that is a sum of others.</summary>
    public void Add(int column, double[] terms, double constant) => sums.Add((column, terms, constant));

    /// <summary>The values of the full model's columns.</summary>
    /// <param name="model">The full model.</param>
    /// <param name="reduced">Values of the reduced model's columns.</param>
    public double[] Values(Model model, ReadOnlySpan<double> reduced)
    {
        var values = (double[])fixedValues.Clone();
        for (var column = 0; column < Kept.Length; column++)
        {
            values[Kept[column]] = reduced[column] * Units[column];
        }

        foreach (var (column, terms, constant) in sums)
        {
            var sum = constant;
            for (var term = 0; term < Kept.Length; term++)
            {
                sum += terms[term] * reduced[term];
            }

            // A limit passed in the last digits.
            values[column] = Math.Clamp(sum, model.Columns[column].Low, model.Columns[column].High);
        }

        return values;
    }
}
