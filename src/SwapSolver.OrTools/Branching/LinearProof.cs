namespace SwapSolver.OrTools.Branching;

/// <summary>Proves from the model itself what a tableau says, so that nothing hangs on the digits of its steps.</summary>
internal sealed class LinearProof(ReducedModel model, Tableau tableau, double[] low, double[] high)
{
    private readonly double[] multipliers = new double[model.Rows];
    private readonly double[] reduced = new double[model.Columns];

    /// <summary>No point within the limits costs less.</summary>
    public double Bound { get; private set; }

    /// <summary>What a unit of each column costs beyond what it saves, by the last bound.</summary>
    public ReadOnlySpan<double> ReducedCosts => reduced;

    /// <summary>The bound that the multipliers of the tableau prove.</summary>
    public double Prove()
    {
        Array.Clear(multipliers);
        var costs = tableau.Costs;
        for (var place = 0; place < model.Columns; place++)
        {
            if (tableau.Resting[place] >= model.Columns)
            {
                multipliers[tableau.Resting[place] - model.Columns] = costs[place];
            }
        }

        return Bound = model.Constant + model.LeastOf(model.Costs, multipliers, low, high, reduced);
    }

    /// <summary>Whether no point lies within the limits: the row's own sum of the model's rows, at its best, proves it.</summary>
    public bool IsNothing(int row, bool isBelow, double within)
    {
        Array.Clear(multipliers);
        var sign = isBelow ? 1 : -1;
        Multiply(tableau.Basic[row], sign);
        var entries = tableau.Row(row);
        for (var place = 0; place < model.Columns; place++)
        {
            Multiply(tableau.Resting[place], -sign * entries[place]);
        }

        return model.LeastOf(null, multipliers, low, high, reduced) > within;

        void Multiply(int unknown, double factor)
        {
            if (unknown >= model.Columns)
            {
                multipliers[unknown - model.Columns] = factor;
            }
        }
    }

    /// <summary>Whether the point is what the model itself says of it: its rows, and its cost as the proven bound.</summary>
    public bool IsOf(double cost, double[] values, double drift)
    {
        var apart = drift * Math.Max(1, Math.Abs(cost));
        if (!(Math.Abs(Prove() - cost) <= apart))
        {
            return false;
        }

        // A bound that is a little low costs time; a row that does not hold would cost the answer.
        const double MostOfARow = 1e-7;
        apart = Math.Min(apart, MostOfARow);
        for (var row = 0; row < model.Rows; row++)
        {
            double sum = 0;
            for (var entry = model.RowStarts[row]; entry < model.RowStarts[row + 1]; entry++)
            {
                sum += model.Entries[entry] * values[model.EntryColumns[entry]];
            }

            if (!(Math.Abs(sum - values[model.Columns + row]) <= apart))
            {
                return false;
            }
        }

        return true;
    }
}
