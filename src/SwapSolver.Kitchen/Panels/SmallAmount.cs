using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Panels;

/// <summary>How a law prints what is too little to be rounded to a step.</summary>
/// <param name="End">Where such amounts end, in the unit of the line.</param>
/// <param name="HoldsEnd">Whether the end itself is printed so.</param>
/// <param name="Prints">What stands on the label, as <c>0</c> or <c>&lt;1</c>.</param>
public sealed record SmallAmount(PanelAmount End, bool HoldsEnd, PrintedFigure Prints)
{
    /// <summary>Whether an amount is so small.</summary>
    internal bool Holds(decimal amount) => HoldsEnd ? amount <= (decimal)End.Value : amount < (decimal)End.Value;
}
