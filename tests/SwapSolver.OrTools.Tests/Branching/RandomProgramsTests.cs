using SwapSolver.OrTools.Branching;
using SwapSolver.Solving.Models;

namespace SwapSolver.OrTools.Tests.Branching;

/// <summary>The simplex against the package's linear solver, the tree against trying every point, and the bound against both.</summary>
public sealed class RandomProgramsTests
{
    private const int Programs = 2_000;

    private static readonly TimeSpan Ample = TimeSpan.FromSeconds(20);

    private readonly OrToolsSolver solver = new();

    [Fact]
    public void Linear_programs_end_as_with_the_linear_solver_of_the_package()
    {
        var feasible = 0;
        for (var number = 0; number < Programs; number++)
        {
            var model = RandomPrograms.Linear(number);
            var (ours, other) = (solver.Solve(model, Ample, CancellationToken.None), solver.SolveLinear(model, Ample, CancellationToken.None).Solution);
            Assert.True(ours.Outcome == other.Outcome, $"{number}: {ours.Outcome}, the package says {other.Outcome}");
            if (ours.HasPoint)
            {
                feasible++;
                Assert.True(Math.Abs(ours.Objective - other.Objective) <= 1e-6 * Math.Max(1, Math.Abs(other.Objective)), $"{number}: {ours.Objective}, the package says {other.Objective}");
                Assert.True(model.Broken(ours.Values, 1e-7) is null, $"{number}: {model.Broken(ours.Values, 1e-7)} is broken");
            }
        }

        Assert.InRange(feasible, Programs / 4, Programs * 3 / 4);
    }

    [Fact]
    public void Whole_programs_end_as_with_trying_every_point()
    {
        var feasible = 0;
        for (var number = 0; number < Programs; number++)
        {
            var model = RandomPrograms.Whole(number);
            var solution = solver.Solve(model, Ample, CancellationToken.None);
            double? best = null;
            foreach (var point in Points(model, 0, new double[model.Columns.Count]))
            {
                best = model.Broken(point, 1e-9) is null && !(model.Objective(point) >= best) ? model.Objective(point) : best;
            }

            Assert.True(best is null ? solution.Outcome == Outcome.Infeasible : solution.Outcome == Outcome.Optimal && Math.Abs(solution.Objective - best.Value) < 1e-9, $"{number}: {solution.Outcome} {solution.Objective}, by trying {best}");
            feasible += best is null ? 0 : 1;
        }

        Assert.InRange(feasible, Programs / 4, Programs * 3 / 4);
    }

    [Fact]
    public void No_multipliers_prove_more_than_the_best_point()
    {
        var proven = 0;
        for (var number = 0; number < Programs; number++)
        {
            var model = RandomPrograms.Linear(number);
            var solution = solver.SolveLinear(model, Ample, CancellationToken.None).Solution;
            if (!solution.HasPoint)
            {
                continue;
            }

            var reduced = Reduction.Of(model)!;
            var random = new Random(number);
            double[] multipliers = [.. Enumerable.Range(0, reduced.Rows).Select(_ => random.NextDouble() - 0.5)];
            var bound = reduced.Constant + reduced.LeastOf(reduced.Costs, multipliers, reduced.Low, reduced.High, new double[reduced.Columns]);
            Assert.True(bound <= solution.Objective + 1e-6, $"{number}: {bound} beside {solution.Objective}");
            // Without costs the same sum is never above nothing where a point is.
            Assert.True(reduced.LeastOf(null, multipliers, reduced.Low, reduced.High, new double[reduced.Columns]) <= 1e-6, $"{number}");
            proven += double.IsFinite(bound) ? 1 : 0;
        }

        Assert.True(proven > Programs / 4, $"only {proven} bounds say anything");
    }

    private static IEnumerable<double[]> Points(Model model, int column, double[] point)
    {
        if (column == point.Length)
        {
            yield return point;
            yield break;
        }

        for (var value = model.Columns[column].Low; value <= model.Columns[column].High; value++)
        {
            point[column] = value;
            foreach (var one in Points(model, column + 1, point))
            {
                yield return one;
            }
        }
    }
}
