using SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Solving.Questions;

/// <summary>A formula with the two readings that are traded.</summary>
internal sealed record TradedFormula(Formula Formula, double First, double Second);
