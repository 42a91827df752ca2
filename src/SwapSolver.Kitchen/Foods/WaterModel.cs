using SwapSolver.Kitchen.Quantities;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Kitchen.Foods;

/// <summary>Water that a dry food holds, guessed from what it is made of. Wide on purpose.</summary>
/// <param name="Fibre">Water that a gram of fibre holds in the centrifuge [g/g].</param>
/// <param name="Protein">The same of protein [g/g].</param>
/// <param name="Starch">The same of starch [g/g].</param>
/// <param name="BatterShare">Share of the centrifuge figure that a batter sees [1].</param>
/// <param name="WetFrom">Water from which a food has drunk its fill and binds no more [g in 100 g].</param>
/// <param name="Source">Key of the source.</param>
public sealed record WaterModel(Range Fibre, Range Protein, Range Starch, Range BatterShare, Grams WetFrom, string Source)
{
    /// <summary>Water held in the centrifuge [g/g].</summary>
    /// <param name="fibre">Fibre [g/100 g]; where it is not known, from none to all of the carbohydrate.</param>
    /// <param name="protein">Protein [g/100 g].</param>
    /// <param name="starch">What is left of the carbohydrate [g/100 g].</param>
    public Range Centrifuge(Range fibre, Range protein, Range starch) => new(
        ((Fibre.Low * fibre.Low) + (Protein.Low * protein.Low) + (Starch.Low * starch.Low)) / 100,
        ((Fibre.Typical * fibre.Typical) + (Protein.Typical * protein.Typical) + (Starch.Typical * starch.Typical)) / 100,
        ((Fibre.High * fibre.High) + (Protein.High * protein.High) + (Starch.High * starch.High)) / 100);

    /// <summary>Water bound in a batter [g/g].</summary>
    public Range Batter(Range centrifuge) => new(
        centrifuge.Low * BatterShare.Low, centrifuge.Typical * BatterShare.Typical, centrifuge.High * BatterShare.High);
}
