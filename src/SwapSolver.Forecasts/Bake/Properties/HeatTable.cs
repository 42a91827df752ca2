using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace SwapSolver.Forecasts;

/// <summary>Heat of the dry matter and of the water of a batter, in a table over the temperature: it hangs on what the batter is made of alone,
/// so that every bake of one formula reads the same.</summary>
internal sealed class HeatTable
{
    private const double Coldest = -20, Hottest = 360, Step = 0.5;

    /// <summary>Dry heat and water heat of each temperature, side by side: one step reads both.</summary>
    private readonly double[] table;

    /// <summary>Heat above 0 °C of a kilogram of dry matter and of water at each temperature of the table [J/kg].</summary>
    private readonly double[] dryEnthalpy, waterEnthalpy;

    /// <summary>Fills the table.</summary>
    /// <param name="dryHeat">Heat capacity of its dry matter [J/(kg K)].</param>
    /// <param name="waterHeat">Heat capacity of its water [J/(kg K)].</param>
    public HeatTable(Func<double, double> dryHeat, Func<double, double> waterHeat)
    {
        table = [.. Temperatures.SelectMany(celsius => new[] { dryHeat(celsius), waterHeat(celsius) })];
        (dryEnthalpy, waterEnthalpy) = (Summed(0), Summed(1));
    }

    /// <summary>The temperatures of the table [°C].</summary>
    public static ImmutableArray<double> Temperatures { get; } =
        [.. Enumerable.Range(0, (int)((Hottest - Coldest) / Step) + 2).Select(index => Coldest + (index * Step))];

    /// <summary>Where a temperature lies between two of the table; beyond its ends it is held there.</summary>
    /// <param name="celsius">The temperature.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (int Index, double Share) Place(double celsius)
    {
        var place = (Math.Clamp(celsius, Coldest, Hottest) - Coldest) * (1 / Step);
        var index = (int)place;
        return (index, place - index);
    }

    /// <summary>Heat capacity of dry matter and of water [J/(kg K)].</summary>
    /// <param name="index">Place in the table.</param>
    /// <param name="share">How far towards the next [1].</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public (double Dry, double Water) At(int index, double share)
    {
        var entry = table.AsSpan(index * 2, 4);
        return (entry[0] + (share * (entry[2] - entry[0])), entry[1] + (share * (entry[3] - entry[1])));
    }

    /// <summary>How the heat capacities of dry matter and of water rise with the temperature [J/(kg K2)].</summary>
    /// <param name="index">Place in the table.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public (double Dry, double Water) RiseAt(int index)
    {
        var entry = table.AsSpan(index * 2, 4);
        return ((entry[2] - entry[0]) * (1 / Step), (entry[3] - entry[1]) * (1 / Step));
    }

    /// <summary>Heat of a kilogram of dry matter above 0 °C [J/kg].</summary>
    /// <param name="celsius">Its temperature.</param>
    public double OfDryMatter(double celsius) => Enthalpy(dryEnthalpy, 0, celsius);

    /// <summary>Heat of a kilogram of water above 0 °C [J/kg].</summary>
    /// <param name="celsius">Its temperature.</param>
    public double OfWater(double celsius) => Enthalpy(waterEnthalpy, 1, celsius);

    /// <summary>A heat capacity of the table summed up; it is straight between the entries, so the trapezium is exact.</summary>
    private double[] Summed(int column)
    {
        var sums = new double[table.Length / 2];
        for (var index = 1; index < sums.Length; index++)
        {
            sums[index] = sums[index - 1] + (Step / 2 * (table[((index - 1) * 2) + column] + table[(index * 2) + column]));
        }

        var atZero = sums[(int)(-Coldest / Step)];
        return [.. sums.Select(sum => sum - atZero)];
    }

    private double Enthalpy(double[] sums, int column, double celsius)
    {
        var (index, share) = Place(celsius);
        var (low, high) = (table[(index * 2) + column], table[((index + 1) * 2) + column]);
        return sums[index] + (Step * share * (low + (share / 2 * (high - low))));
    }
}
