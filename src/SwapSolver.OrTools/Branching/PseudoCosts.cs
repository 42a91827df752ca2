namespace SwapSolver.OrTools.Branching;

/// <summary>What cutting at a column has cost so far, for each unit that its value was pushed: what it will likely cost.</summary>
/// <param name="columns">How many columns there are.</param>
internal sealed class PseudoCosts(int columns)
{
    /// <summary>Least distance that a cost is divided by [1].</summary>
    public const double LeastDistance = 1e-6;

    /// <summary>Taken for the cost of a unit where nothing is known.</summary>
    private const double Unknown = 0.1;

    private readonly double[] upper = new double[columns];
    private readonly double[] lower = new double[columns];
    private readonly int[] upperTries = new int[columns];
    private readonly int[] lowerTries = new int[columns];

    /// <summary>Whether both sides of a column were tried.</summary>
    public bool Knows(int column) => upperTries[column] > 0 && lowerTries[column] > 0;

    /// <summary>Takes down what a cut cost.</summary>
    public void Learn(Branch part, double cost)
    {
        var (sums, tries) = part.IsUpper ? (upper, upperTries) : (lower, lowerTries);
        sums[part.Column] += Math.Max(0, cost) / part.Distance;
        tries[part.Column]++;
    }

    /// <summary>How much a cut at a value is likely to tell: high where both sides cost.</summary>
    public double Score(int column, double value)
    {
        var share = value - Math.Floor(value);
        return Score(Mean(lower, lowerTries, column) * share, Mean(upper, upperTries, column) * (1 - share));
    }

    /// <summary>The same of two costs that are known.</summary>
    public static double Score(double lowerCost, double upperCost)
    {
        // A side that costs nothing must not hide what the other one costs.
        const double Least = 1e-8;
        return Math.Max(lowerCost, Least) * Math.Max(upperCost, Least);
    }

    private static double Mean(double[] sums, int[] tries, int column) => tries[column] == 0 ? Unknown : sums[column] / tries[column];
}
