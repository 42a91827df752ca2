using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Labels;

/// <summary>What share of a loaf each portion is.</summary>
/// <param name="Slice">One slice [%].</param>
/// <param name="Serving">One serving [%].</param>
/// <param name="HundredGrams">100 g as baked [%]; above 100 where the loaf weighs less.</param>
public sealed record PortionShares(Percent Slice, Percent Serving, Percent HundredGrams)
{
    /// <summary>The shares of a formula.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="servingSlices">Slices in a serving, 1 or more.</param>
    public static PortionShares Of(Formula formula, int servingSlices)
    {
        var slice = 100.0 / formula.Slices;
        return new PortionShares(new Percent(slice), new Percent(slice * servingSlices), new Percent(new Grams(100) / formula.BakedMass * 100));
    }
}
