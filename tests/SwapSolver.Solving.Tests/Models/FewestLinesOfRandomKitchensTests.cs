using SwapSolver.Loaves.Kitchens;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;
using Xunit.Abstractions;

namespace SwapSolver.Solving.Tests.Models;

/// <summary>Random kitchens cut down until every choice of lines can be tried, eggs by weight. What judges is the search: it has
/// no bound and no cut, and the linear programs in it are solved by another program than the answer.</summary>
public sealed class FewestLinesOfRandomKitchensTests(ITestOutputHelper output)
{
    private const int Kitchens = 20;

    private const int MostLines = 7;

    private const int MostCandidates = 6;

    private readonly List<string> faults = [];

    private int tried;

    [Fact]
    public void No_choice_of_lines_is_cheaper_than_the_answer_or_than_the_next_one_that_differs()
    {
        var (proven, alternatives) = (0, 0);
        foreach (var problem in Enumerable.Range(0, 100 * Kitchens).Select(RandomKitchens.Of).Select(Small).OfType<FormulaProblem>())
        {
            var found = Ask.Solve.Run(problem, Ask.Ample, CancellationToken.None);
            var formula = found.Formula!;
            var lines = Prove(problem.Reference.DisplayName, problem) + problem.Start.Lines.Count(line => problem.IsLeftOut(line.Ingredient));
            // Grams that were rounded from the best point change no line that it did not count; those in whole steps are of another model.
            if (found.Point is not null && Recheck.ChangedLines(problem.Start, formula) is var printed && printed > lines)
            {
                faults.Add($"{problem.Reference.DisplayName}: {printed} lines are printed changed, {lines} were counted");
            }

            var added = Recheck.NewIngredients(problem.Start, formula);
            if (!added.IsEmpty)
            {
                var next = problem with { Found = [added] };
                Prove($"{problem.Reference.DisplayName}, the next", next);
                if (Ask.Solve.Run(next, Ask.Ample, CancellationToken.None).Formula is { } other)
                {
                    alternatives++;
                    if (!added.Except(Recheck.NewIngredients(problem.Start, other)).Any())
                    {
                        faults.Add($"{problem.Reference.DisplayName}: the alternative has all that is new in the answer");
                    }
                }
            }

            if (++proven == Kitchens)
            {
                break;
            }
        }

        output.WriteLine($"{proven} kitchens, {alternatives} alternatives, {tried} linear programs");
        Expect.None(faults);
        Assert.Equal(Kitchens, proven);
        Assert.True(alternatives >= Kitchens / 4, $"only {alternatives} kitchens have an alternative");
    }

    /// <summary>The kitchen with six ingredients that may be new, those of its own answer first; null where more lines may
    /// move, or where it has no answer.</summary>
    private static FormulaProblem? Small(RandomKitchen kitchen)
    {
        var problem = kitchen.Problem with { Habits = kitchen.Problem.Habits with { WeighedEgg = true } };
        var model = FormulaModel.Build(problem, wholeSteps: false).Model;
        if (model.Columns.Count(column => column.Name.StartsWith("changed_", StringComparison.Ordinal)) > MostLines
            || Ask.Solve.Run(problem, Ask.Ample, CancellationToken.None).Formula is not { } formula)
        {
            return null;
        }

        var used = Recheck.NewIngredients(problem.Start, formula);
        return problem with
        {
            Reference = problem.Reference with { DisplayName = kitchen.Name },
            Candidates = [.. problem.Candidates.Where(one => !problem.IsLeftOut(one)).OrderByDescending(used.Contains).Take(MostCandidates)],
        };
    }

    /// <summary>Tries every choice whose lines alone do not already cost more than the answer; a part of a choice that no grams
    /// can keep is tried no further. What a choice costs is at least what its lines cost, for no other cost is below 0.
    /// Returns how many lines the answer's own point counts as changed or new.</summary>
    private int Prove(string name, FormulaProblem problem)
    {
        var model = FormulaModel.Build(problem, wholeSteps: false).Model;
        var best = Ask.Search.Solver.Solve(model, TimeSpan.FromSeconds(30), CancellationToken.None);
        Assert.All(model.Columns, column => Assert.True(column.Cost >= 0, column.Name));
        int[] choices = [.. Enumerable.Range(0, model.Columns.Count).Where(column => model.Columns[column].IsWhole)];
        var most = best.HasPoint ? best.Objective : double.PositiveInfinity;
        var cheapest = double.PositiveInfinity;
        Try(0, 0, [.. model.Columns.Select(column => column with { IsWhole = false })]);
        if (best.HasPoint ? !(Math.Abs(cheapest - best.Objective) <= 1e-6 * Math.Max(1, best.Objective)) : double.IsFinite(cheapest))
        {
            faults.Add($"{name}: the answer counts {best.Objective:R}, the cheapest choice {cheapest:R}");
        }

        return best.HasPoint ? choices.Count(choice => best.Values[choice] > 0.5 && model.Columns[choice].Cost > 0) : 0;

        void Try(int at, double lines, Column[] columns)
        {
            if (lines > most + 1e-6)
            {
                return;
            }

            tried++;
            var (solution, _) = Ask.Search.Solver.SolveLinear(model with { Columns = columns }, TimeSpan.FromSeconds(30), CancellationToken.None);
            if (!solution.HasPoint)
            {
                return;
            }

            if (at == choices.Length)
            {
                cheapest = Math.Min(cheapest, solution.Objective);
                return;
            }

            foreach (var taken in new[] { 0, 1 })
            {
                var given = (Column[])columns.Clone();
                given[choices[at]] = given[choices[at]] with { Low = taken, High = taken };
                Try(at + 1, lines + (taken * given[choices[at]].Cost), given);
            }
        }
    }
}
