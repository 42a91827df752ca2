using System.Globalization;
using SwapSolver.Tables.Columns;

namespace SwapSolver.Tables.Rows;

/// <summary>Reads a number as tables print it: digits with or without a decimal point, no exponents, no thousands.</summary>
internal static class PrintedNumber
{
    /// <summary>No table prints more.</summary>
    private const int MostLetters = 20;

    /// <summary>The number of a field, from nothing up to the most; null with a problem where it is none.</summary>
    /// <param name="row">The row.</param>
    /// <param name="column">The column; its field is not blank.</param>
    /// <param name="most">Highest number that can be.</param>
    /// <param name="unit">Unit, for the problem; empty where it has none.</param>
    public static double? Read(TableRow row, string column, double most, string unit)
    {
        var text = row[column];
        if (!IsPlain(text))
        {
            row.Refuse(column, "is not a number", WayOut(text));
            return null;
        }

        var number = double.Parse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        if (number < 0 || number > most)
        {
            var limit = string.Create(CultureInfo.InvariantCulture, $"{most:0.##} {unit}").TrimEnd();
            row.Refuse(column, number < 0 ? "is below nothing" : $"is above {limit}, which cannot be", $"write a figure from 0 to {limit}");
            return null;
        }

        // Minus nothing is nothing.
        return Math.Abs(number);
    }

    private static bool IsPlain(string text)
    {
        var digits = text.StartsWith('-') ? text.AsSpan(1) : text;
        var points = 0;
        foreach (var letter in digits)
        {
            if (letter == '.')
            {
                points++;
            }
            else if (!char.IsAsciiDigit(letter))
            {
                return false;
            }
        }

        return points <= 1 && digits.Length > points && text.Length <= MostLetters;
    }

    private static string WayOut(string text) => text.Contains(',', StringComparison.Ordinal)
        ? "write a point in decimals and nothing between thousands, as 1234.5"
        : "write digits, as 5.8; where the figure is not known leave the field empty";
}
