using System.Collections.Immutable;

namespace SwapSolver.Cards.Views;

/// <summary>A card in words only, as templates read it.</summary>
internal sealed record CardView
{
    /// <summary>Headings by name.</summary>
    public required ImmutableDictionary<string, string> Heads { get; init; }

    public required string Title { get; init; }

    public required string Description { get; init; }

    public required string Version { get; init; }

    public required string Yield { get; init; }

    public required string Batter { get; init; }

    public required bool HasMeasures { get; init; }

    public required string MeasuresNote { get; init; }

    public required bool HasPercentages { get; init; }

    public required ImmutableArray<LineView> Lines { get; init; }

    public required string TotalGrams { get; init; }

    public required ImmutableArray<string> Statements { get; init; }

    public required ImmutableArray<string> Cautions { get; init; }

    public required ImmutableArray<string> Baking { get; init; }

    public required ImmutableArray<string> Steps { get; init; }

    public required string NoSteps { get; init; }

    public required string Law { get; init; }

    public required string Portion { get; init; }

    public required bool HasShares { get; init; }

    public required ImmutableArray<FigureView> Figures { get; init; }

    public required ImmutableArray<string> Notes { get; init; }

    /// <summary>Pictures with the table behind each; the SVG is markup, all else is words.</summary>
    public ImmutableArray<PictureView> Pictures { get; init; } = [];
}

/// <summary>One line of the bowl.</summary>
internal sealed record LineView(string Name, string Grams, string Measure, string Percentage);

/// <summary>One line of the label.</summary>
internal sealed record FigureView(string Name, int Depth, string Printed, string Share, string Slice, string Hundred, string Loaf)
{
    /// <summary>Set in by as many quarters as it is deep, for Markdown.</summary>
    public string Indent => string.Concat(Enumerable.Repeat("– ", Depth));
}

/// <summary>One picture and the table behind it.</summary>
internal sealed record PictureView(string Title, string Svg, ImmutableArray<string> Columns, ImmutableArray<ImmutableArray<string>> Rows);
