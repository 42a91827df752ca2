using SwapSolver.Kitchen.Balances;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Models;

/// <summary>The row of a model that holds one side of a band.</summary>
/// <param name="Hold">What it holds.</param>
/// <param name="Side">The side.</param>
/// <param name="Index">Place of the row in the model.</param>
public sealed record BandRow(Hold Hold, Side Side, int Index);
