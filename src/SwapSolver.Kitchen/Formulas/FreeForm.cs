using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Formulas;

/// <summary>A loaf set on a tray.</summary>
/// <param name="Length">Length [mm]; null where not known.</param>
/// <param name="Width">Width [mm]; null where not known.</param>
public sealed record FreeForm(Millimetres? Length, Millimetres? Width) : Shape
{
    /// <summary>A loaf of the same shape and so many times the batter: on a tray nothing holds its measures.</summary>
    /// <param name="factor">New mass by the old, above 0.</param>
    public FreeForm Scaled(double factor)
    {
        Millimetres? Of(Millimetres? side) => side is { } known ? new Millimetres(known.Value * Math.Cbrt(factor)) : null;
        return new FreeForm(Of(Length), Of(Width));
    }
}
