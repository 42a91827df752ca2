using System.Collections.Immutable;

namespace SwapSolver.Kitchen.Panels;

/// <summary>A nutrition panel as printed. A line that is not there is not known; it is never taken to be nothing.</summary>
/// <param name="Basis">Whose law it follows.</param>
/// <param name="Serving">What its figures are for [g]; above 0.</param>
/// <param name="Figures">The printed figures, each in the unit of its line, for one serving.</param>
public sealed record NutritionPanel(
    PanelBasis Basis, PrintedFigure Serving, ImmutableDictionary<PanelLine, PrintedFigure> Figures)
{
    /// <summary>Whether the figures are for 100 g by definition, and not for a serving that was weighed and rounded.</summary>
    public bool IsPerHundredGrams => Basis == PanelBasis.EuropeanUnion && Serving.Value.Value == 100;
}
