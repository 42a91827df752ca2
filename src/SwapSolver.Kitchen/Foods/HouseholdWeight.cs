using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Foods;

/// <summary>What a spoon, cup or piece of an ingredient weighs in this kitchen. It goes before the shipped weight of the same measure.</summary>
/// <param name="IngredientId">The ingredient.</param>
/// <param name="Measure">The measure.</param>
public sealed record HouseholdWeight(string IngredientId, HouseholdMeasure Measure)
{
    /// <summary>The measures of an ingredient where these are known better.</summary>
    /// <param name="known">What is known of them.</param>
    /// <param name="better">What this kitchen wrote down.</param>
    public static ImmutableArray<HouseholdMeasure> Join(ImmutableArray<HouseholdMeasure> known, ImmutableArray<HouseholdMeasure> better) => better.IsEmpty
        ? known
        : [.. known.Where(one => !better.Any(other => other.Amount == one.Amount && string.Equals(other.Measure, one.Measure, StringComparison.OrdinalIgnoreCase))), .. better];
}
