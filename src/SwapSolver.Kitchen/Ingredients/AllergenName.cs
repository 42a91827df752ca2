using System.Collections.Immutable;

namespace SwapSolver.Kitchen.Ingredients;

/// <summary>An allergen of a list.</summary>
/// <param name="Id">Its id, as <c>tree-nuts</c>.</param>
/// <param name="Name">Its name for a sentence.</param>
/// <param name="Also">Other words that mean it.</param>
/// <param name="Lists">The lists that name it: <c>us</c>, <c>eu</c> or both.</param>
public sealed record AllergenName(string Id, string Name, ImmutableArray<string> Also, ImmutableArray<string> Lists)
{
    /// <summary>Whether a word means it: its id, its name or another word, in letters of any size.</summary>
    public bool IsCalled(string word) => Also.Prepend(Name).Prepend(Id).Contains(word, StringComparer.OrdinalIgnoreCase);
}
