namespace SwapSolver.OrTools.Branching;

/// <summary>A part of the tree: all points whose column keeps a narrower limit than in the part that it was cut from.</summary>
/// <param name="Bound">No point of what it was cut from is better.</param>
/// <param name="Parent">What it was cut from; null for the whole.</param>
/// <param name="Column">The column that was cut at; below 0 for the whole.</param>
/// <param name="Limit">The new limit: a lower one where it is the upper part.</param>
/// <param name="IsUpper">Whether it is the part above the cut.</param>
/// <param name="Distance">How far the column lay from the new limit.</param>
internal sealed record Branch(double Bound, Branch? Parent, int Column, double Limit, bool IsUpper, double Distance)
{
    /// <summary>Everything.</summary>
    public static readonly Branch Whole = new(double.NegativeInfinity, null, -1, 0, false, 1);

    /// <summary>No point of it is better than this, as far as is known: a trial may have told more than <see cref="Bound"/>.</summary>
    public double Least { get; init; } = Bound;

    /// <summary>Limits that every point of it keeps that is worth finding.</summary>
    public IReadOnlyList<(int Column, double Low, double High)> Narrowed { get; init; } = [];

    /// <summary>The two parts, cut at a value that is not whole.</summary>
    public (Branch Lower, Branch Upper) Cut(double bound, int column, double value)
    {
        // A value that is whole but for the last digits is cut beside itself.
        var floor = Math.Floor(value);
        return (
            new Branch(bound, this, column, floor, false, Math.Max(value - floor, PseudoCosts.LeastDistance)),
            new Branch(bound, this, column, floor + 1, true, Math.Max(floor + 1 - value, PseudoCosts.LeastDistance)));
    }

    /// <summary>Sets the limits of this part.</summary>
    public void Apply(Relaxation relaxation, double[] low, double[] high)
    {
        foreach (var column in relaxation.Whole)
        {
            relaxation.Low[column] = low[column];
            relaxation.High[column] = high[column];
        }

        for (var part = this; part is not null; part = part.Parent)
        {
            foreach (var (column, least, most) in part.Narrowed)
            {
                relaxation.Low[column] = Math.Max(relaxation.Low[column], least);
                relaxation.High[column] = Math.Min(relaxation.High[column], most);
            }

            if (part.Parent is null)
            {
                continue;
            }

            if (part.IsUpper)
            {
                relaxation.Low[part.Column] = Math.Max(relaxation.Low[part.Column], part.Limit);
            }
            else
            {
                relaxation.High[part.Column] = Math.Min(relaxation.High[part.Column], part.Limit);
            }
        }
    }
}
