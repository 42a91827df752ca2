using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Formulas;

/// <summary>A loaf set on a tray.</summary>
/// <param name="Length">Length [mm]; null where not known.</param>
/// <param name="Width">Width [mm]; null where not known.</param>
public sealed record FreeForm(Millimetres? Length, Millimetres? Width) : Shape;
