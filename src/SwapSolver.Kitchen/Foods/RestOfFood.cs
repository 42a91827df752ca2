using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Kitchen.Foods;

/// <summary>What a row leaves out of its 100 g because tables have no column for it: the acid of vinegar, the alcohol of an
/// extract, the gas of soda. Told by the name, never by the gap alone: a gap may be a mistyped figure.</summary>
/// <param name="Names">Words that stand side by side before the first comma of the name, or alone between two; one of these.</param>
/// <param name="Fact">What the rest is.</param>
/// <param name="Most">Most of it in 100 g that can be believed [g].</param>
/// <param name="Spread">How far it may lie from what is in the bottle, either way.</param>
/// <param name="Acid">Acid that a gram of the rest brings [mmol/g]; 0 where it brings none.</param>
/// <param name="Source">Key of the source.</param>
public sealed record RestOfFood(
    ImmutableArray<ImmutableArray<string>> Names, Fact Fact, Grams Most, Percent Spread, PerGram Acid, string Source)
{
    /// <summary>Facts that make up 100 g in a table.</summary>
    private static readonly ImmutableArray<Fact> Whole =
        [Fact.Water, Fact.Protein, Fact.Fat, Fact.Carbohydrate, Fact.Ash, Fact.Alcohol, Fact.Other];

    /// <summary>Whether a food of this name leaves this out.</summary>
    public bool IsOf(string name)
    {
        var parts = name.Split(',').Select(FoodName.Words).ToList();
        return Names.Any(one => Holds(parts[0], one) || parts.Any(part => part.SequenceEqual(one)));
    }

    /// <summary>The figures with what was left out; as they are where the table states it, nothing is missing, or more is
    /// missing than can be believed.</summary>
    /// <param name="figures">The stated figures.</param>
    public ImmutableDictionary<Fact, Figure> Complete(ImmutableDictionary<Fact, Figure> figures)
    {
        var rest = (double)Math.Round(100m - Whole.Sum(fact => figures.TryGetValue(fact, out var figure) ? (decimal)figure.Range.Typical : 0m), 6);
        if (figures.ContainsKey(Fact.Alcohol) || figures.ContainsKey(Fact.Other) || rest <= FactSums.ProximateTolerance || rest > Most.Value)
        {
            return figures;
        }

        var completed = figures.Add(Fact, Around(rest, Fact.Most));
        return Acid.Value > 0 && !figures.ContainsKey(Fact.Acid)
            ? completed.Add(Fact.Acid, Around(rest / 100 * Acid.Value, Fact.Acid.Most))
            : completed;
    }

    private static bool Holds(ImmutableArray<string> words, ImmutableArray<string> name) =>
        Enumerable.Range(0, Math.Max(0, words.Length - name.Length + 1)).Any(place => words.AsSpan(place, name.Length).SequenceEqual(name.AsSpan()));

    private Figure Around(double typical, double most) => new(
        new Range(typical * (1 - Spread.Share), typical, Math.Min(most, typical * (1 + Spread.Share))), Source, Mark.Calculated, null);
}
