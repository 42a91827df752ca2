using SwapSolver.Records.Formulas;

namespace SwapSolver.Service.Stored;

/// <summary>A formula that was found by its name.</summary>
/// <param name="Formula">The formula.</param>
/// <param name="Head">Where it stands; null where it is shipped.</param>
/// <param name="Revision">The revision that it is; null where it is shipped.</param>
internal sealed record StoredFormula(V1.Formula Formula, FormulaHead? Head, Revision? Revision);
