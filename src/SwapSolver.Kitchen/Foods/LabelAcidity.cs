using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Kitchen.Foods;

/// <summary>The acidity that a vinegar's label states, as acetic acid.</summary>
/// <param name="Acidity">Acid [g/100 mL], taken as g/100 g, as the shipped vinegars are.</param>
public sealed record LabelAcidity(Percent Acidity)
{
    /// <summary>Whether a label's acidity says anything of an ingredient.</summary>
    public static bool Reads(Ingredient ingredient, MeasuringRules rules) =>
        ingredient.Groups.Contains(rules.AcidGroup) && ingredient.RangeOf(Fact.Other) is { Typical: > 0 } && ingredient.RangeOf(Fact.Acid) is { Typical: > 0 };

    /// <summary>The facts that the label states: acid by the shipped vinegar's own acid per acetic acid, and what water gives way to.</summary>
    /// <param name="ingredient">The vinegar.</param>
    /// <param name="rules">How far a label is trusted.</param>
    /// <param name="method">How it was found, in a sentence.</param>
    public ImmutableArray<MeasuredFact> Facts(Ingredient ingredient, MeasuringRules rules, string method)
    {
        var acetic = ingredient.RangeOf(Fact.Other)!.Value.Typical;
        var perAcetic = ingredient.RangeOf(Fact.Acid)!.Value.Typical / acetic;
        var water = ingredient.RangeOf(Fact.Water)!.Value.Typical + acetic - Acidity.Value;
        var spread = Acidity.Value * rules.AciditySpread.Share;
        MeasuredFact Of(Fact fact, double typical, double either) =>
            new(ingredient.Id, fact, new Range(Math.Max(0, typical - either), typical, Math.Min(fact.Most, typical + either)), method);
        return [Of(Fact.Other, Acidity.Value, spread), Of(Fact.Acid, Acidity.Value * perAcetic, spread * perAcetic), Of(Fact.Water, water, spread)];
    }
}
