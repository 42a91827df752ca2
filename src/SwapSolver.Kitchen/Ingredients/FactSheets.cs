using System.Collections.Immutable;

namespace SwapSolver.Kitchen.Ingredients;

/// <summary>Many draws of one ingredient's facts. Kept is where each fact stands in its range; a value is worked out where it is
/// read, for most facts of most draws never are.</summary>
public sealed class FactSheets
{
    private readonly Ingredient ingredient;

    private readonly ImmutableArray<Range?> ranges;

    private readonly ImmutableArray<double[]?> shares;

    /// <summary>Draws of an ingredient.</summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <param name="shares">Where a fact stands in each draw, 0 (low) over one half (typical) to 1 (high); null where it stands at
    /// its typical value in all.</param>
    public FactSheets(Ingredient ingredient, Func<Fact, double[]?> shares)
    {
        this.ingredient = ingredient;
        ranges = [.. Fact.All.Select(ingredient.RangeOf)];
        this.shares = [.. Fact.All.Select(shares)];
    }

    /// <summary>One of the draws.</summary>
    /// <param name="place">Which, from 0.</param>
    public FactSheet At(int place) => new(ingredient, this, place);

    /// <summary>A fact per gram in one of the draws; not a number where it is not known.</summary>
    internal double PerGram(Fact fact, int place) => ranges[fact.Index] is { } known
        ? known.At(shares[fact.Index] is { } stands ? stands[place] : 0.5) * fact.PerGramFactor
        : double.NaN;
}
