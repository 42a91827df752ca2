using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Formulas;

/// <summary>What the batter is baked in or on.</summary>
public abstract record Shape;

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

/// <summary>A loaf set on a tray.</summary>
/// <param name="Length">Length [mm]; null where not known.</param>
/// <param name="Width">Width [mm]; null where not known.</param>
public sealed record FreeForm(Millimetres? Length, Millimetres? Width) : Shape;

/// <summary>Several small pieces.</summary>
/// <param name="Count">How many, 1 or more.</param>
public sealed record Pieces(int Count) : Shape;

/// <summary>The oven setting.</summary>
/// <param name="Dial">Dial temperature [°C].</param>
/// <param name="Fan">Whether the fan runs.</param>
public sealed record Oven(Celsius Dial, bool Fan);
