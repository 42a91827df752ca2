using System.Collections.Concurrent;
using System.Collections.Frozen;
using System.Runtime.CompilerServices;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Solving.Answers;

/// <summary>One ingredient as it comes in many kitchens.</summary>
public sealed class Bag
{
    private readonly int kitchens;

    private readonly FactSheets sheets;

    // Held as long as the balance is.
    private readonly ConditionalWeakTable<Balance, SampledCoefficients> coefficients = [];

    private readonly ConcurrentDictionary<Fact, RangeParts> parts = new();

    /// <summary>Draws the facts that have a range.</summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <param name="kitchens">How many kitchens there are.</param>
    /// <param name="draw">Where a fact stands in its range, by kitchen: 0 (low) to 1 (high).</param>
    public Bag(Ingredient ingredient, int kitchens, Func<Fact, double[]> draw)
    {
        Ingredient = ingredient;
        this.kitchens = kitchens;
        Shares = Fact.All
            .Where(fact => ingredient.RangeOf(fact) is { } range && range.Low < range.High)
            .ToDictionary(fact => fact, draw)
            .ToFrozenDictionary();
        sheets = new FactSheets(ingredient, Shares.GetValueOrDefault);
    }

    /// <summary>The ingredient.</summary>
    public Ingredient Ingredient { get; }

    /// <summary>Where each fact that has a range stands in it, by kitchen: 0 (low) to 1 (high).</summary>
    public FrozenDictionary<Fact, double[]> Shares { get; }

    /// <summary>Which kitchens stand in which part of a fact's range; sorted once.</summary>
    /// <param name="fact">A fact of <see cref="Shares"/>.</param>
    internal RangeParts PartsOf(Fact fact) => parts.GetOrAdd(fact, one => new RangeParts(Shares[one]));

    /// <summary>The facts in one kitchen.</summary>
    public FactSheet In(int kitchen) => sheets.At(kitchen);

    /// <summary>What one gram adds to a balance, in all kitchens; worked out once. What is left out differs from question to question and is
    /// read without any fact, so it is not kept.</summary>
    /// <param name="balance">The balance.</param>
    /// <param name="reference">A formula that the balance may be counted on; a gram's part does not hang on which.</param>
    internal SampledCoefficients Of(Balance balance, Formula reference) =>
        balance is LeftOut ? Worked(balance, reference)
        : coefficients.TryGetValue(balance, out var known) ? known
        : Kept(balance, reference);

    // By itself: what is there already is looked up without making what would work it out.
    private SampledCoefficients Kept(Balance balance, Formula reference) => coefficients.GetValue(balance, rule => Worked(rule, reference));

    private SampledCoefficients Worked(Balance balance, Formula reference) =>
        SampledCoefficients.Of(balance, reference, sheets, balance.Reads.Any(Shares.ContainsKey) ? kitchens : 1);
}
