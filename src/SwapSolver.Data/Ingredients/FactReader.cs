using System.Collections.Immutable;
using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Data.Ingredients;

/// <summary>Reads the figures of an ingredient and refuses those that cannot be true.</summary>
/// <param name="Sources">The bibliography.</param>
internal sealed record FactReader(SourceKeys Sources)
{
    private static readonly ImmutableDictionary<string, Fact> ById =
        Fact.All.ToImmutableDictionary(fact => fact.Id, StringComparer.Ordinal);

    /// <summary>Figures and the facts that are none by nature; together they are all facts, each once.</summary>
    public (ImmutableDictionary<Fact, Figure> Figures, ImmutableHashSet<Fact> None) Read(JsonPlace root)
    {
        var facts = root.Get("facts");
        var figures = facts.Properties.ToImmutableDictionary(
            pair => FactOf(pair.Key, pair.Value),
            pair => FigureOf(FactOf(pair.Key, pair.Value), pair.Value));
        var none = root.Get("noneByNature").Items.Select(place => FactOf(place.Text, place)).ToImmutableHashSet();
        foreach (var fact in Fact.All.Where(fact => fact != Fact.Price))
        {
            if (figures.ContainsKey(fact) == none.Contains(fact))
            {
                throw facts.Fault(none.Contains(fact)
                    ? $"'{fact.Id}' stands in 'facts' and in 'noneByNature'; keep one"
                    : $"'{fact.Id}' is missing: write a figure, or name it in 'noneByNature' where there is none by nature");
            }
        }

        return FactSums.Clashes(figures, Grams.None, Grams.None).FirstOrDefault() is { } clash ? throw facts.Fault(clash.Reason) : (figures, none);
    }

    private static Fact FactOf(string id, JsonPlace place) =>
        ById.TryGetValue(id, out var fact) ? fact : throw place.Fault($"'{id}' is not a known fact");

    private Figure FigureOf(Fact fact, JsonPlace place)
    {
        place.Only("low", "typical", "high", "source", "mark", "rangeSource");
        var range = new Range(place.Get("low").Number, place.Get("typical").Number, place.Get("high").Number);
        if (!range.IsInOrder || range.Low < 0)
        {
            throw place.Fault($"{fact.Id}: low {range.Low}, typical {range.Typical}, high {range.High} must stand in order, from 0");
        }

        if (range.High > fact.Most)
        {
            throw place.Get("high").Fault($"{fact.Id}: {range.High} {fact.Unit} is above {fact.Most}, which cannot be");
        }

        return new Figure(
            range,
            Sources.Key(place.Get("source")),
            Words.MarkOf(place.Get("mark")),
            place.Find("rangeSource") is { } rangeSource ? Sources.Key(rangeSource) : null);
    }
}
