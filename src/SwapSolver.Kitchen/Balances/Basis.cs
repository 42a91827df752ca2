using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Balances;

/// <summary>What a reading is counted on: a sum over the grams and a fixed part. Per slice and per loaf have
/// only the fixed part; batter and facts have only the sum.</summary>
/// <param name="PerGram">What one gram of an ingredient adds to the basis.</param>
/// <param name="Constant">What is there whatever the grams are, in the same unit.</param>
public sealed record Basis(Func<FactSheet, PerGram> PerGram, double Constant)
{
    /// <summary>The batter mass [g].</summary>
    public static readonly Basis Batter = new(static _ => Quantities.PerGram.Itself, 0);

    /// <summary>The whole loaf [loaf].</summary>
    public static readonly Basis Loaf = new(static _ => Quantities.PerGram.None, 1);

    /// <summary>So many slices [slice].</summary>
    public static Basis Slices(int count) => new(static _ => Quantities.PerGram.None, count);

    /// <summary>A fixed mass [g].</summary>
    public static Basis Mass(Grams mass) => new(static _ => Quantities.PerGram.None, mass.Value);

    /// <summary>The sum of a fact over the grams.</summary>
    public static Basis Of(Fact fact) => new(facts => new PerGram(facts[fact]), 0);
}
