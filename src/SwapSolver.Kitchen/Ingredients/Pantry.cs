using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace SwapSolver.Kitchen.Ingredients;

/// <summary>Every ingredient that is known, with the words for leaving things out.</summary>
public sealed class Pantry
{
    private readonly Dictionary<string, Ingredient> byId;

    /// <summary>Makes a pantry.</summary>
    /// <param name="ingredients">The ingredients; ids are unique.</param>
    /// <param name="allergens">Allergens by id.</param>
    /// <param name="groups">Group ids, each with a name for a sentence.</param>
    /// <exception cref="ArgumentException">Two ingredients have one id.</exception>
    public Pantry(
        IEnumerable<Ingredient> ingredients,
        IEnumerable<AllergenName> allergens,
        IEnumerable<GroupName> groups)
    {
        Ingredients = [.. ingredients.OrderBy(ingredient => ingredient.Id, StringComparer.Ordinal)];
        // A plain dictionary refuses a second id; ingredients of one id are equal, and an immutable one would let it pass.
        byId = Ingredients.ToDictionary(ingredient => ingredient.Id, StringComparer.Ordinal);
        Allergens = [.. allergens];
        Groups = [.. groups];
    }

    /// <summary>All ingredients, by id.</summary>
    public ImmutableArray<Ingredient> Ingredients { get; }

    /// <summary>The allergens of both lists.</summary>
    public ImmutableArray<AllergenName> Allergens { get; }

    /// <summary>The groups.</summary>
    public ImmutableArray<GroupName> Groups { get; }

    /// <summary>Finds an ingredient by its id.</summary>
    public bool TryGet(string id, [NotNullWhen(true)] out Ingredient? ingredient) => byId.TryGetValue(id, out ingredient);
}
