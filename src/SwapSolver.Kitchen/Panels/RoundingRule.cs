using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Kitchen.Panels;

/// <summary>How a law rounds one line of a panel, and so what a printed figure may stand for.</summary>
/// <param name="ZeroUpTo">Up to here it may be printed as 0, in the unit of the line.</param>
/// <param name="Bands">The steps, from small to large amounts; at least one.</param>
/// <param name="FewerDigitsAreCoarser">Whether a figure with fewer digits than its step was rounded coarser; where not,
/// zeros at the end are only left out. A plain 0 is what the law means by it either way.</param>
/// <param name="Source">Key of the source.</param>
/// <param name="Mark">How it is known.</param>
public sealed record RoundingRule(
    PanelAmount ZeroUpTo, ImmutableArray<RoundingBand> Bands, bool FewerDigitsAreCoarser, string Source, Mark Mark)
{
    /// <summary>How small amounts are printed, from the smallest up; empty where they are rounded as all others.</summary>
    public ImmutableArray<SmallAmount> Small { get; init; } = [];

    /// <summary>Whether zeros at the end of a printed figure are left out.</summary>
    public bool DropsZeros { get; init; }

    /// <summary>An amount as the law prints it. Halves go up: the laws do not say, and FDA's own sample label prints 5.000 %
    /// potassium as 6 % in steps of two.</summary>
    /// <param name="amount">The amount, in the unit of the line; 0 or more.</param>
    public PrintedFigure Print(PanelAmount amount)
    {
        // Sums of fractions miss an exact half by their last bit; a decimal of a double keeps its fifteen good digits.
        var exact = (decimal)amount.Value;
        if (exact == 0)
        {
            return PrintedFigure.Zero;
        }

        if (Small.FirstOrDefault(small => small.Holds(exact)) is { } tiny)
        {
            return tiny.Prints;
        }

        var rounded = Nearest(exact, BandOf(exact));
        // 9.96 g of fat becomes 10, and 10 is printed as a whole number.
        var band = BandOf(rounded);
        rounded = Nearest(rounded, band);
        return PrintedFigure.Of(rounded, band.Decimals, DropsZeros);
    }

    private RoundingBand BandOf(decimal amount) =>
        Bands.FirstOrDefault(band => double.IsInfinity(band.To.Value) || amount < (decimal)band.To.Value) ?? Bands[^1];

    private static decimal Nearest(decimal amount, RoundingBand band) =>
        Math.Round(amount / (decimal)band.Step.Value, MidpointRounding.AwayFromZero) * (decimal)band.Step.Value;

    /// <summary>Every amount that may be behind a printed figure, the printed number as typical; in the unit of the line.
    /// A figure that no step prints was rounded finer, by its own last digit. 'Less than' is from nothing up, the middle
    /// as typical.</summary>
    public Range IntervalOf(PrintedFigure figure)
    {
        var value = figure.Value.Value;
        if (figure.IsLessThan)
        {
            // Salt up to 0.0125 g may be '<0.01': what may be 0 and rounds to the printed number is meant too.
            var most = ZeroUpTo.Value <= value + (Bands[0].Step.Value / 2) ? Math.Max(value, ZeroUpTo.Value) : value;
            return new Range(0, value / 2, most);
        }

        var digit = (double)new decimal(1, 0, 0, false, (byte)figure.Decimals);
        double low = double.PositiveInfinity, high = double.NegativeInfinity;
        foreach (var band in Bands)
        {
            var half = HalfStep(figure, band, digit);
            var from = Math.Max(value - half, band.From.Value);
            var to = Math.Min(value + half, band.To.Value);
            if (from <= to)
            {
                low = Math.Min(low, from);
                high = Math.Max(high, to);
            }
        }

        if (value == 0 && figure.Decimals <= Bands[0].Decimals)
        {
            low = 0;
            high = Math.Max(high, ZeroUpTo.Value);
        }

        // A number that the law would have printed otherwise: its own digits are all that is known of it.
        return low <= high
            ? new Range(Math.Min(low, value), value, Math.Max(high, value))
            : new Range(Math.Max(0, value - (digit / 2)), value, value + (digit / 2));
    }

    private double HalfStep(PrintedFigure figure, RoundingBand band, double digit) =>
        figure.Decimals > band.Decimals || !band.Prints(figure.Value) ? digit / 2
        : FewerDigitsAreCoarser && figure.Value.Value > 0 && figure.Decimals < band.Decimals ? Math.Max(digit, band.Step.Value) / 2
        : band.Step.Value / 2;
}
