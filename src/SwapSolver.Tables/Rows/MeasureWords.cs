using System.Globalization;

namespace SwapSolver.Tables.Rows;

/// <summary>Takes a household measure in words apart: <c>1/2 cup, sliced</c> is half of a <c>cup, sliced</c>.</summary>
internal static class MeasureWords
{
    /// <summary>More of one measure is no household measure.</summary>
    public const decimal MostAmount = 1000;

    /// <summary>Amount and measure; a text that begins with no amount is one of it.</summary>
    public static (decimal Amount, string Measure) Read(string text)
    {
        var blank = text.IndexOf(' ', StringComparison.Ordinal);
        return blank > 0 && Amount(text[..blank]) is { } amount ? (amount, text[(blank + 1)..].Trim()) : (1, text);
    }

    /// <summary>An amount, as <c>2</c>, <c>.5</c> or <c>1/2</c>; null where it is none, or nothing.</summary>
    public static decimal? Amount(string text)
    {
        var parts = text.Split('/');
        return parts.Length <= 2 && Plain(parts[0]) is { } whole && Plain(parts.Length == 2 ? parts[1] : "1") is { } parted && whole / parted <= MostAmount
            ? whole / parted
            : null;
    }

    private static decimal? Plain(string text) =>
        text.Length <= 10 && text.All(letter => char.IsAsciiDigit(letter) || letter == '.')
        && decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number is > 0.0001m
            ? number
            : null;
}
