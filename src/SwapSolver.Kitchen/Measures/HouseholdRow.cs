using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Measures;

/// <summary>One household weight, its words taken apart.</summary>
/// <param name="Unit">The unit of volume; null where the row counts something else.</param>
/// <param name="Head">The words before a comma or bracket, in small letters.</param>
/// <param name="Form">The words that say which form is meant, as <c>ground</c>; empty where none is.</param>
/// <param name="Each">What one of it weighs [g].</param>
/// <param name="Estimate">What one of it may weigh [g], where that is an estimate; null where the way of filling decides.</param>
public sealed record HouseholdRow(VolumeUnit? Unit, string Head, ImmutableArray<string> Form, Grams Each, GramRange? Estimate)
{
    private static readonly char[] Ends = [',', '('];

    /// <summary>The forms that are meant where a line says none, best first; common practice. A row without form goes before all.</summary>
    private static readonly ImmutableArray<string> UsualForms = ["ground", "fluid", "stirred", "unsifted", "sifted", "shredded", "mashed"];

    /// <summary>How far from the usual form this is; 0 for a row without a form.</summary>
    public int Rank => Form.IsEmpty ? 0 : UsualForms.IndexOf(Form[0]) is var place and >= 0 ? place + 1 : UsualForms.Length + 1;

    /// <summary>The rows of an ingredient.</summary>
    public static ImmutableArray<HouseholdRow> Of(Ingredient ingredient, IReadOnlyList<VolumeUnit> volumes) =>
        [.. ingredient.HouseholdMeasures.Select(measure => Of(measure, volumes))];

    private static HouseholdRow Of(HouseholdMeasure measure, IReadOnlyList<VolumeUnit> volumes)
    {
        var one = 1 / (double)measure.Amount;
        var each = measure.Grams * one;
        var estimate = measure.Estimate is { } range ? range * Amount.Of(one) : (GramRange?)null;
        var end = measure.Measure.IndexOfAny(Ends);
        var head = (end < 0 ? measure.Measure : measure.Measure[..end]).Trim().ToLowerInvariant();
        var unit = volumes.FirstOrDefault(known => known.Names.Any(name => head == name || head.StartsWith($"{name} ", StringComparison.Ordinal)));
        var bracket = measure.Measure.IndexOf('(', StringComparison.Ordinal);
        var form = (bracket < 0 ? measure.Measure : measure.Measure[..bracket]).ToLowerInvariant();
        if (unit is null)
        {
            return new HouseholdRow(null, head, WordsOf(form[Math.Min(head.Length, form.Length)..]), each, estimate);
        }

        var name = unit.Names.Where(word => form.StartsWith(word, StringComparison.Ordinal)).MaxBy(word => word.Length)!;
        // '8 fl oz' behind a cup says how large it is, not which form is in it.
        return new HouseholdRow(
            unit, head, [.. WordsOf(form[name.Length..]).Where(word => word is not ("fl" or "oz"))], each, estimate);
    }

    private static ImmutableArray<string> WordsOf(string form) =>
        [.. form.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries).Where(word => word.All(char.IsLetter))];
}
