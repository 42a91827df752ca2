using System.Collections.Immutable;
using SwapSolver.Solving.Models;

namespace SwapSolver.Solving.Answers;

/// <summary>One way to put a question.</summary>
/// <param name="Problem">The problem.</param>
/// <param name="Price">What going this way counts, by the <see cref="Weights"/>; the usual way counts nothing.</param>
/// <param name="Notes">What a baker should know of an answer that came this way.</param>
public sealed record Way(FormulaProblem Problem, double Price, ImmutableArray<string> Notes);
