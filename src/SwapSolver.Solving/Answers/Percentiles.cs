using System.Buffers;
using System.Numerics.Tensors;
using System.Runtime.InteropServices;

namespace SwapSolver.Solving.Answers;

/// <summary>The 5th and the 95th percentile of many figures. They are counted into bins of one width, but for half a bin at either end, and only those of the two bins in which
/// the percentiles lie are put in order: to put all in order twice took a tenth of a question's time.</summary>
internal static class Percentiles
{
    private const int Bins = 256;

    /// <summary>A figure so large that what is added to it is rounded to a whole one, and stands in its last bits.</summary>
    private const double Whole = 1L << 52;

    /// <summary>Figures that are put in order at once: for so few to count takes longer.</summary>
    private const int Few = 128;

    /// <summary>Both, exactly: the figure that a twentieth of all lies below, and the one that a twentieth lies above.</summary>
    /// <param name="figures">At least one figure, and none that is not a number.</param>
    public static (double Low, double High) Of(ReadOnlySpan<double> figures)
    {
        var (first, last) = (figures.Length / 20, figures.Length - (figures.Length / 20) - 1);
        var (least, most) = (TensorPrimitives.Min(figures), TensorPrimitives.Max(figures));
        if (least == most)
        {
            return (least, most);
        }

        var perBin = (Bins - 1) / (most - least);
        if (figures.Length <= Few || !double.IsNormal(perBin))
        {
            var all = figures.ToArray();
            Array.Sort(all);
            return (all[first], all[last]);
        }

        var rented = ArrayPool<double>.Shared.Rent(figures.Length);
        var scaled = rented.AsSpan(0, figures.Length);
        // Of two figures the larger never has the lower bin, however their last digits fall.
        TensorPrimitives.Subtract(figures, least, scaled);
        TensorPrimitives.Multiply(scaled, perBin, scaled);
        TensorPrimitives.Add(scaled, Whole, scaled);
        ReadOnlySpan<long> places = MemoryMarshal.Cast<double, long>(scaled);
        Span<int> counts = stackalloc int[Bins];
        counts.Clear();
        foreach (var place in places)
        {
            counts[(byte)place]++;
        }

        var both = (At(first, figures, places, counts), At(last, figures, places, counts));
        ArrayPool<double>.Shared.Return(rented);
        return both;
    }

    /// <summary>The figure of a rank, 0 for the least.</summary>
    private static double At(int rank, ReadOnlySpan<double> figures, ReadOnlySpan<long> places, ReadOnlySpan<int> counts)
    {
        var bin = 0;
        for (; rank >= counts[bin]; bin++)
        {
            rank -= counts[bin];
        }

        var those = ArrayPool<double>.Shared.Rent(counts[bin]);
        var place = BitConverter.DoubleToInt64Bits(Whole) + bin;
        for (var (count, one) = (0, -1); count < counts[bin]; count++)
        {
            one += places[(one + 1)..].IndexOf(place) + 1;
            those[count] = figures[one];
        }

        Array.Sort(those, 0, counts[bin]);
        var figure = those[rank];
        ArrayPool<double>.Shared.Return(those);
        return figure;
    }
}
