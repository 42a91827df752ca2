using System.Collections.Immutable;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Service.Shelf;

/// <summary>Finds whom a row of household weights is of: this kitchen's own food, or else every shipped ingredient that has
/// the food number.</summary>
internal sealed class WeightOwners
{
    private readonly ImmutableHashSet<string> known;

    private readonly ILookup<string, string> byNumber;

    /// <summary>Puts the owners in order.</summary>
    /// <param name="shipped">The shipped ingredients.</param>
    /// <param name="own">Ids of this kitchen's own foods.</param>
    public WeightOwners(Pantry shipped, IEnumerable<string> own)
    {
        known = [.. shipped.Ingredients.Select(one => one.Id), .. own];
        byNumber = shipped.Ingredients.Where(one => one.UsdaFoodNumber is not null).ToLookup(one => FoodId.OfNumber(one.UsdaFoodNumber!), one => one.Id, StringComparer.Ordinal);
    }

    /// <summary>The ids; none where nobody is known.</summary>
    /// <param name="foodId">The id of the row.</param>
    public ImmutableArray<string> Of(string foodId) => known.Contains(foodId) ? [foodId] : [.. byNumber[foodId]];
}
