using System.Collections.Frozen;
using System.Collections.Immutable;

namespace SwapSolver.Kitchen.Ingredients;

/// <summary>The words that files use for roles, as <c>leavening-blend</c>.</summary>
public static class RoleWords
{
    private static readonly FrozenDictionary<string, Role> ByWord = Enum.GetValues<Role>().ToFrozenDictionary(Of, StringComparer.Ordinal);

    /// <summary>Every word, in the order of the roles.</summary>
    public static ImmutableArray<string> All { get; } = [.. Enum.GetValues<Role>().Select(Of)];

    /// <summary>The word of a role.</summary>
    public static string Of(Role role) => role == Role.LeaveningBlend ? "leavening-blend" : role.ToString().ToLowerInvariant();

    /// <summary>The role of a word; null where it is none.</summary>
    public static Role? Find(string word) => ByWord.TryGetValue(word, out var role) ? role : null;
}
