using System.Collections.Immutable;

namespace SwapSolver.Kitchen.Practice;

/// <summary>The words for what a loaf is to become.</summary>
/// <param name="All">Every word, in the order of the file.</param>
public sealed record GoalList(ImmutableArray<Goal> All)
{
    /// <summary>Every word that is understood.</summary>
    public IEnumerable<string> Words => All.SelectMany(goal => goal.Also.Prepend(goal.Id));

    /// <summary>The goal of a word, written with spaces or dashes; null where there is none.</summary>
    public Goal? Find(string word)
    {
        var plain = word.Trim().ToLowerInvariant().Replace(' ', '-');
        return All.FirstOrDefault(goal => goal.Id == plain || goal.Also.Contains(plain));
    }
}
