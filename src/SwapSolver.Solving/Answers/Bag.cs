using System.Collections.Frozen;
using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Solving.Answers;

/// <summary>One ingredient as it comes in many kitchens.</summary>
public sealed class Bag
{
    private readonly Ingredient ingredient;

    private readonly int kitchens;

    private readonly Lazy<ImmutableArray<FactSheet>> sheets;

    /// <summary>Draws the facts that have a range.</summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <param name="kitchens">How many kitchens there are.</param>
    /// <param name="draw">Where a fact stands in its range, by kitchen: 0 (low) to 1 (high).</param>
    public Bag(Ingredient ingredient, int kitchens, Func<Fact, double[]> draw)
    {
        this.ingredient = ingredient;
        this.kitchens = kitchens;
        Shares = Fact.All
            .Where(fact => ingredient.RangeOf(fact) is { } range && range.Low < range.High)
            .ToDictionary(fact => fact, draw)
            .ToFrozenDictionary();
        sheets = new(() => FactSheet.Several(ingredient, this.kitchens, fact => Shares[fact]));
    }

    /// <summary>Where each fact that has a range stands in it, by kitchen: 0 (low) to 1 (high).</summary>
    public FrozenDictionary<Fact, double[]> Shares { get; }

    /// <summary>The facts, a sheet a kitchen.</summary>
    public ImmutableArray<FactSheet> Sheets => sheets.Value;

    /// <summary>The facts in one kitchen, where the other kitchens are not asked for.</summary>
    public FactSheet In(int kitchen) => sheets.IsValueCreated
        ? sheets.Value[kitchen]
        : FactSheet.Drawn(ingredient, fact => Shares.TryGetValue(fact, out var stands) ? stands[kitchen] : 0.5);
}
