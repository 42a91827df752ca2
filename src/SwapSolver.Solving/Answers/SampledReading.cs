using System.Buffers;
using System.Numerics.Tensors;
using System.Runtime.InteropServices;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Solving.Answers;

/// <summary>Reads a balance of a formula in all kitchens at once: the same sums as <see cref="Balance.Read"/>, some kitchens at a
/// time instead of one; what is the same in all kitchens is added once.</summary>
internal static class SampledReading
{
    /// <summary>Kitchens that are summed up together: their sums stay in the processor's nearest memory.</summary>
    private const int AtATime = 1024;

    /// <summary>The reading by kitchen, not a number where there is none; one figure where all kitchens read the same.</summary>
    /// <param name="balance">The balance.</param>
    /// <param name="formula">The formula that is measured.</param>
    /// <param name="reference">The formula that the basis is taken from.</param>
    /// <param name="bagOf">The bags.</param>
    /// <param name="kitchens">How many kitchens there are.</param>
    /// <param name="room">Where figures of all kitchens are put; null for room of their own.</param>
    public static double[] Of(
        Balance balance, Formula formula, Formula reference, Func<Ingredient, Bag> bagOf, int kitchens, Func<double[]>? room = null)
    {
        var lines = new List<(double Grams, SampledCoefficients PerGram)>(formula.Lines.Length);
        foreach (var line in formula.Lines)
        {
            if (line.Grams > Grams.None)
            {
                lines.Add((line.Grams.Value, bagOf(line.Ingredient).Of(balance, reference)));
            }
        }

        var basis = new SampledSum(balance.Basis(reference).Constant, CollectionsMarshal.AsSpan(lines), static perGram => perGram.Basis);
        var parts = PartsOf(balance, CollectionsMarshal.AsSpan(lines));
        var count = basis.IsSame && Array.TrueForAll(parts, static sums => Array.TrueForAll(sums, static sum => sum.IsSame)) ? 1 : kitchens;
        var levels = count == kitchens && room is not null ? room() : GC.AllocateUninitializedArray<double>(count);
        var pooled = ArrayPool<double>.Shared.Rent(3 * AtATime);
        for (var from = 0; from < count; from += AtATime)
        {
            var size = Math.Min(AtATime, count - from);
            Read(basis, parts, from, levels.AsSpan(from, size), pooled.AsSpan(0, size), pooled.AsSpan(AtATime, size), pooled.AsSpan(2 * AtATime, size));
        }

        ArrayPool<double>.Shared.Return(pooled);
        return levels;
    }

    private static SampledSum[][] PartsOf(Balance balance, ReadOnlySpan<(double Grams, SampledCoefficients PerGram)> lines)
    {
        var rule = balance.Parts;
        var parts = new SampledSum[rule.Length][];
        for (var part = 0; part < parts.Length; part++)
        {
            parts[part] = new SampledSum[rule[part].Length];
            for (var sum = 0; sum < parts[part].Length; sum++)
            {
                var (ofPart, ofSum) = (part, sum);
                parts[part][sum] = new SampledSum(0, lines, perGram => perGram.Parts[ofPart][ofSum]);
            }
        }

        return parts;
    }

    private static void Read(SampledSum basis, SampledSum[][] parts, int from, Span<double> levels, Span<double> least, Span<double> other, Span<double> bottom)
    {
        Least(parts[0], from, levels, other);
        foreach (var sums in parts.AsSpan(1))
        {
            Least(sums, from, least, other);
            TensorPrimitives.Add(levels, least, levels);
        }

        basis.Of(from, bottom);
        TensorPrimitives.Divide(levels, bottom, levels);
        if (TensorPrimitives.MinMagnitude<double>(bottom) > 0)
        {
            return;
        }

        for (var kitchen = 0; kitchen < levels.Length; kitchen++)
        {
            levels[kitchen] = bottom[kitchen] == 0 ? double.NaN : levels[kitchen];
        }
    }

    private static void Least(SampledSum[] sums, int from, Span<double> least, Span<double> other)
    {
        sums[0].Of(from, least);
        foreach (var sum in sums.AsSpan(1))
        {
            sum.Of(from, other);
            TensorPrimitives.Min(least, other, least);
        }
    }
}
