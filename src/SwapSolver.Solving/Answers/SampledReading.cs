using System.Buffers;
using System.Numerics.Tensors;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Solving.Answers;

/// <summary>Reads a balance of a formula in all kitchens at once: the same sums as <see cref="Balance.Read"/>, a row of kitchens at a
/// time instead of a kitchen at a time.</summary>
internal static class SampledReading
{
    /// <summary>The reading by kitchen; not a number where there is none.</summary>
    /// <param name="balance">The balance.</param>
    /// <param name="formula">The formula that is measured.</param>
    /// <param name="reference">The formula that the basis is taken from.</param>
    /// <param name="bagOf">The bags.</param>
    /// <param name="kitchens">How many kitchens there are.</param>
    public static double[] Of(Balance balance, Formula formula, Formula reference, Func<Kitchen.Ingredients.Ingredient, Bag> bagOf, int kitchens)
    {
        (double Grams, SampledCoefficients PerGram)[] lines =
            [.. formula.Lines.Where(line => line.Grams > Grams.None).Select(line => (line.Grams.Value, bagOf(line.Ingredient).Of(balance, reference)))];
        var pool = ArrayPool<double>.Shared;
        var (bottom, least, sum) = (pool.Rent(kitchens), pool.Rent(kitchens), pool.Rent(kitchens));
        try
        {
            var below = bottom.AsSpan(0, kitchens);
            below.Fill(balance.Basis(reference).Constant);
            foreach (var (grams, perGram) in lines)
            {
                Add(perGram.Basis, grams, below);
            }

            var levels = new double[kitchens];
            var parts = balance.Parts;
            for (var part = 0; part < parts.Length; part++)
            {
                var smallest = least.AsSpan(0, kitchens);
                for (var term = 0; term < parts[part].Length; term++)
                {
                    var of = sum.AsSpan(0, kitchens);
                    of.Clear();
                    foreach (var (grams, perGram) in lines)
                    {
                        Add(perGram.Parts[part][term], grams, of);
                    }

                    if (term == 0)
                    {
                        of.CopyTo(smallest);
                    }
                    else
                    {
                        TensorPrimitives.Min(smallest, of, smallest);
                    }
                }

                TensorPrimitives.Add(levels, smallest, levels);
            }

            for (var kitchen = 0; kitchen < kitchens; kitchen++)
            {
                levels[kitchen] = below[kitchen] == 0 ? double.NaN : levels[kitchen] / below[kitchen];
            }

            return levels;
        }
        finally
        {
            pool.Return(bottom);
            pool.Return(least);
            pool.Return(sum);
        }
    }

    private static void Add(double[] perGram, double grams, Span<double> sum)
    {
        if (perGram.Length == 1)
        {
            TensorPrimitives.Add(sum, perGram[0] * grams, sum);
        }
        else
        {
            TensorPrimitives.MultiplyAdd(perGram, grams, sum, sum);
        }
    }
}
