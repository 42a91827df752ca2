namespace SwapSolver.OrTools.Branching;

/// <summary>The bounded dual simplex (Lemke 1954; limits passed over as in Maros 2003) on a dense tableau. Limits may change between
/// solves, and each solve goes on from where the tableau stands. What it claims is proven apart from it, by
/// <see cref="ReducedModel.LeastOf"/>.</summary>
internal sealed class DualSimplex
{
    /// <summary>Least size of an entry that is stepped by [1].</summary>
    private const double LeastEntry = 1e-8;

    /// <summary>An entry below this is stepped by only in a tableau with fresh digits.</summary>
    private const double SmallEntry = 1e-5;

    /// <summary>An entry below this is stepped by only where there is no larger one.</summary>
    private const double SoundEntry = 1e-3;

    /// <summary>Costs nearer to nothing than this have no sign.</summary>
    private const double NoCost = 1e-11;

    /// <summary>A cost that pulls towards an endless side is taken for lost digits below this [1].</summary>
    private const double SmallCost = 1e-7;

    /// <summary>Steps after which a solve is given up; a kitchen's takes some ten, and the first one some hundred.</summary>
    private const int MostSteps = 3_000;

    /// <summary>Weights that have grown to this say nothing any more.</summary>
    private const double MostWeight = 1e7;

    /// <summary>How far the proof may lie from the tableau's own word before the tableau is computed anew [1].</summary>
    private const double Drift = 1e-9;

    private readonly ReducedModel model;
    private readonly double[] values;
    private readonly LinearProof proof;
    private readonly bool[] isHigh;
    private readonly (int Place, double Ratio, double Size)[] candidates;
    private readonly CancellationToken cancel;
    private double within = ReducedModel.Within;
    private double drift = Drift;

    /// <summary>Begins at rest.</summary>
    public DualSimplex(ReducedModel model, CancellationToken cancel)
    {
        this.model = model;
        this.cancel = cancel;
        Tableau = new Tableau(model);
        Low = (double[])model.Low.Clone();
        High = (double[])model.High.Clone();
        values = new double[Low.Length];
        isHigh = new bool[Low.Length];
        proof = new LinearProof(model, Tableau, Low, High);
        candidates = new (int, double, double)[model.Columns];
    }

    /// <summary>Where it stands.</summary>
    public Tableau Tableau { get; }

    /// <summary>Least value of each unknown; may be changed between solves.</summary>
    public double[] Low { get; }

    /// <summary>Greatest values, likewise.</summary>
    public double[] High { get; }

    /// <summary>The columns' values at the last best point.</summary>
    public ReadOnlySpan<double> Values => values.AsSpan(0, model.Columns);

    /// <summary>No point within the limits costs less: proven.</summary>
    public double Bound => proof.Bound;

    /// <summary>What a unit of each column costs at the last best point, beyond what it saves, from the model itself.</summary>
    public ReadOnlySpan<double> ReducedCosts => proof.ReducedCosts;

    /// <summary>Steps that were taken in all.</summary>
    public long Steps { get; private set; }

    /// <summary>Solves within the limits as they stand.</summary>
    /// <param name="worth">What a point must cost less than to be worth finding.</param>
    public LinearOutcome Solve(double worth)
    {
        (within, drift) = (ReducedModel.Within, Drift);
        var outcome = TrySolve(worth);
        if (outcome == LinearOutcome.Unsettled && Tableau.TryRenew())
        {
            // Once more with fresh digits, and with less asked of the last ones.
            (within, drift) = (10 * ReducedModel.Within, 100 * Drift);
            outcome = TrySolve(worth);
        }

        if (outcome == LinearOutcome.Unsettled)
        {
            // From the beginning; what is proven may then lie a little below the point that is found.
            drift = 100_000 * Drift;
            Tableau.Begin();
            outcome = TrySolve(worth);
        }

        return outcome;
    }

    private LinearOutcome TrySolve(double worth)
    {
        if (!TryRest())
        {
            return LinearOutcome.Unsettled;
        }

        ReadBasic();
        for (var step = 0; step < MostSteps; step++)
        {
            if (step % 64 == 63)
            {
                cancel.ThrowIfCancellationRequested();
            }

            var cost = Cost();
            if (cost >= worth && proof.Prove() >= worth)
            {
                return LinearOutcome.TooDear;
            }

            var row = Leaving();
            if (row < 0)
            {
                return proof.IsOf(cost, values, drift) ? LinearOutcome.Best : LinearOutcome.Unsettled;
            }

            var isBelow = values[Tableau.Basic[row]] < Low[Tableau.Basic[row]];
            var place = Entering(row, isBelow);
            if (place < 0)
            {
                return proof.IsNothing(row, isBelow, within / 2) ? LinearOutcome.Nothing : LinearOutcome.Unsettled;
            }

            if (Math.Abs(Tableau[row, place]) < SmallEntry && Tableau.Steps > 0)
            {
                // Such an entry may be nothing but lost digits.
                if (!Tableau.TryRenew() || !TryRest())
                {
                    return LinearOutcome.Unsettled;
                }

                ReadBasic();
                continue;
            }

            Step(row, place, isBelow);
        }

        return LinearOutcome.Unsettled;
    }

