using System.Numerics.Tensors;

namespace SwapSolver.Solving.Answers;

/// <summary>A sum over the lines of a formula, by kitchen: what all kitchens have alike, and the lines that differ.</summary>
internal readonly struct SampledSum
{
    private readonly double alike;

    private readonly (double Grams, double[] PerGram)[] differing;

    /// <summary>Adds up lines.</summary>
    /// <param name="constant">What is there whatever the grams are.</param>
    /// <param name="lines">The lines, each with what one gram adds.</param>
    /// <param name="sumOf">Which of a line's sums is added up: by kitchen, or one figure for all.</param>
    public SampledSum(double constant, ReadOnlySpan<(double Grams, SampledCoefficients PerGram)> lines, Func<SampledCoefficients, double[]> sumOf)
    {
        alike = constant;
        var count = 0;
        foreach (var (grams, perGram) in lines)
        {
            if (sumOf(perGram) is [var same])
            {
                alike += grams * same;
            }
            else
            {
                count++;
            }
        }

        differing = count == 0 ? [] : new (double, double[])[count];
        foreach (var (grams, perGram) in lines)
        {
            if (sumOf(perGram) is { Length: > 1 } byKitchen)
            {
                differing[^count--] = (grams, byKitchen);
            }
        }
    }

    /// <summary>Whether all kitchens have the same sum.</summary>
    public bool IsSame => differing.Length == 0;

    /// <summary>The sums of some kitchens.</summary>
    /// <param name="from">The first of them.</param>
    /// <param name="sums">One a kitchen.</param>
    public void Of(int from, Span<double> sums)
    {
        sums.Fill(alike);
        foreach (var (grams, perGram) in differing)
        {
            TensorPrimitives.MultiplyAdd(perGram.AsSpan(from, sums.Length), grams, sums, sums);
        }
    }
}
