using System.CommandLine;
using SwapSolver.Console.Asking;

namespace SwapSolver.Console.Verbs;

/// <summary><c>formula</c>: the kitchen's formulas and all their revisions.</summary>
internal static class Formulas
{
    /// <summary>The verb with its own verbs.</summary>
    public static Command Create(Errand errand) =>
        new("formula", "The kitchen's formulas and all their revisions.")
        {
            FormulaSave.Create(errand),
            FormulaList.Create(errand),
            FormulaShow.Create(errand),
            FormulaHistory.Create(errand),
            FormulaDiff.Create(errand),
            FormulaCopy.Create(errand),
            FormulaChange.Publish(errand),
            FormulaChange.Unpublish(errand),
            FormulaChange.Remove(errand),
            FormulaChange.Restore(errand),
        };
}
