using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace SwapSolver.Kitchen.Ingredients;

/// <summary>Every ingredient that is known, with the words for leaving things out. A kitchen's own foods may be thousands:
/// each is made when it is first asked for.</summary>
public sealed class Pantry
{
    private readonly Dictionary<string, PantryJar> byId;

    private readonly Lazy<ImmutableArray<Ingredient>> ingredients;

    private readonly Lazy<ImmutableArray<Ingredient>> offered;

    /// <summary>Makes a pantry.</summary>
    /// <param name="ingredients">The ingredients; ids are unique.</param>
    /// <param name="allergens">Allergens by id.</param>
    /// <param name="groups">Group ids, each with a name for a sentence.</param>
    /// <exception cref="ArgumentException">Two ingredients have one id.</exception>
    public Pantry(
        IEnumerable<Ingredient> ingredients,
        IEnumerable<AllergenName> allergens,
        IEnumerable<GroupName> groups)
        : this(ingredients.Select(PantryJar.Of), allergens, groups)
    {
    }

    /// <summary>Makes a pantry of ingredients that are made when they are asked for.</summary>
    /// <param name="jars">A jar for each; ids are unique.</param>
    /// <param name="allergens">Allergens by id.</param>
    /// <param name="groups">Group ids, each with a name for a sentence.</param>
    /// <exception cref="ArgumentException">Two ingredients have one id.</exception>
    public Pantry(
        IEnumerable<PantryJar> jars,
        IEnumerable<AllergenName> allergens,
        IEnumerable<GroupName> groups)
    {
        var inOrder = jars.OrderBy(jar => jar.Id, StringComparer.Ordinal).ToImmutableArray();
        for (var place = 1; place < inOrder.Length; place++)
        {
            if (inOrder[place].Id == inOrder[place - 1].Id)
            {
                throw new ArgumentException($"two ingredients have the id '{inOrder[place].Id}'", nameof(jars));
            }
        }

        byId = inOrder.ToDictionary(jar => jar.Id, StringComparer.Ordinal);
        Ids = [.. inOrder.Select(jar => jar.Id)];
        this.ingredients = new(() => [.. inOrder.Select(jar => jar.Ingredient)]);
        // What a food is like may be gone from the pantry, and is then found to be so only once it is made.
        offered = new(() => [.. inOrder.Where(jar => !jar.OnlyWhenNamed).Select(jar => jar.Ingredient).Where(made => !made.Usage.OnlyWhenNamed)]);
        Allergens = [.. allergens];
        Groups = [.. groups];
    }

    /// <summary>The ids of all ingredients, in order.</summary>
    public ImmutableArray<string> Ids { get; }

    /// <summary>All ingredients, by id. Every one of them is made, so ask for it where all are needed.</summary>
    public ImmutableArray<Ingredient> Ingredients => ingredients.Value;

    /// <summary>The ingredients that a formula may be given where nobody named them, by id.</summary>
    public ImmutableArray<Ingredient> Offered => offered.Value;

    /// <summary>The allergens of both lists.</summary>
    public ImmutableArray<AllergenName> Allergens { get; }

    /// <summary>The groups.</summary>
    public ImmutableArray<GroupName> Groups { get; }

    /// <summary>Finds an ingredient by its id.</summary>
    public bool TryGet(string id, [NotNullWhen(true)] out Ingredient? ingredient)
    {
        ingredient = byId.GetValueOrDefault(id)?.Ingredient;
        return ingredient is not null;
    }

    /// <summary>Whether an ingredient of this id is known.</summary>
    public bool Knows(string id) => byId.ContainsKey(id);
}
