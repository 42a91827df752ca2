using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Panels;

/// <summary>Amounts that a law rounds in one step.</summary>
/// <param name="From">Least amount, in the unit of the line.</param>
/// <param name="To">Greatest amount; may be endless.</param>
/// <param name="Step">They are rounded to the nearest of these; above 0.</param>
public sealed record RoundingBand(PanelAmount From, PanelAmount To, PanelAmount Step)
{
    /// <summary>How many digits after the point it takes to print a step.</summary>
    internal int Decimals => ((decimal)Step.Value).Scale;

    /// <summary>Whether a number stands on a step.</summary>
    internal bool Prints(PanelAmount printed) => (decimal)printed.Value % (decimal)Step.Value == 0;
}
