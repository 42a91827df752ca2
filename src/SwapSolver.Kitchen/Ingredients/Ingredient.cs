using System.Collections.Immutable;

namespace SwapSolver.Kitchen.Ingredients;

/// <summary>A thing that is weighed, with everything that is known of it. Two are the same where their ids are.</summary>
public sealed class Ingredient : IEquatable<Ingredient>
{
    // Ingredients are looked up by the million where kitchens are drawn, and a string is hashed letter by letter.
    private int hash;

    // By the index of the fact: every question asks every ingredient of the cupboard what is known of it.
    private Range?[]? ranges;

    private double[]? typical;

    /// <summary>Short stable id, as <c>hazelnut-flour</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Plain name, for a sentence.</summary>
    public required string Name { get; init; }

    /// <summary>What it does in a formula.</summary>
    public required Role Role { get; init; }

    /// <summary>What it is.</summary>
    public required string About { get; init; }

    /// <summary>What these facts are not good for.</summary>
    public required string NotFor { get; init; }

    /// <summary>How the facts came about.</summary>
    public required string Made { get; init; }

    /// <summary>Number in the USDA Standard Reference; null where it has none.</summary>
    public required string? UsdaFoodNumber { get; init; }

    /// <summary>Groups that it belongs to, as <c>seeds</c>.</summary>
    public required ImmutableArray<string> Groups { get; init; }

    /// <summary>Its allergens.</summary>
    public required Allergens Allergens { get; init; }

    /// <summary>Who can eat it.</summary>
    public required Suits Suits { get; init; }

    /// <summary>Its figures; what is none by nature stands in <see cref="NoneByNature"/> instead.</summary>
    public required ImmutableDictionary<Fact, Figure> Figures { get; init; }

    /// <summary>Facts that are exactly zero by its nature.</summary>
    public required ImmutableHashSet<Fact> NoneByNature { get; init; }

    /// <summary>How much of it a formula bears.</summary>
    public required Usage Usage { get; init; }

    /// <summary>What one weighs, by size; empty for what is not counted.</summary>
    public required ImmutableArray<CountedUnit> CountedUnits { get; init; }

    /// <summary>What spoons and cups of it weigh.</summary>
    public required ImmutableArray<HouseholdMeasure> HouseholdMeasures { get; init; }

    /// <summary>What it does in the bowl and the oven.</summary>
    public required ImmutableArray<Behaviour> Behaviours { get; init; }

    /// <summary>Cautions that go with it.</summary>
    public required ImmutableArray<string> Cautions { get; init; }

    /// <summary>Where a food of this kitchen's own was read; null for what is shipped.</summary>
    public FoodOrigin? Origin { get; init; }

    /// <summary>The sheet of typical values, worked out once.</summary>
    public FactSheet Typical => new(this, typical ??= FactSheet.PerGram(this, static _ => 0.5));

    /// <summary>The range of a fact, in its unit; null where it is not known.</summary>
    public Range? RangeOf(Fact fact) => (ranges ??= [.. Fact.All.Select(Looked)])[fact.Index];

    /// <summary>The same ingredient with other figures where these are known better.</summary>
    /// <param name="better">The figures that replace the ingredient's own.</param>
    /// <param name="measures">What spoons and cups of it weigh.</param>
    public Ingredient With(IEnumerable<KeyValuePair<Fact, Figure>> better, ImmutableArray<HouseholdMeasure> measures)
    {
        var figures = Figures.SetItems(better);
        return new Ingredient
        {
            Id = Id,
            Name = Name,
            Role = Role,
            About = About,
            NotFor = NotFor,
            Made = Made,
            UsdaFoodNumber = UsdaFoodNumber,
            Groups = Groups,
            Allergens = Allergens,
            Suits = Suits,
            Figures = figures,
            NoneByNature = NoneByNature.Except(figures.Keys),
            Usage = Usage,
            CountedUnits = CountedUnits,
            HouseholdMeasures = measures,
            Behaviours = Behaviours,
            Cautions = Cautions,
            Origin = Origin,
        };
    }

    /// <inheritdoc/>
    public bool Equals(Ingredient? other) => ReferenceEquals(this, other) || (other is not null && other.Id == Id);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Ingredient);

    /// <inheritdoc/>
    public override int GetHashCode() => hash == 0 ? hash = Id.GetHashCode(StringComparison.Ordinal) : hash;

    /// <inheritdoc/>
    public override string ToString() => Id;

    private Range? Looked(Fact fact) =>
        Figures.TryGetValue(fact, out var figure) ? figure.Range
        : NoneByNature.Contains(fact) ? Range.Zero
        : null;
}
