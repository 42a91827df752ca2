using System.Diagnostics;
using SwapSolver.Solving.Models;

namespace SwapSolver.OrTools.Branching;

/// <summary>Finds the best point of a model with whole numbers by cutting its relaxation into parts (Land and Doig 1960), the
/// column to cut at by pseudo-costs with trial cuts (Achterberg, Koch and Martin 2005). Models of a kitchen have some forty
/// yes-or-noes and trees of some hundred parts: a warm linear solve a part is quicker than what a large solver does before it
/// starts, and it can be stopped between any two. What is left out is left out by a bound that is proven from the model. Same model, same steps, same point, unless time runs out.</summary>
/// <remarks>Written for this since the package's own CBC cannot be stopped, and takes many times as long (results/solvers.md).</remarks>
internal sealed class BranchAndBound
{
    /// <summary>How far from whole a value of the relaxation may lie to be tried as whole [1]. What is answered is whole exactly.</summary>
    private const double WholeWithin = 1e-6;

    /// <summary>Parts after which the tree is given up; the largest of the fixed questions has some two
    /// thousand, the whole-step models of a trade-off up to a hundred thousand, and CBC takes longer over those.</summary>
    private const int MostParts = 120_000;

    /// <summary>Columns whose two sides are tried, at most, before one is cut at.</summary>
    private const int MostTrials = 8;

    private readonly Relaxation relaxation;
    private readonly PseudoCosts costs;
    private readonly double[] low;
    private readonly double[] high;
    private readonly PriorityQueue<Branch, double> open = new();
    private readonly Stopwatch clock = Stopwatch.StartNew();
    private readonly TimeSpan budget;
    private readonly CancellationToken cancel;
    private (double Objective, double[] Values, double[] Costs) root = (double.NaN, [], []);
    private double[]? best;
    private double bestObjective = double.PositiveInfinity;

    /// <summary>Prepares a search.</summary>
    public BranchAndBound(Model model, ReducedModel reduced, TimeSpan budget, CancellationToken cancel)
    {
        this.budget = budget;
        this.cancel = cancel;
        relaxation = new Relaxation(model, reduced, cancel);
        costs = new PseudoCosts(reduced.Columns);
        low = [.. relaxation.Low];
        high = [.. relaxation.High];
    }

    /// <summary>Parts that were looked at.</summary>
    public int Parts { get; private set; }

    /// <summary>Steps of the linear solver in all of them.</summary>
    public long Steps => relaxation.Steps;

    /// <summary>Parts after which it is given up.</summary>
    public int Most { get; init; } = MostParts;

    /// <summary>How much better another point could be at most, of the best one [1].</summary>
    public double Gap { get; private set; }

    /// <summary>No part is worth a look unless its bound is below this.</summary>
    private double Worth => best is null ? double.PositiveInfinity : bestObjective - Math.Max(1e-9, 1e-8 * Math.Abs(bestObjective));

    /// <summary>Searches; null where the linear solver settled nothing or the tree grew too large: another solver is to look.</summary>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public (Outcome Outcome, double[] Values)? Run()
    {
        Branch? next = Branch.Whole;
        for (; next is not null || open.Count > 0; Parts++)
        {
            cancel.ThrowIfCancellationRequested();
            if (clock.Elapsed >= budget)
            {
                Gap = GapOf(next);
                return best is null ? (Outcome.OutOfTime, []) : (Outcome.Feasible, best);
            }

            if (Parts == Most)
            {
                return null;
            }

            var part = next ?? open.Dequeue();
            if (next is null)
            {
                relaxation.GoToRoot();
            }

            next = null;
            if (part.Least < Worth && !TryLook(part, out next) && clock.Elapsed < budget)
            {
                cancel.ThrowIfCancellationRequested();
                return null;
            }
        }

        return best is null ? (Outcome.Infeasible, []) : (Outcome.Optimal, best);
    }

    /// <summary>No point that is not found yet is better than this: it lies in the next part, or in one that was set aside.</summary>
    public static double LeastLeft(Branch? next, PriorityQueue<Branch, double> open) =>
        Math.Min(next?.Least ?? double.PositiveInfinity, open.Count > 0 ? open.Peek().Least : double.PositiveInfinity);

    private double GapOf(Branch? next) => Math.Max(0, bestObjective - LeastLeft(next, open)) / Math.Max(1e-9, Math.Abs(bestObjective));

    private LinearOutcome Solve() => relaxation.Solve(Worth);

    /// <summary>Looks into a part: keeps its point where it is whole, else cuts it in two, of which one is to be looked at next.
    /// False where the linear solver settled nothing.</summary>
    private bool TryLook(Branch part, out Branch? next)
    {
        next = null;
        part.Apply(relaxation, low, high);
        var outcome = Solve();
        if (outcome != LinearOutcome.Best)
        {
            return outcome != LinearOutcome.Unsettled;
        }

        var (bound, values) = (relaxation.Bound, (double[])relaxation.Values.Clone());
        if (part.Parent is null)
        {
            root = (bound, values, relaxation.ReducedCosts.ToArray());
            relaxation.KeepRoot();
        }
        else
        {
            costs.Learn(part, bound - part.Bound);
        }

        if (bound >= Worth)
        {
            return true;
        }

        part = part with { Narrowed = Narrowed(bound, values) };
        var broken = relaxation.Whole.Where(column => Off(values[column]) > WholeWithin).ToList();
        return broken.Count > 0 ? TryCut(part, bound, values, broken, out next) : TryKeep(part, bound, values, out next);
    }

