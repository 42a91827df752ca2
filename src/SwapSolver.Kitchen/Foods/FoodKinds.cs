using System.Collections.Immutable;

namespace SwapSolver.Kitchen.Foods;

/// <summary>Foods whose figures in a table mislead, told by their names: the carbohydrate of cream of tartar and of citrus
/// juice is acid, and soda is no flavour. They behave as the shipped ingredient of the same name.</summary>
/// <param name="List">The kinds.</param>
/// <param name="Fillers">Words of a name that say nothing of the kind, as <c>raw</c>.</param>
public sealed record FoodKinds(ImmutableArray<FoodKind> List, ImmutableHashSet<string> Fillers)
{
    /// <summary>Id of the shipped ingredient that a food is; null where its name says no such thing.</summary>
    /// <param name="name">The name as printed, in any order of its words.</param>
    public string? LikeOf(string name)
    {
        var words = FoodName.Words(name).Where(word => !Fillers.Contains(word)).ToHashSet(StringComparer.Ordinal);
        return words.Count == 0 ? null : List.FirstOrDefault(kind => kind.Names.Any(one => one.SetEquals(words)))?.Like;
    }
}
