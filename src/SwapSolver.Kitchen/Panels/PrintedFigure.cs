using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Panels;

/// <summary>A figure as it stands on a packet: its digits say how finely it was rounded, so they are kept.</summary>
public sealed record PrintedFigure
{
    private const int MostDigits = 7;

    private const int MostDecimals = 4;

    private const string LessThanInWords = "less than";

    /// <summary>A plain 0.</summary>
    public static readonly PrintedFigure Zero = new("0", new PanelAmount(0), 0, isLessThan: false);

    private PrintedFigure(string text, PanelAmount value, int decimals, bool isLessThan) =>
        (Text, Value, Decimals, IsLessThan) = (text, value, decimals, isLessThan);

    /// <summary>The figure in plain writing, as <c>3.5</c> or <c>&lt;0.5</c>.</summary>
    public string Text { get; }

    /// <summary>The number that is printed, in the unit of its line.</summary>
    public PanelAmount Value { get; }

    /// <summary>How many digits stand after the point.</summary>
    public int Decimals { get; }

    /// <summary>Whether the packet says 'less than'.</summary>
    public bool IsLessThan { get; }

    /// <summary>Reads <c>3.5</c>, <c>3,5</c>, <c>&lt;0.5</c> or <c>less than 1</c>; no unit. Three digits after a comma
    /// are refused, since they may be thousands.</summary>
    /// <param name="text">The text; at most seven digits before the point and four after it.</param>
    /// <param name="figure">The figure.</param>
    /// <returns>Whether it is such a figure.</returns>
    public static bool TryRead(string text, [NotNullWhen(true)] out PrintedFigure? figure)
    {
        figure = null;
        var digits = text.Trim();
        var isLessThan = true;
        if (digits.StartsWith('<'))
        {
            digits = digits[1..].TrimStart();
        }
        else if (digits.StartsWith(LessThanInWords, StringComparison.OrdinalIgnoreCase))
        {
            digits = digits[LessThanInWords.Length..].TrimStart();
        }
        else
        {
            isLessThan = false;
        }

        var point = digits.IndexOfAny(['.', ',']);
        var (whole, after) = point < 0 ? (digits, string.Empty) : (digits[..point], digits[(point + 1)..]);
        if (whole.Length is 0 or > MostDigits
            || after.Length > MostDecimals
            || (point >= 0 && after.Length == 0)
            || (point >= 0 && digits[point] == ',' && after.Length == 3)
            || !whole.All(char.IsAsciiDigit)
            || !after.All(char.IsAsciiDigit))
        {
            return false;
        }

        var plain = after.Length == 0 ? whole : $"{whole}.{after}";
        var value = double.Parse(plain, CultureInfo.InvariantCulture);
        if (isLessThan && value == 0)
        {
            return false;
        }

        figure = new PrintedFigure(isLessThan ? $"<{plain}" : plain, new PanelAmount(value), after.Length, isLessThan);
        return true;
    }

    /// <summary>The figure of a rounded amount.</summary>
    internal static PrintedFigure Of(decimal rounded, int decimals, bool dropsZeros)
    {
        var text = rounded.ToString(dropsZeros ? $"0.{new string('#', decimals)}" : $"F{decimals}", CultureInfo.InvariantCulture);
        var point = text.IndexOf('.', StringComparison.Ordinal);
        return new PrintedFigure(text, new PanelAmount((double)rounded), point < 0 ? 0 : text.Length - point - 1, isLessThan: false);
    }

    /// <inheritdoc/>
    public override string ToString() => Text;
}
