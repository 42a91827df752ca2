using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Foods;

/// <summary>What is taken of a food that states only its composition, from <c>data/practice/foods.json</c>.</summary>
/// <param name="Families">What the food group of a number says.</param>
/// <param name="OtherRole">The role of a food of which nothing is said.</param>
/// <param name="Water">Water that a dry food holds.</param>
/// <param name="Spreads">How far a table's figure may lie from what is in the bag, by fact.</param>
/// <param name="Usage">How much a formula bears of a food of which nothing is said.</param>
/// <param name="EstimateSource">Source key of what is estimated.</param>
/// <param name="LikeSource">Source key of what is taken after another ingredient.</param>
/// <param name="LikeWidening">How much wider the range of what is taken after another is [1].</param>
/// <param name="TableSource">Source key of an imported table.</param>
/// <param name="PacketSource">Source key of a packet's panel.</param>
/// <param name="MeasuredSource">Source key of what this kitchen measured.</param>
/// <param name="Kinds">Foods that are told by their names.</param>
/// <param name="Rests">What tables have no column for.</param>
public sealed record FoodRules(
    ImmutableArray<FoodFamily> Families,
    Role OtherRole,
    WaterModel Water,
    ImmutableDictionary<Fact, Spread> Spreads,
    Usage Usage,
    string EstimateSource,
    string LikeSource,
    double LikeWidening,
    string TableSource,
    string PacketSource,
    string MeasuredSource,
    FoodKinds Kinds,
    ImmutableArray<RestOfFood> Rests)
{
    private static readonly FoodFamily NoFamily = new(string.Empty, Role.Flavour, []);

    /// <summary>Facts that a table can state; each has a spread.</summary>
    public IEnumerable<Fact> TableFacts => Spreads.Keys;

    /// <summary>The family that the food number of a food says.</summary>
    public FoodFamily FamilyOf(string? usdaFoodNumber) =>
        Families.FirstOrDefault(family => usdaFoodNumber?.StartsWith(family.UsdaGroup, StringComparison.Ordinal) == true)
        ?? NoFamily with { Role = OtherRole };

    /// <summary>A row's figures, with what its table has no column for where the name says what that is.</summary>
    /// <param name="name">The name as printed.</param>
    /// <param name="figures">The stated figures.</param>
    public ImmutableDictionary<Fact, Figure> Completed(string name, ImmutableDictionary<Fact, Figure> figures) =>
        Rests.FirstOrDefault(rest => rest.IsOf(name))?.Complete(figures) ?? figures;

    /// <summary>The source key of figures by where they were read.</summary>
    public string SourceOf(FoodOrigin origin) => origin == FoodOrigin.Packet ? PacketSource : TableSource;
}
