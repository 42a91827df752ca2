using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Kitchen.Tests.Ingredients;

/// <summary>Ingredients with round figures, so that a reading can be worked out by hand.</summary>
internal static class Invented
{
    private const string NoSource = "invented";

    /// <summary>An ingredient that has the named facts, in their units, and nothing else.</summary>
    public static Ingredient Of(string id, Role role, params ReadOnlySpan<(Fact Fact, double Figure)> facts)
    {
        var figures = ImmutableDictionary.CreateBuilder<Fact, Figure>();
        foreach (var (fact, figure) in facts)
        {
            figures[fact] = Certain(new Range(figure, figure, figure));
        }

        return Made(id, role, figures.ToImmutable(), [.. Fact.All.Where(fact => !figures.ContainsKey(fact))]);
    }

    /// <summary>An ingredient of which one fact is a range.</summary>
    public static Ingredient Of(string id, Role role, Fact fact, Range range) => Made(
        id,
        role,
        ImmutableDictionary<Fact, Figure>.Empty.Add(fact, Certain(range)),
        [.. Fact.All.Where(other => other != fact)]);

    /// <summary>The same ingredient, of which a fact is no longer known.</summary>
    public static Ingredient NotKnowing(this Ingredient ingredient, Fact fact) => Made(
        ingredient.Id, ingredient.Role, ingredient.Figures.Remove(fact), ingredient.NoneByNature.Remove(fact), ingredient.CountedUnits);

    private static Figure Certain(Range range) => new(range, NoSource, Mark.Practice, null);

    private static Ingredient Made(
        string id, Role role, ImmutableDictionary<Fact, Figure> figures, ImmutableHashSet<Fact> none, ImmutableArray<CountedUnit>? counted = null) => new()
        {
            Id = id,
            Name = id,
            Role = role,
            About = "Invented.",
            NotFor = "Eating.",
            Made = "Round figures.",
            UsdaFoodNumber = null,
            Groups = [],
            Allergens = new Allergens([], [], [], NoSource, Mark.Practice),
            Suits = new Suits(true, true, true),
            Figures = figures,
            NoneByNature = none,
            Usage = new Usage(null, null, new Grams(1), true, new Grams(1), NoSource, Mark.Practice),
            CountedUnits = counted ?? [],
            HouseholdMeasures = [],
            Behaviours = [],
            Cautions = [],
        };
}
