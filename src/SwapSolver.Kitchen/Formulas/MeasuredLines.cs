using System.Collections.Frozen;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Formulas;

/// <summary>What the ingredients of a formula may weigh where it gives them by the spoon, cup or piece and not by the gram.</summary>
/// <param name="MayWeigh">The mass of all lines of an ingredient [g], for each that is not wholly weighed.</param>
public sealed record MeasuredLines(FrozenDictionary<Ingredient, GramRange> MayWeigh)
{
    /// <summary>A formula that gives grams throughout.</summary>
    public static readonly MeasuredLines None = new(FrozenDictionary<Ingredient, GramRange>.Empty);

    /// <summary>The lines of a formula, each with what it may weigh; null where that is its grams and nothing else.</summary>
    public static MeasuredLines Of(IEnumerable<(Line Line, GramRange? MayWeigh)> lines) => new(lines
        .GroupBy(one => one.Line.Ingredient)
        .Where(group => group.Any(one => one.MayWeigh is not null))
        .ToFrozenDictionary(
            group => group.Key,
            group => group.Select(one => one.MayWeigh ?? new GramRange(one.Line.Grams, one.Line.Grams, one.Line.Grams)).Aggregate((left, right) => left + right)));

    /// <summary>One bowl as it may have been filled.</summary>
    /// <param name="formula">The formula, one line an ingredient.</param>
    /// <param name="filling">How much of an ingredient went in, of what it may weigh.</param>
    public Formula Filled(Formula formula, Func<Ingredient, GramRange, Grams> filling) => MayWeigh.Count == 0
        ? formula
        : formula with
        {
            Lines = [.. formula.Lines.Select(line => MayWeigh.TryGetValue(line.Ingredient, out var grams) ? line with { Grams = filling(line.Ingredient, grams) } : line)],
        };
}
