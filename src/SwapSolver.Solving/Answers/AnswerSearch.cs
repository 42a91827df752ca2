using System.Collections.Immutable;
using System.Globalization;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Models;

namespace SwapSolver.Solving.Answers;

/// <summary>From problems to explained answers.</summary>
/// <param name="Bakehouse">Everything that is known.</param>
/// <param name="Solver">The solver.</param>
public sealed record AnswerSearch(Bakehouse Bakehouse, ISolver Solver)
{
    /// <summary>The kitchens in which answers are tried.</summary>
    public Bags Bags { get; init; } = new();

    private FormulaSolve Solve => new(Solver);

    private SureSolve Sure => new(Solve, Bags);

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

        if (Unsure(original, ways, clock, cancel) is { } unsure)
        {
            return unsure;
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
            ? (Told(original, way, best, cancel), found.RanOutOfTime || best.Outcome == Outcome.Feasible)
            : (null, found.RanOutOfTime);
    }

    /// <summary>An answer with everything that there is to say of a formula.</summary>
    public Answer Explain(Formula original, Way way, Formula found, bool isBestSoFar)
    {
        var phrases = Bakehouse.Phrases;
        var formula = found.InOrderOfIds();
        var problem = way.Problem;
        var reference = problem.Reference;
        using var samples = new FactSamples(reference, formula, Bags);
        var balances = samples.Balances(problem.Holds, reference, formula);
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
            balances.AsSpan().Count(true) / (double)balances.Length,
            Readings.Binding(readings),
            isBestSoFar ? way.Notes.Add(phrases.Say("note-best-so-far")) : way.Notes,
            isBestSoFar)
        {
            Decisive = new DecisiveFacts(phrases).Of(samples, balances, problem.Holds),
        };
    }

    /// <summary>An answer that was solved for, with what its model says.</summary>
    private Answer Told(Formula original, Way way, FoundFormula found, CancellationToken cancel) =>
        Explain(original, WithPrice(way, found), found.Formula!, found.Outcome == Outcome.Feasible) with
        {
            Slack = new SlackSearch(Solver, Bakehouse.Phrases).Of(way.Problem, found, cancel),
            Model = way.Problem.Habits.ExplainModel ? MpsText.Of(found.Point?.Model.Model ?? FormulaModel.Build(way.Problem, wholeSteps: true).Model) : string.Empty,
        };

    /// <summary>Where a wish for sureness is all that stands in the way: how sure an answer can be.</summary>
    private Outcomes? Unsure(Formula original, ImmutableArray<Way> ways, Deadline clock, CancellationToken cancel)
    {
        (Way Way, FoundFormula Found, double Chance)? surest = null;
        foreach (var way in ways.Where(way => way.Problem.Habits.Sureness is not null))
        {
            var plain = Solve.Run(way.Problem, clock, cancel);
            if (plain.Formula is not null)
            {
                var (found, chance, _) = Sure.Surest(way.Problem, plain, way.Problem.Habits.Sureness!.Value.Share, clock, cancel);
                surest = surest is null || chance > surest.Value.Chance ? (way, found, chance) : surest;
            }
        }

        if (surest is not { } most)
        {
            return null;
        }

        var wish = new Conflict(
            "sureness",
            new Level(Math.Floor(most.Chance * 100)),
            Bakehouse.Phrases.Say(
                "conflict-sureness",
                ("count", NumberWords.Level(new Level(most.Way.Problem.Habits.Sureness!.Value.Value))),
                ("value", NumberWords.Level(new Level(Math.Floor(most.Chance * 100))))));
        return new Outcomes([], [wish], Explain(original, most.Way, most.Found.Formula!, false), clock.IsOver);
    }

    /// <summary>What a wish for sureness costs, against the plain answer.</summary>
    private Way WithPrice(Way way, FoundFormula found)
    {
        if (found is not { Plain: { } plain, Formula: { } formula })
        {
            return way;
        }

        var (plainChance, problem) = (Sure.ChanceOf(way.Problem, plain), way.Problem);
        return way with
        {
            Notes = way.Notes.Add(Bakehouse.Phrases.Say(
                "note-sureness",
                ("count", NumberWords.Level(new Level(problem.Habits.Sureness!.Value.Value))),
                ("before", NumberWords.Level(new Level(Math.Round(plainChance * 100)))),
                ("low", Recheck.ChangedLines(problem.Start, plain).ToString(CultureInfo.InvariantCulture)),
                ("high", Recheck.ChangedLines(problem.Start, formula).ToString(CultureInfo.InvariantCulture)))),
        };
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

            var found = Sure.Run(way.Problem, clock, cancel);
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
            answers.Add(Told(original, way with { Problem = wanted }, found, cancel));
            var added = Recheck.NewIngredients(problem.Start, formula);
            if (answers.Count == problem.Habits.Answers || added.IsEmpty || clock.IsOver)
            {
                break;
            }

            wanted = wanted with { Found = wanted.Found.Add(added) };
            found = Sure.Run(wanted, clock, cancel);
        }

        return answers.ToImmutable();
    }
}
