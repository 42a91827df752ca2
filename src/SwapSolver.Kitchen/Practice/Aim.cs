using SwapSolver.Kitchen.Balances;

namespace SwapSolver.Kitchen.Practice;

/// <summary>One reading that a goal moves, to a share of the formula's own.</summary>
/// <param name="Balance">The rule whose reading it is.</param>
/// <param name="Share">Where it is to lie by the formula's own reading.</param>
public sealed record Aim(Balance Balance, OwnShare Share);
