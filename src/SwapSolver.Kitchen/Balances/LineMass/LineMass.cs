using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Balances;

/// <summary>Grams of one ingredient in the whole batter [g]. Its band is open; a limit or a target is the caller's.</summary>
/// <param name="Settings">Words; the band is open.</param>
/// <param name="Ingredient">The ingredient.</param>
public sealed record LineMass(BalanceSettings Settings, Ingredient Ingredient) : Balance(Settings)
{
    /// <summary>What its ids begin with, as in <c>ingredients/butter</c>.</summary>
    public const string Prefix = "ingredients/";

    /// <summary>The rule for an ingredient: the usual mass of its role gives way to it.</summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <param name="belowMeans">What it is to have less than is wanted.</param>
    /// <param name="aboveMeans">What it is to have more than is wanted.</param>
    public static LineMass Of(Ingredient ingredient, string belowMeans, string aboveMeans) => new(
        new BalanceSettings(Prefix + ingredient.Id, ingredient.Name, "g", Balances.Band.Open, null, null, null, belowMeans, aboveMeans, [])
        {
            Target = new TargetHabits(Better.Neither, [], [ingredient.Role]),
        },
        ingredient);

    /// <summary>Of one ingredient there is one such rule.</summary>
    public bool Equals(LineMass? other) => other is not null && Ingredient.Equals(other.Ingredient);

    /// <inheritdoc/>
    public override int GetHashCode() => Ingredient.GetHashCode();

    /// <inheritdoc/>
    public override ImmutableArray<Fact> Reads => [];

    /// <summary>1 for the ingredient, else 0 [g/g].</summary>
    public override PerGram Numerator(FactSheet facts) => facts.Ingredient.Equals(Ingredient) ? PerGram.Itself : PerGram.None;

    /// <summary>One gram, so that the reading is in grams.</summary>
    public override Basis Basis(Formula reference) => Balances.Basis.Mass(new Grams(1));

    /// <summary>Open: how much of it is the caller's to say.</summary>
    public override Band Around(Func<Level?> own, Formula reference, Draw draw) => Settings.Fixed;
}
