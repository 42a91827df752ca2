using System.Globalization;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Solving.Answers;

/// <summary>Numbers as a sentence says them.</summary>
internal static class NumberWords
{
    /// <summary>Grams with the precision of a kitchen scale, as "12.5 g".</summary>
    public static string Grams(Grams grams) => $"{grams.Value.ToString("0.##", CultureInfo.InvariantCulture)} g";

    /// <summary>Two levels, with as many figures as it takes to tell them apart.</summary>
    public static (string One, string Other) Apart(Level one, Level other) => Level(one) == Level(other)
        ? (one.Value.ToString("G5", CultureInfo.InvariantCulture), other.Value.ToString("G5", CultureInfo.InvariantCulture))
        : (Level(one), Level(other));

    /// <summary>A percentage without its sign; empty where there is none.</summary>
    public static string Percent(Percent? percent) => percent is { } known ? known.Value.ToString("0.#", CultureInfo.InvariantCulture) : string.Empty;

    /// <summary>A level outside a band as a limit that lets it in: rounded away from the band, so that what is said will do.</summary>
    public static string Enough(Level level, Band band)
    {
        var size = Math.Floor(Math.Log10(Math.Max(Math.Abs(level.Value), 1e-9)));
        var unit = Math.Pow(10, size - 2);
        var steps = level.Value / unit;
        var outward = band.Of(level) == Standing.Above ? Math.Ceiling(steps - 1e-9) : Math.Floor(steps + 1e-9);
        return Level(new Level(outward * unit));
    }

    /// <summary>A level with three figures that count.</summary>
    public static string Level(Level level) => level.Value switch
    {
        0 => "0",
        var value when Math.Abs(value) >= 100 => value.ToString("0", CultureInfo.InvariantCulture),
        var value when Math.Abs(value) >= 10 => value.ToString("0.#", CultureInfo.InvariantCulture),
        var value when Math.Abs(value) >= 1 => value.ToString("0.##", CultureInfo.InvariantCulture),
        var value when Math.Abs(value) >= 0.1 => value.ToString("0.###", CultureInfo.InvariantCulture),
        var value => value.ToString("0.####", CultureInfo.InvariantCulture),
    };
}
