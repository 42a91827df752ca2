using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Formulas;

/// <summary>A rectangular tin, inner measures.</summary>
/// <param name="Length">Length [mm].</param>
/// <param name="Width">Width [mm].</param>
/// <param name="Height">Height [mm].</param>
public sealed record Tin(Millimetres Length, Millimetres Width, Millimetres Height) : Shape
{
    /// <summary>How many times this tin holds another, both filled alike [1].</summary>
    public double VolumeBy(Tin other) =>
        Length.Value * Width.Value * Height.Value / (other.Length.Value * other.Width.Value * other.Height.Value);
}
