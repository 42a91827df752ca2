namespace SwapSolver.Solving.Models;

/// <summary>Solves models. A call blocks its thread until it is done, out of time or cancelled.</summary>
public interface ISolver
{
    /// <summary>Solves a model.</summary>
    /// <param name="model">The model; guarded by the solver's room before any native call.</param>
    /// <param name="budget">Most time to take.</param>
    /// <param name="cancel">Stops the solve.</param>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    Solution Solve(Model model, TimeSpan budget, CancellationToken cancel);

    /// <summary>Solves a model without whole numbers, with the dual values of its rows.</summary>
    /// <param name="model">The model; no column is whole.</param>
    /// <param name="budget">Most time to take.</param>
    /// <param name="cancel">Stops the solve.</param>
    /// <exception cref="ArgumentException">A column is whole.</exception>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    LinearSolution SolveLinear(Model model, TimeSpan budget, CancellationToken cancel);
}
