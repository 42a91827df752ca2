using System.Globalization;
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
