using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Questions;

/// <summary>The best reachable trade-off between two readings of a formula: each point is a formula in steps of the scale
/// and whole eggs that keeps every band, and no formula is better in one of the two readings without being worse in the other.</summary>
/// <param name="Formula">The formula; it has both readings.</param>
/// <param name="First">The one reading.</param>
/// <param name="Second">The other.</param>
/// <param name="Points">Most points, 2 or more.</param>
/// <param name="Limits">Limits on readings that are kept besides.</param>
/// <param name="Habits">How the kitchen wants its answers.</param>
public sealed record Frontier(
    Formula Formula, TradedReading First, TradedReading Second, int Points, ImmutableArray<Hold> Limits, Habits Habits)
{
    /// <summary>Tries for each point that is wanted; a try may show that there is nothing between two points.</summary>
    private const int TriesForAPoint = 2;

    /// <summary>A gap of the second reading that is looked into no further, of its whole range [1].</summary>
    private const double SmallestGap = 1e-3;

    /// <summary>Traces the points, the two ends first and then the middle of the widest gap. Each is proven before it is
    /// given, so what an interrupted trace gave stays true. Ends early where the time runs out.</summary>
    /// <param name="search">The solving.</param>
    /// <param name="clock">Time left.</param>
    /// <param name="cancel">Stops the search.</param>
    public IEnumerable<FrontierPoint> Trace(AnswerSearch search, Deadline clock, CancellationToken cancel)
    {
        var problem = Problem(search.Bakehouse);
        var solve = new FrontierSolve(search, problem, First, Second);
        if (solve.End(First, Second, clock, cancel) is not { } left)
        {
            yield break;
        }

        yield return Told(search, problem, left);
        if (solve.End(Second, First, clock, cancel) is not { } right || IsSame(left, right))
        {
            yield break;
        }

        yield return Told(search, problem, right);
        var gaps = new PriorityQueue<(double From, double To), double>();
        void Look(double from, double to)
        {
            if (Math.Abs(to - from) > SmallestGap * Math.Abs(right.Second - left.Second))
            {
                gaps.Enqueue((from, to), -Math.Abs(to - from));
            }
        }

        Look(left.Second, right.Second);
        var found = 2;
        for (var tries = TriesForAPoint * Points; tries > 0 && found < Points && gaps.Count > 0; tries--)
        {
            var (from, to) = gaps.Dequeue();
            var middle = (from + to) / 2;
            if (solve.Beyond(middle, clock, cancel) is not { } point)
            {
                yield break;
            }

            // The best first reading with the second at the middle or better: nothing lies between the middle and it.
            Look(from, middle);
            if (Second.IsBetter(to, point.Second))
            {
                found++;
                yield return Told(search, problem, point);
                Look(point.Second, to);
            }
        }
    }

    /// <summary>The problem that every point is a formula of.</summary>
    public FormulaProblem Problem(Bakehouse bakehouse)
    {
        var reference = Formula.InOrderOfIds();
        var wishes = new Targets(bakehouse.Balances, reference);
        ImmutableArray<TradedReading> moved = [First, Second];
        // Wished for, so that the lines that bear on them may move; how far, is the question.
        var holds = wishes.WithRoomFor(
            moved.Select(one => (one.Balance, one.Better)), [.. Limits, .. moved.Select(one => Targets.Of(one.Balance, Band.Open))]);
        return new FormulaProblem(
            reference,
            reference,
            holds,
            bakehouse.Balances.Anchored,
            bakehouse.Balances.NetCarbohydrate,
            new Candidates(bakehouse) { Named = Habits.Named }.For(reference, holds, wishes.NewRoles(moved.Select(one => one.Balance))),
            Habits,
            bakehouse.Practice);
    }

    private bool IsSame(TradedFormula one, TradedFormula other) =>
        !First.IsBetter(one.First, other.First) && !Second.IsBetter(other.Second, one.Second);

    private FrontierPoint Told(AnswerSearch search, FormulaProblem problem, TradedFormula point)
    {
        var answer = search.Explain(Formula, new Way(problem, 0, []), point.Formula, isBestSoFar: false);
        return new FrontierPoint(Read(First, answer.Formula), Read(Second, answer.Formula), answer);
    }

    /// <summary>A reading of the formula as it is told: the last digits hang on the order of its lines.</summary>
    private Level Read(TradedReading reading, Formula told) =>
        reading.Balance.Read(told, Formula, Draws.Typical)
        ?? throw new InvalidOperationException($"a formula of the trade-off has no {reading.Balance.Id}");
}
