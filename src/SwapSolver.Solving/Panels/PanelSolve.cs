using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;

namespace SwapSolver.Solving.Panels;

/// <summary>Solves the models of one panel within its time.</summary>
/// <param name="Solver">The solver.</param>
/// <param name="Given">The panel.</param>
/// <param name="Clock">Time left.</param>
/// <param name="Cancel">Stops the solving.</param>
internal sealed record PanelSolve(ISolver Solver, PanelCase Given, Deadline Clock, CancellationToken Cancel)
{
    /// <summary>Whether the held figures can be true together.</summary>
    /// <exception cref="TimeoutException">Time ran out.</exception>
    public bool CanBeTrue(PanelHolds holds, bool family) =>
        Run(new PanelModel(Given, holds, PanelNorm.HundredGrams, family).Builder.Build()).HasPoint;

    /// <summary>The least and the most of a fact, in its unit for 100 g.</summary>
    /// <exception cref="TimeoutException">Time ran out.</exception>
    public (double Low, double High) Ends(PanelHolds holds, PanelNorm norm, bool family, Fact fact)
    {
        double At(int sign)
        {
            var model = new PanelModel(Given, holds, norm, family, (fact, sign));
            return model.Of(fact, PanelModel.UnitOf(fact)) is var term && Run(model.Builder.Build()) is { HasPoint: true } found
                ? term.Coefficient * found.Values[term.Column]
                : throw new InvalidOperationException($"'{fact}' has no value where there was one before");
        }

        return (At(1), At(-1));
    }

    /// <summary>The best point of a model.</summary>
    /// <exception cref="TimeoutException">Time ran out.</exception>
    public Solution Run(Model model)
    {
        var solution = Clock.IsOver ? Solution.None(Outcome.OutOfTime) : Solver.Solve(model, Clock.Left, Cancel);
        return solution.Outcome is Outcome.Optimal or Outcome.Infeasible
            ? solution
            : throw new TimeoutException("the time for this panel is over");
    }
}
