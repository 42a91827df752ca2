using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Kitchen.Foods;

/// <summary>How far a table's figure may lie from what is in the bag.</summary>
/// <param name="Share">Share of the figure, either way [1].</param>
/// <param name="Least">Never less than this, in the figure's own unit.</param>
/// <param name="Source">Key of the source.</param>
public sealed record Spread(double Share, double Least, string Source)
{
    /// <summary>Share of what is left of the most that can be, either way, where that is less [1]: the water of milk is
    /// as sure as its solids are. Null where only the figure itself counts.</summary>
    public Percent? OfRest { get; init; }

    /// <summary>The range around a printed figure; never below nothing, never above what can be.</summary>
    public Range Around(double figure, double most)
    {
        var share = OfRest is { } rest ? Math.Min(figure * Share, (most - figure) * rest.Share) : figure * Share;
        var either = Math.Max(share, Least);
        return new Range(Math.Max(0, figure - either), figure, Math.Max(figure, Math.Min(most, figure + either)));
    }

    /// <summary>The figure of a table, with its range.</summary>
    public Figure Of(Fact fact, double figure, string source) => new(Around(figure, fact.Most), source, Mark.Published, Source);
}
