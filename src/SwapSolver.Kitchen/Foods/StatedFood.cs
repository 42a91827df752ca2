using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Foods;

/// <summary>A food as a table or a packet states it: what is in it, not yet what it does in a batter. What is not
/// stated is not known; it is never taken to be nothing.</summary>
public sealed class StatedFood
{
    /// <summary>Short stable id, as <c>my-coconut-flour</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Plain name.</summary>
    public required string Name { get; init; }

    /// <summary>Where the figures were read.</summary>
    public required FoodOrigin Origin { get; init; }

    /// <summary>Number in the USDA Standard Reference; null where it has none.</summary>
    public string? UsdaFoodNumber { get; init; }

    /// <summary>Id of the ingredient that it behaves like in a batter; null where none was named.</summary>
    public string? Like { get; init; }

    /// <summary>What it does in a formula; null where that was not said.</summary>
    public Role? Role { get; init; }

    /// <summary>The stated figures, each with its range.</summary>
    public required ImmutableDictionary<Fact, Figure> Figures { get; init; }

    /// <summary>The stated allergens; null where none were stated, which is not the same as none.</summary>
    public StatedAllergens? Allergens { get; init; }

    /// <summary>Who can eat it; null where that was not said.</summary>
    public Suits? Suits { get; init; }

    /// <summary>What spoons and cups of it weigh.</summary>
    public ImmutableArray<HouseholdMeasure> HouseholdMeasures { get; init; } = [];

    /// <summary>The same food with these figures.</summary>
    /// <param name="figures">All its figures.</param>
    public StatedFood With(ImmutableDictionary<Fact, Figure> figures) => new()
    {
        Id = Id,
        Name = Name,
        Origin = Origin,
        UsdaFoodNumber = UsdaFoodNumber,
        Like = Like,
        Role = Role,
        Figures = figures,
        Allergens = Allergens,
        Suits = Suits,
        HouseholdMeasures = HouseholdMeasures,
    };
}
