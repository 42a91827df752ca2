using System.Globalization;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Kitchen.Wording;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Answers;

/// <summary>Where no formula fits: which wishes fight each other, and what would do if one of them gave way.</summary>
/// <param name="Solve">The solving.</param>
/// <param name="Phrases">The words.</param>
public sealed record ConflictSearch(FormulaSolve Solve, Phrases Phrases)
{
    private const string NewIngredients = "new-ingredients";

    private const string WholeEggs = "whole-eggs";

    /// <summary>A smallest set of wishes that cannot be met together: without any one of them the rest of the set can.
    /// Found by leaving wishes away one at a time, the kitchen's defaults first, so that the caller's own remain.</summary>
    /// <param name="problem">A problem that nothing meets.</param>
    /// <param name="clock">Time left; where it ends early the set is not proven smallest.</param>
    /// <param name="cancel">Stops the search.</param>
    public FoundConflict Find(FormulaProblem problem, Deadline clock, CancellationToken cancel)
    {
        // The room of a role is no wish of anybody's: it stays, and what fights is told in terms of wishes and of the
        // crumb. Only where those do not fight is the room itself what stands in the way.
        var (fighting, endedEarly) = Fighting(problem, hold => hold.FromCaller || hold.Balance is not (RoleMass or BatterMass), clock, cancel);
        if (fighting.Count == 0)
        {
            (fighting, endedEarly) = Fighting(problem, _ => true, clock, cancel);
        }

        return new FoundConflict([.. fighting.Select(wish => Describe(problem, wish, clock, cancel))], endedEarly || clock.IsOver);
    }

    /// <summary>The formula that misses the wishes by least, what is to be left out being left out; null where not found.
    /// More new ingredients give way first, then the bands of the crumb, and the fill of the tin last.</summary>
    public Formula? Nearest(FormulaProblem problem, Deadline clock, CancellationToken cancel)
    {
        var bands = problem.Holds.Where(hold => hold.LeftOut is null).ToList();
        FormulaProblem[] tries =
        [
            Without(problem, NewIngredients),
            problem with { MayGiveWay = [.. bands.Where(hold => hold.Balance is not BatterMass).Select(hold => hold.Id)] },
            problem with { MayGiveWay = [.. bands.Select(hold => hold.Id)] },
        ];
        return tries.Select(one => Solve.Run(one, clock, cancel).Formula).FirstOrDefault(formula => formula is not null);
    }

    private (List<string> Fighting, bool EndedEarly) Fighting(
        FormulaProblem problem, Func<Hold, bool> isWish, Deadline clock, CancellationToken cancel)
    {
        var wishes = problem.Holds.Where(isWish).OrderBy(hold => hold.FromCaller).Select(hold => hold.Id).Prepend(NewIngredients).Distinct();
        if (problem.Start.Lines.Any(line => !line.Ingredient.CountedUnits.IsEmpty) && !problem.Habits.WeighedEgg)
        {
            wishes = wishes.Prepend(WholeEggs);
        }

        // A wish also frees lines to move: what is to be left out may go, and a limit on net carbs frees the sweetener. Without
        // the wish such a line stays, so leaving a wish away may itself stand in the way, and a wish that was needed with
        // many others about may be needless among the few that are left. So each is tried until all stand the same trial.
        var inOrder = wishes.ToList();
        var untried = new Queue<string>(inOrder);
        var needed = new HashSet<string>();
        var left = problem;
        var endedEarly = false;
        while (untried.TryDequeue(out var wish))
        {
            var without = Without(left, wish);
            var outcome = clock.IsOver ? Outcome.OutOfTime : Solve.CanBeMet(without, clock, cancel);
            endedEarly |= outcome == Outcome.OutOfTime;
            if (outcome != Outcome.Infeasible)
            {
                needed.Add(wish);
                continue;
            }

            left = without;
            foreach (var again in inOrder.Where(needed.Contains))
            {
                untried.Enqueue(again);
            }

            needed.Clear();
        }

        return ([.. inOrder.Where(needed.Contains)], endedEarly);
    }

    private static FormulaProblem Without(FormulaProblem problem, string wish) => wish switch
    {
        NewIngredients => problem with { Habits = problem.Habits with { NewIngredients = problem.Candidates.Length } },
        WholeEggs => problem with { Habits = problem.Habits with { WeighedEgg = true } },
        _ => problem with { Holds = problem.Holds.RemoveAll(hold => hold.Id == wish) },
    };

    private Conflict Describe(FormulaProblem problem, string wish, Deadline clock, CancellationToken cancel)
    {
        if (wish == NewIngredients)
        {
            return DescribeNewIngredients(problem, clock, cancel);
        }

        if (wish == WholeEggs)
        {
            var weighed = Solve.Run(Without(problem, wish), clock, cancel).Formula;
            return new Conflict(wish, null, Phrases.Say(weighed is not null ? "conflict-whole-eggs" : "conflict-whole-eggs-not-enough")) { Formula = weighed };
        }

        var hold = problem.Holds.First(one => one.Id == wish);
        if (hold.LeftOut is not null)
        {
            var kept = Solve.Run(Without(problem, wish), clock, cancel).Formula;
            return new Conflict(
                wish,
                null,
                Phrases.Say(kept is not null ? "conflict-left-out-enough" : "conflict-left-out", ("wish", hold.Balance.Settings.Title)))
            {
                Formula = kept,
            };
        }

        var words = Words(hold);
        var relaxed = Solve.Run(problem with { MayGiveWay = [wish] }, clock, cancel).Formula;
        return relaxed is not null && hold.Balance.Read(relaxed, problem.Reference, Draws.Typical) is { } level
            ? new Conflict(wish, level, Phrases.Say("conflict-relaxed", ("wish", words), ("value", NumberWords.Enough(level, hold.Band)))) { Formula = relaxed }
            : new Conflict(wish, null, Phrases.Say("conflict-not-enough", ("wish", words)));
    }

    private Conflict DescribeNewIngredients(FormulaProblem problem, Deadline clock, CancellationToken cancel)
    {
        var count = ("count", problem.Habits.NewIngredients.ToString(CultureInfo.InvariantCulture));
        return Solve.Run(Without(problem, NewIngredients), clock, cancel).Formula is { } formula
            && new Level(Recheck.NewIngredients(problem.Start, formula).Length) is var enough
            ? new Conflict(NewIngredients, enough, Phrases.Say("conflict-new-ingredients-enough", count, ("value", NumberWords.Level(enough)))) { Formula = formula }
            : new Conflict(NewIngredients, null, Phrases.Say("conflict-new-ingredients", count));
    }

    private string Words(Hold hold)
    {
        var title = ("balance", hold.Balance.Settings.Title);
        return hold.Band switch
        {
            { Low: { } low, High: { } high } => Phrases.Say(
                "conflict-band", title, ("low", NumberWords.Level(low)), ("high", NumberWords.Level(high))),
            { Low: { } low } => Phrases.Say("conflict-floor", title, ("low", NumberWords.Level(low))),
            { High: { } high } => Phrases.Say("conflict-ceiling", title, ("high", NumberWords.Level(high))),
            _ => hold.Balance.Settings.Title,
        };
    }
}
