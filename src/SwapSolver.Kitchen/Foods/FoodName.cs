using System.Collections.Immutable;

namespace SwapSolver.Kitchen.Foods;

/// <summary>The words of a name in a table of foods.</summary>
public static class FoodName
{
    /// <summary>The words in small letters; figures and signs part them.</summary>
    public static ImmutableArray<string> Words(string name) =>
    [
        .. new string([.. name.Select(letter => char.IsLetter(letter) ? char.ToLowerInvariant(letter) : ' ')])
            .Split(' ', StringSplitOptions.RemoveEmptyEntries),
    ];
}
