using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Answers;

namespace SwapSolver.Solving.Questions;

/// <summary>One point of a trade-off.</summary>
/// <param name="First">The one reading.</param>
/// <param name="Second">The other.</param>
/// <param name="Answer">The formula that has them.</param>
public sealed record FrontierPoint(Level First, Level Second, Answer Answer);