    /// <summary>Puts every unknown at rest to the limit that its cost sends it to.</summary>
    private bool TryRest()
    {
        var costs = Tableau.Costs;
        for (var place = 0; place < model.Columns; place++)
        {
            var unknown = Tableau.Resting[place];
            var goesHigh = costs[place] < -NoCost || (costs[place] <= NoCost && isHigh[unknown]);
            if (double.IsInfinity(goesHigh ? High[unknown] : Low[unknown]))
            {
                // In the last digits that is nothing: the proof makes nothing of it either.
                if (Math.Abs(costs[place]) > SmallCost)
                {
                    return false;
                }

                goesHigh = !goesHigh;
            }

            isHigh[unknown] = goesHigh;
            values[unknown] = goesHigh ? High[unknown] : Low[unknown];
            if (double.IsInfinity(values[unknown]))
            {
                return false;
            }
        }

        return true;
    }

    private void ReadBasic()
    {
        for (var row = 0; row < model.Rows; row++)
        {
            var entries = Tableau.Row(row);
            double sum = 0;
            for (var place = 0; place < model.Columns; place++)
            {
                sum += entries[place] * values[Tableau.Resting[place]];
            }

            values[Tableau.Basic[row]] = sum;
        }
    }

    private double Cost()
    {
        var costs = Tableau.Costs;
        var sum = model.Constant;
        for (var place = 0; place < model.Columns; place++)
        {
            sum += costs[place] * values[Tableau.Resting[place]];
        }

        return sum;
    }

    /// <summary>The row whose unknown lies furthest out, by its weight; below 0 where none does.</summary>
    private int Leaving()
    {
        var (choice, most) = (-1, 0.0);
        for (var row = 0; row < model.Rows; row++)
        {
            var unknown = Tableau.Basic[row];
            var outside = Math.Max(Low[unknown] - values[unknown], values[unknown] - High[unknown]);
            if (outside > within && outside * outside > most * Tableau.Weights[row])
            {
                (choice, most) = (row, outside * outside / Tableau.Weights[row]);
            }
        }

        return choice;
    }

    /// <summary>The unknown at rest that gives way first. One between two limits that comes before it goes over to its other limit
    /// as long as that alone does not suffice. Below 0 where all of them together do not.</summary>
    private int Entering(int row, bool isBelow)
    {
        var count = Gather(row, isBelow);
        var unknown = Tableau.Basic[row];
        var missing = isBelow ? Low[unknown] - values[unknown] : values[unknown] - High[unknown];
        for (var taken = 0; taken < count; taken++)
        {
            // The next by ratio, and of those alike the largest.
            for (var other = taken + 1; other < count; other++)
            {
                var (one, two) = (candidates[taken], candidates[other]);
                if (two.Ratio < one.Ratio - NoCost || (two.Ratio <= one.Ratio + NoCost && two.Size > one.Size))
                {
                    (candidates[taken], candidates[other]) = (two, one);
                }
            }

            var (place, _, size) = candidates[taken];
            var resting = Tableau.Resting[place];
            missing -= size * (High[resting] - Low[resting]);
            if (missing > within / 2)
            {
                continue;
            }

            // Digits would run out over a small entry: rather an earlier one, which then need not go all the way.
            var last = taken;
            while (candidates[last].Size < SoundEntry && last > 0)
            {
                last--;
            }

            last = candidates[last].Size < SoundEntry ? taken : last;
            for (var passed = 0; passed < last; passed++)
            {
                PassOver(candidates[passed].Place);
            }

            return candidates[last].Place;
        }

        return -1;
    }

    private int Gather(int row, bool isBelow)
    {
        var entries = Tableau.Row(row);
        var costs = Tableau.Costs;
        var resting = Tableau.Resting;
        var count = 0;
        for (var place = 0; place < resting.Length; place++)
        {
            var entry = isBelow ? entries[place] : -entries[place];
            var unknown = resting[place];
            if (Math.Abs(entry) <= LeastEntry || Low[unknown] == High[unknown] || entry > 0 == isHigh[unknown])
            {
                continue;
            }

            candidates[count++] = (place, Math.Max(0, costs[place] / entry), Math.Abs(entry));
        }

        return count;
    }

    private void PassOver(int place)
    {
        var unknown = Tableau.Resting[place];
        isHigh[unknown] = !isHigh[unknown];
        var target = isHigh[unknown] ? High[unknown] : Low[unknown];
        Shift(place, target - values[unknown]);
        values[unknown] = target;
    }

    private void Shift(int place, double amount)
    {
        for (var row = 0; row < model.Rows; row++)
        {
            values[Tableau.Basic[row]] += Tableau[row, place] * amount;
        }
    }

    private void Step(int row, int place, bool isBelow)
    {
        var (leaving, entering) = (Tableau.Basic[row], Tableau.Resting[place]);
        var limit = isBelow ? Low[leaving] : High[leaving];
        var pivot = Tableau[row, place];
        var amount = (limit - values[leaving]) / pivot;
        Shift(place, amount);
        values[entering] += amount;
        values[leaving] = limit;
        isHigh[leaving] = !isBelow;
        Weigh(row, place, pivot);
        Tableau.Exchange(row, place);
        Steps++;
    }

    private void Weigh(int row, int place, double pivot)
    {
        var weights = Tableau.Weights;
        var own = weights[row];
        for (var other = 0; other < weights.Length; other++)
        {
            var share = Tableau[other, place] / pivot;
            weights[other] = Math.Max(weights[other], share * share * own);
        }

        weights[row] = Math.Max(own / (pivot * pivot), 1);
        if (weights[row] > MostWeight)
        {
            Array.Fill(weights, 1);
        }
    }
}
