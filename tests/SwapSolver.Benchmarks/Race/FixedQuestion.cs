using SwapSolver.Solving.Models;

namespace SwapSolver.Benchmarks.Race;

/// <summary>A question that is always the same, as the model that its strict way is.</summary>
/// <param name="Kind">Kind of question.</param>
/// <param name="Name">What is asked of which loaf.</param>
/// <param name="Model">The model.</param>
public sealed record FixedQuestion(string Kind, string Name, Model Model);
