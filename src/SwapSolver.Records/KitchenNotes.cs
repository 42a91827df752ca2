using System.Collections.Immutable;
using SwapSolver.Kitchen.Foods;

namespace SwapSolver.Records;

/// <summary>Everything that a kitchen wrote down, at one moment.</summary>
/// <param name="Version">The records' version.</param>
/// <param name="Written">Its own foods, by id.</param>
/// <param name="Measured">What it measured, by ingredient.</param>
/// <param name="Weights">What its spoons and cups weigh, by ingredient.</param>
public sealed record KitchenNotes(long Version, ImmutableArray<WrittenFood> Written, ImmutableArray<MeasuredFact> Measured, ImmutableArray<HouseholdWeight> Weights)
{
    /// <summary>Its own foods, by id, each read whole.</summary>
    public ImmutableArray<StatedFood> Foods => [.. Written.Select(food => food.Food)];

    /// <summary>Nothing was ever written down.</summary>
    public static readonly KitchenNotes None = new(0, [], [], []);
}
