using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Measures;

/// <summary>How much a measure holds by how it was filled, percent of the household weight [%].</summary>
/// <param name="Id">Its plain name, as <c>sifted</c>.</param>
/// <param name="Names">Every way to write it; empty for what holds where nothing is said.</param>
/// <param name="Low">Low end [%].</param>
/// <param name="Typical">Typical [%].</param>
/// <param name="High">High end [%].</param>
/// <param name="Source">Key of the source.</param>
/// <param name="Mark">How it is known.</param>
public sealed record Filling(
    string Id, ImmutableArray<string> Names, Percent Low, Percent Typical, Percent High, string Source, Mark Mark)
{
    /// <summary>What so filled weighs, where the household weight is known [g].</summary>
    public GramRange Of(Grams level) => new(level * Low.Share, level * Typical.Share, level * High.Share);
}

/// <summary>The fillings that are known.</summary>
/// <param name="Named">By the words of a line.</param>
/// <param name="Powder">What holds for a powder where nothing is said.</param>
/// <param name="Liquid">What holds for what pours.</param>
/// <param name="Scale">How far a kitchen scale may be off [g].</param>
/// <param name="Pours">Ids of what pours, soft fats and purees among them.</param>
/// <param name="Whole">Flours and meals whose household weights are of the whole seed.</param>
public sealed record Fillings(
    ImmutableArray<Filling> Named, Filling Powder, Filling Liquid, Grams Scale, ImmutableHashSet<string> Pours, WholeSeedWeights Whole)
{
    /// <summary>Water of what pours, at the least [g/100 g]; common practice.</summary>
    private const double MostlyWater = 50;

    /// <summary>How an ingredient lies in a measure: as a line says, else by its kind.</summary>
    public Filling Of(Ingredient ingredient, Filling? said) =>
        Pours.Contains(ingredient.Id) || IsOwnLiquid(ingredient) ? Liquid : said ?? Powder;

    /// <summary>A vinegar or milk that this kitchen put in stands on no list, and pours as the shipped ones do.</summary>
    private static bool IsOwnLiquid(Ingredient ingredient) =>
        ingredient is { Origin: not null, Role: Role.Liquid or Role.Acid } && ingredient.RangeOf(Fact.Water)?.Typical > MostlyWater;
}
