using SwapSolver.Kitchen.Panels;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Labels;

/// <summary>One line of the label of a formula. Amounts are not rounded; what is printed stands beside them.</summary>
/// <param name="Line">The line of the law.</param>
/// <param name="InLoaf">How much the whole loaf holds, in the unit of the line; null where it is not known.</param>
/// <param name="Shares">What share of the loaf each portion is.</param>
public sealed record LabelFigure(LawLine Line, PanelAmount? InLoaf, PortionShares Shares)
{
    /// <summary>The amount in one slice.</summary>
    public PanelAmount? PerSlice => Of(Shares.Slice);

    /// <summary>The amount in 100 g as baked.</summary>
    public PanelAmount? PerHundredGrams => Of(Shares.HundredGrams);

    /// <summary>The amount in a serving.</summary>
    public PanelAmount? PerServing => Of(Shares.Serving);

    /// <summary>The amount in a portion.</summary>
    public PanelAmount? Per(LabelPortion portion) => portion == LabelPortion.Serving ? PerServing : PerHundredGrams;

    /// <summary>An amount as the law prints it; null where it is not known.</summary>
    public PrintedFigure? Print(PanelAmount? amount) => amount is { } known ? Line.Rounding.Print(known) : null;

    /// <summary>The share of the day of a portion [%]; null where the law names no daily value, or the amount is not known.</summary>
    public Percent? DailyShare(LabelPortion portion) =>
        Line.DailyValue is { } day && Per(portion) is { } amount ? day.ShareOf(amount) : null;

    private PanelAmount? Of(Percent share) => InLoaf is { } loaf ? new PanelAmount(loaf.Value * share.Share) : null;
}
