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
    /// <param name="problems">Ways to put the question, the strictest first; the first that can be met is answered.</param>
    /// <param name="notes">What a baker should know of each way.</param>
    /// <param name="clock">Time left.</param>
    /// <param name="cancel">Stops the search.</param>
    public Outcomes Find(
        Formula original,
        ImmutableArray<FormulaProblem> problems,
        ImmutableArray<ImmutableArray<string>> notes,
        Deadline clock,
        CancellationToken cancel)
    {
        for (var way = 0; way < problems.Length; way++)
        {
            var best = Solve.Run(problems[way], clock, cancel);
            if (best.Formula is not null)
            {
                return new Outcomes(Ranked(original, problems[way], best, notes[way], clock, cancel), [], null, false);
            }

            if (best.Outcome == Outcome.OutOfTime)
            {
                return Outcomes.OutOfTime;
            }
        }

        var widest = problems[^1];
        var conflict = Conflicts.Find(widest, clock, cancel);
        var nearest = Conflicts.Nearest(widest, clock, cancel);
        return new Outcomes([], conflict, nearest is null ? null : Explain(original, widest, nearest, notes[^1], false), false);
    }

    /// <summary>The first way that can be met, or null.</summary>
    public Answer? First(
        Formula original, ImmutableArray<FormulaProblem> problems, Deadline clock, CancellationToken cancel)
    {
        foreach (var problem in problems)
        {
            if (Solve.Run(problem, clock, cancel) is { Formula: { } formula } found)
            {
                return Explain(original, problem, formula, [], found.Outcome == Outcome.Feasible);
            }
        }

        return null;
    }

    /// <summary>An answer with everything that there is to say of a formula.</summary>
    public Answer Explain(
        Formula original, FormulaProblem problem, Formula formula, ImmutableArray<string> notes, bool isBestSoFar)
    {
        var phrases = Bakehouse.Phrases;
        var reference = problem.Reference;
        var samples = new FactSamples(reference.Lines.Concat(formula.Lines).Select(line => line.Ingredient));
        var readings = Readings.Of(
            Bakehouse.Balances.All.Where(balance => balance is not RoleMass || problem.Holds.Any(hold => hold.Balance == balance)),
            problem.Holds,
            formula,
            reference,
            samples);
        return new Answer(
            formula,
            readings,
            new Explanation(phrases).Changes(original, problem, formula),
            new CautionList(Bakehouse.Pantry, phrases).Of(original, formula, problem.Holds),
            samples.ChanceOfBalance(problem.Holds, reference, formula),
            Readings.Binding(readings),
            isBestSoFar ? notes.Add(phrases.Say("note-best-so-far")) : notes,
            isBestSoFar);
    }

    private ImmutableArray<Answer> Ranked(
        Formula original,
        FormulaProblem problem,
        FoundFormula best,
        ImmutableArray<string> notes,
        Deadline clock,
        CancellationToken cancel)
    {
        var answers = ImmutableArray.CreateBuilder<Answer>();
        var wanted = problem;
        var found = best;
        while (found.Formula is { } formula)
        {
            answers.Add(Explain(original, problem, formula, notes, found.Outcome == Outcome.Feasible));
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
