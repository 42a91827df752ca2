using SwapSolver.Kitchen.Foods;

namespace SwapSolver.Tables;

/// <summary>A row that was let in.</summary>
/// <param name="Line">Number of its line in the table, from 1.</param>
/// <param name="Food">What it states.</param>
public sealed record FoodRow(int Line, StatedFood Food);
