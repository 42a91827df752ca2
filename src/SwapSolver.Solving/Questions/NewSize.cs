using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Solving.Questions;

/// <summary>The size that a formula is wanted in.</summary>
/// <param name="Factor">New batter mass by the old [1].</param>
/// <param name="Slices">Slices that the new loaf is cut into.</param>
/// <param name="Shape">What it is baked in; null where it is not said.</param>
public sealed record NewSize(double Factor, int Slices, Shape? Shape)
{
    /// <summary>So many times the formula.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="factor">Above 0.</param>
    public static NewSize Times(Formula formula, double factor)
    {
        // Slices as large as before.
        var slices = Math.Max(1, (int)Math.Round(Math.Min(formula.Slices * factor, int.MaxValue), MidpointRounding.AwayFromZero));
        return new NewSize(factor, slices, formula.Shape is FreeForm loaf ? loaf.Scaled(factor) : formula.Shape).CutInto(slices);
    }

    /// <summary>A batter of so much.</summary>
    public static NewSize OfMass(Formula formula, Grams batter) => Times(formula, batter / formula.BatterMass);

    /// <summary>So many slices as large as the formula's own.</summary>
    public static NewSize OfSlices(Formula formula, int slices) =>
        Times(formula, slices / (double)formula.Slices).CutInto(slices);

    /// <summary>Another tin, filled as full as the formula fills its own.</summary>
    public static NewSize OfTin(Formula formula, Tin own, Tin tin) => Times(formula, tin.VolumeBy(own)) with { Shape = tin };

    /// <summary>A tin for a formula that has none of its own.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="tin">The tin.</param>
    /// <param name="batter">What fills it [g].</param>
    public static NewSize OfFirstTin(Formula formula, Tin tin, Grams batter) => OfMass(formula, batter) with { Shape = tin };

    /// <summary>The same size in so many slices; of pieces, there are as many.</summary>
    public NewSize CutInto(int slices) =>
        this with { Slices = slices, Shape = Shape is Pieces ? new Pieces(slices) : Shape };
}
