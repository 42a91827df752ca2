using System.Globalization;

namespace SwapSolver.Asking.Text;

/// <summary>Finds numbers in a question: 2, 1.5, 1,200, 1/2, 1 1/2, ½.</summary>
internal static class NumberFinder
{
    private const int DigitsBehindThousands = 3;

    /// <summary>The number at a place and how many pieces it takes; null where there is none.</summary>
    public static (double Value, int Length)? At(IReadOnlyList<Cut> cuts, int place)
    {
        if (Vulgar(cuts, place) is { } part)
        {
            return (part, 1);
        }

        if (cuts[place].Kind != CutKind.Number)
        {
            return null;
        }

        var first = ValueOf(cuts[place].Text);
        if (Fraction(cuts, place) is { } fraction)
        {
            return (fraction, 3);
        }

        if (place + 1 < cuts.Count && Vulgar(cuts, place + 1) is { } more)
        {
            return (first + more, 2);
        }

        return place + 1 < cuts.Count && Fraction(cuts, place + 1) is { } rest and < 1 ? (first + rest, 4) : (first, 1);
    }

    private static double? Fraction(IReadOnlyList<Cut> cuts, int place) =>
        place + 2 < cuts.Count && cuts[place].Kind == CutKind.Number && cuts[place + 1].Text is "/" or "\u2044" && cuts[place + 2].Kind == CutKind.Number
        && ValueOf(cuts[place + 2].Text) is > 0 and var under
            ? ValueOf(cuts[place].Text) / under
            : null;

    private static double? Vulgar(IReadOnlyList<Cut> cuts, int place) =>
        cuts[place] is { Kind: CutKind.Sign, Text: [var sign] } && char.GetNumericValue(sign) is > 0 and < 1 and var value ? value : null;

    private static double ValueOf(string digits)
    {
        var comma = digits.IndexOf(',', StringComparison.Ordinal);
        var isThousands = comma > 0 && digits.Length - comma - 1 == DigitsBehindThousands && digits[0] != '0';
        var plain = isThousands ? digits.Remove(comma, 1) : digits.Replace(',', '.');
        return double.Parse(plain, NumberStyles.Float, CultureInfo.InvariantCulture);
    }
}
