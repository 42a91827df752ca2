using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Kitchen.Wording;
using SwapSolver.Solving.Models;

namespace SwapSolver.Solving.Answers;

/// <summary>Says what a little more room in a band would buy. The choices and eggs of the answer are kept, which leaves a
/// linear program; the dual values of its rows say which bands cost something, and each is solved again with more room: what
/// is told is what that solve gives, over a range in which the dual value foretells it.</summary>
/// <param name="Solver">The solver.</param>
/// <param name="Phrases">The words.</param>
public sealed record SlackSearch(ISolver Solver, Phrases Phrases)
{
    /// <summary>Bands that are told of at most, the dearest first.</summary>
    private const int MostTold = 3;

    /// <summary>A smaller dual value is dust [objective a unit].</summary>
    private const double Dust = 1e-6;

    /// <summary>How much of a row's own size is tried first as room, and halved until the dual value holds [1].</summary>
    private const double FirstRoom = 0.05;

    private const int MostHalvings = 6;

    /// <summary>How near a solve must come to what the dual value foretells [1].</summary>
    private const double Agreement = 0.05;

    /// <summary>A line that moves by less is not worth telling [g].</summary>
    private static readonly Grams LeastMove = new(0.5);

    private static readonly TimeSpan Budget = TimeSpan.FromSeconds(2);

    /// <summary>What room would buy; none where the answer came in whole steps, which leave nothing to move.</summary>
    /// <param name="problem">What was asked.</param>
    /// <param name="found">The answer.</param>
    /// <param name="cancel">Stops the search.</param>
    public ImmutableArray<Slack> Of(FormulaProblem problem, FoundFormula found, CancellationToken cancel)
    {
        if (found.Point is not { } point)
        {
            return [];
        }

        var model = Fixed(point.Model.Model, point.Values);
        var plain = Solver.SolveLinear(model, Budget, cancel);
        return plain.Duals.Count == 0
            ? []
            :
            [
                .. point.Model.Bands
                    .Where(row => row.Hold.Balance is not (RoleMass or BatterMass) && Math.Abs(plain.Duals[row.Index]) > Dust)
                    .OrderByDescending(row => Math.Abs(plain.Duals[row.Index]))
                    .Take(MostTold)
                    .Select(row => With(problem, point.Model, model, plain, row, cancel))
                    .OfType<Slack>(),
            ];
    }

    /// <summary>The model with every whole number as it was found.</summary>
    private static Model Fixed(Model model, IReadOnlyList<double> values) => model with
    {
        Columns = [.. model.Columns.Select((column, index) => column.IsWhole ? column with { Low = Math.Round(values[index]), High = Math.Round(values[index]), IsWhole = false } : column)],
    };

    private Slack? With(FormulaProblem problem, FormulaModel lines, Model model, LinearSolution plain, BandRow band, CancellationToken cancel)
    {
        var dual = Math.Abs(plain.Duals[band.Index]);
        var room = FirstRoom * SizeOf(model.Rows[band.Index], plain.Solution.Values);
        for (var halvings = 0; halvings < MostHalvings; halvings++, room /= 2)
        {
            var loosened = model with
            {
                Rows = [.. model.Rows.Select((row, index) => index == band.Index ? row with { Low = row.Low - room } : row)],
            };
            var solved = Solver.SolveLinear(loosened, Budget, cancel).Solution;
            var gained = plain.Solution.Objective - solved.Objective;
            if (solved.Outcome == Outcome.Optimal && Math.Abs(gained - (dual * room)) <= Agreement * dual * room)
            {
                return Tell(problem, lines, band, plain.Solution, solved, dual * room);
            }
        }

        return null;
    }

    private Slack? Tell(FormulaProblem problem, FormulaModel lines, BandRow band, Solution plain, Solution loosened, double foretold)
    {
        var (before, after) = (At(problem, lines, plain), At(problem, lines, loosened));
        var most = lines.Lines.MaxBy(line => Math.Abs((after.MassOf(line.Ingredient) - before.MassOf(line.Ingredient)).Value))!.Ingredient;
        var (had, gets) = (before.MassOf(most), after.MassOf(most));
        if (Math.Abs((gets - had).Value) < LeastMove.Value
            || band.Hold.Balance.Read(before, problem.Reference, Draws.Typical) is not { } now
            || band.Hold.Balance.Read(after, problem.Reference, Draws.Typical) is not { } then)
        {
            return null;
        }

        var further = new Level(Math.Abs(then.Value - now.Value));
        var words = Phrases.Say(
            band.Side == Side.Low ? "slack-lower" : "slack-higher",
            ("value", NumberWords.Level(further)),
            ("title", band.Hold.Balance.Settings.Title),
            ("limit", NumberWords.Level(then)),
            ("ingredient", most.Name),
            ("before", NumberWords.Grams(new Grams(Math.Round(had.Value, 1)))),
            ("after", NumberWords.Grams(new Grams(Math.Round(gets.Value, 1)))));
        return new Slack(band.Hold.Balance, band.Side, further, most, had, gets, foretold, plain.Objective - loosened.Objective, words);
    }

    /// <summary>The formula at a point, not rounded to the scale.</summary>
    private static Formula At(FormulaProblem problem, FormulaModel lines, Solution solution) => problem.Reference with
    {
        Lines = [.. lines.Lines.Select(line => new Line(line.Ingredient, new Grams(Math.Max(0, solution.Values[line.Column] * line.GramsPerUnit))))],
    };

    /// <summary>The largest of a row's terms at a point: what its room is counted in.</summary>
    private static double SizeOf(ModelRow row, IReadOnlyList<double> values) =>
        row.Terms.Select(term => Math.Abs(term.Coefficient * values[term.Column])).DefaultIfEmpty(1).Max();
}
