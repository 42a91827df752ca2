using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Solving.Models;

namespace SwapSolver.Solving.Answers;

/// <summary>From problems to explained answers.</summary>
/// <param name="Bakehouse">Everything that is known.</param>
/// <param name="Solver">The solver.</param>
public sealed record AnswerSearch(Bakehouse Bakehouse, ISolver Solver)
{
    private FormulaSolve Solve => new(Solver);

    private ConflictSearch Conflicts => new(Solve, Bakehouse.Phrases);

    /// <summary>The answers to a question, best first, differing in their new ingredients.</summary>
    /// <param name="original">The formula as the caller gave it.</param>
    /// <param name="ways">Ways to put the question, the strictest first; the cheapest that can be met is answered.</param>
    /// <param name="clock">Time left.</param>
    /// <param name="cancel">Stops the search.</param>
    public Outcomes Find(Formula original, ImmutableArray<Way> ways, Deadline clock, CancellationToken cancel)
    {
        var found = Cheapest(ways, clock, cancel);
        if (found is { Way: { } way, Best: { } best })
        {
            var answers = Ranked(original, way, best, clock, cancel);
            return new Outcomes(answers, [], null, found.RanOutOfTime || clock.IsOver || answers.Any(answer => answer.IsBestSoFar));
        }

        if (found.RanOutOfTime)
        {
            return Outcomes.OutOfTime;
        }

        var widest = ways[^1];
        var conflict = Conflicts.Find(widest.Problem, clock, cancel);
        var nearest = Conflicts.Nearest(widest.Problem, clock, cancel);
        return new Outcomes(
            [],
            conflict.Wishes,
            nearest is null ? null : Explain(original, widest, nearest, false),
            conflict.EndedEarly || nearest is null);
    }

    /// <summary>The answer of the cheapest way that can be met; no answer where none can, or the time ran out first.</summary>
    public (Answer? Answer, bool EndedEarly) Best(
        Formula original, ImmutableArray<Way> ways, Deadline clock, CancellationToken cancel)
    {
        var found = Cheapest(ways, clock, cancel);
        return found is { Way: { } way, Best: { Formula: { } formula } best }
            ? (Explain(original, way, formula, best.Outcome == Outcome.Feasible), found.RanOutOfTime || best.Outcome == Outcome.Feasible)
            : (null, found.RanOutOfTime);
    }

    /// <summary>An answer with everything that there is to say of a formula.</summary>
    public Answer Explain(Formula original, Way way, Formula formula, bool isBestSoFar)
    {
        var phrases = Bakehouse.Phrases;
        var problem = way.Problem;
        var reference = problem.Reference;
        var samples = new FactSamples(reference.Lines.Concat(formula.Lines).Select(line => line.Ingredient));
        var readings = Readings.Of(
            Told(problem),
            problem.Holds,
            formula,
            reference,
            samples);
        return new Answer(
            formula,
            readings,
            new Explanation(phrases).Changes(original, problem, formula),
            new CautionList(Bakehouse).Of(original, formula, problem.Holds),
            samples.ChanceOfBalance(problem.Holds, reference, formula),
            Readings.Binding(readings),
            isBestSoFar ? way.Notes.Add(phrases.Say("note-best-so-far")) : way.Notes,
            isBestSoFar);
    }

    /// <summary>What is told of an answer: the readings that every formula is judged by, and those that were asked for.</summary>
    private IEnumerable<Balance> Told(FormulaProblem problem)
    {
        var held = problem.Holds.Select(hold => hold.Balance).ToHashSet();
        return Bakehouse.Balances.All.Where(balance => balance is not RoleMass || held.Contains(balance))
            .Concat(Bakehouse.Balances.Portions.Where(held.Contains));
    }

    /// <summary>Tries the ways in their order. A later way is tried only where it could still be cheaper.</summary>
    private (Way? Way, FoundFormula? Best, bool RanOutOfTime) Cheapest(
        ImmutableArray<Way> ways, Deadline clock, CancellationToken cancel)
    {
        Way? cheapest = null;
        FoundFormula? best = null;
        foreach (var way in ways)
        {
            if (best is not null && best.Objective + cheapest!.Price <= way.Price)
            {
                continue;
            }

            var found = Solve.Run(way.Problem, clock, cancel);
            if (found.Outcome == Outcome.OutOfTime)
            {
                return (cheapest, best, true);
            }

            if (found.Formula is not null && (best is null || found.Objective + way.Price < best.Objective + cheapest!.Price))
            {
                (cheapest, best) = (way, found);
            }
        }

        return (cheapest, best, false);
    }

    private ImmutableArray<Answer> Ranked(
        Formula original, Way way, FoundFormula best, Deadline clock, CancellationToken cancel)
    {
        var answers = ImmutableArray.CreateBuilder<Answer>();
        var problem = way.Problem;
        var wanted = problem;
        var found = best;
        while (found.Formula is { } formula)
        {
            answers.Add(Explain(original, way, formula, found.Outcome == Outcome.Feasible));
            var added = Recheck.NewIngredients(problem.Start, formula);
            if (answers.Count == problem.Habits.Answers || added.IsEmpty || clock.IsOver)
            {
                break;
            }

            wanted = wanted with { Found = wanted.Found.Add(added) };
            found = Solve.Run(wanted, clock, cancel);
        }

        return answers.ToImmutable();
    }
}