    private static double Off(double value) => Math.Abs(value - Math.Round(value));

    /// <summary>A point that is whole but for the last digits is made whole exactly, and the rest solved anew: a millionth of a
    /// yes-or-no would let a line move some of its grams unpaid.</summary>
    private bool TryKeep(Branch part, double bound, double[] values, out Branch? next)
    {
        next = null;
        foreach (var column in relaxation.Whole)
        {
            relaxation.Low[column] = relaxation.High[column] = Math.Round(values[column]);
        }

        var outcome = Solve();
        if (outcome == LinearOutcome.Unsettled)
        {
            return false;
        }

        if (outcome == LinearOutcome.Best && relaxation.Cost < bestObjective)
        {
            bestObjective = relaxation.Cost;
            best = relaxation.Point();
            NarrowByRoot();
        }

        if (bound >= Worth || relaxation.Whole.Count == 0)
        {
            return true;
        }

        var least = relaxation.Whole.MaxBy(column => Off(values[column]));
        if (Off(values[least]) == 0)
        {
            return true;
        }

        var (lower, upper) = part.Cut(bound, least, values[least]);
        open.Enqueue(lower, bound);
        next = upper;
        return true;
    }

    /// <summary>A column whose first unit already costs more than the best point leaves is held where it is.</summary>
    private void NarrowByRoot()
    {
        var room = bestObjective - root.Objective;
        foreach (var column in relaxation.Whole)
        {
            var cost = root.Costs[column];
            if (cost > WholeWithin && root.Values[column] <= low[column] + WholeWithin)
            {
                high[column] = Math.Min(high[column], Math.Floor(low[column] + (room / cost) + WholeWithin));
            }
            else if (cost < -WholeWithin && root.Values[column] >= high[column] - WholeWithin)
            {
                low[column] = Math.Max(low[column], Math.Ceiling(high[column] + (room / cost) - WholeWithin));
            }
        }
    }

    /// <summary>The same within a part, by its own costs: limits beyond which a column would cost more than is worth a look.</summary>
    private List<(int Column, double Low, double High)> Narrowed(double bound, double[] values)
    {
        List<(int, double, double)> narrowed = [];
        if (best is null)
        {
            return narrowed;
        }

        var room = Worth - bound;
        foreach (var column in relaxation.Whole)
        {
            var (cost, least, most) = (relaxation.ReducedCosts[column], relaxation.Low[column], relaxation.High[column]);
            if (cost > WholeWithin && values[column] <= least + WholeWithin && Math.Floor(least + (room / cost) + WholeWithin) is var limit && limit < most)
            {
                narrowed.Add((column, least, limit));
            }
            else if (cost < -WholeWithin && values[column] >= most - WholeWithin && Math.Ceiling(most + (room / cost) - WholeWithin) is var limitBelow && limitBelow > least)
            {
                narrowed.Add((column, limitBelow, most));
            }
        }

        return narrowed;
    }

    private bool TryCut(Branch part, double bound, double[] values, List<int> broken, out Branch? next)
    {
        next = null;
        (int Column, double Score, double LowerCost, double UpperCost) choice = (broken[0], double.NegativeInfinity, 0, 0);
        foreach (var column in broken.OrderByDescending(column => costs.Score(column, values[column])).Take(MostTrials))
        {
            var (score, lowerCost, upperCost) = (costs.Score(column, values[column]), 0.0, 0.0);
            if (!costs.Knows(column))
            {
                var (lower, upper) = part.Cut(bound, column, values[column]);
                if (Tried(lower) is not { } triedLower || Tried(upper) is not { } triedUpper)
                {
                    return false;
                }

                (lowerCost, upperCost) = (triedLower, triedUpper);
                var (isLowerOver, isUpperOver) = (bound + lowerCost >= Worth, bound + upperCost >= Worth);
                if (isLowerOver || isUpperOver)
                {
                    next = isLowerOver ? isUpperOver ? null : upper : lower;
                    return true;
                }

                score = PseudoCosts.Score(lowerCost, upperCost);
            }

            if (score > choice.Score)
            {
                choice = (column, score, lowerCost, upperCost);
            }
        }

        // Towards the side that is nearer: a line that is changed by a good part of its room will be changed.
        const double UpperFrom = 0.3;
        var value = values[choice.Column];
        var parts = part.Cut(bound, choice.Column, value);
        var (below, above) = (parts.Lower with { Least = bound + choice.LowerCost }, parts.Upper with { Least = bound + choice.UpperCost });
        var isUpperFirst = value - Math.Floor(value) > UpperFrom;
        var later = isUpperFirst ? below : above;
        open.Enqueue(later, later.Least);
        next = isUpperFirst ? above : below;
        return true;
    }

    /// <summary>What a cut costs, by solving it; endless where nothing is left; null where the linear solver settled nothing.</summary>
    private double? Tried(Branch part)
    {
        part.Apply(relaxation, low, high);
        var outcome = Solve();
        if (outcome == LinearOutcome.Best)
        {
            var cost = Math.Max(0, relaxation.Bound - part.Bound);
            costs.Learn(part, cost);
            return cost;
        }

        return outcome == LinearOutcome.Unsettled ? null : double.PositiveInfinity;
    }
}
