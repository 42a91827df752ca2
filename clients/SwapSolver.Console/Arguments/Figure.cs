using System.Globalization;

namespace SwapSolver.Console.Arguments;

/// <summary>Reads figures with a decimal point, the same under every language setting.</summary>
internal static class Figure
{
    /// <summary>Reads a finite figure.</summary>
    public static Checked<double> Read(string text)
    {
        // No thousands separators: '1,5' must be refused, not read as 15.
        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var figure) && double.IsFinite(figure))
        {
            return figure;
        }

        return Checked<double>.Bad(text.Contains(',')
            ? $"'{text}' is not a number. Write a decimal point, as {text.Replace(',', '.')}."
            : $"'{text}' is not a number. Write digits with a decimal point, as 12.5.");
    }

    /// <summary>Reads a whole figure.</summary>
    public static Checked<int> ReadWhole(string text) =>
        int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var figure)
            ? figure
            : Checked<int>.Bad($"'{text}' is not a whole number. Write digits only, as 12.");
}
