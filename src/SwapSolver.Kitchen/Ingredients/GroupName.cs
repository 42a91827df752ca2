using System.Collections.Immutable;

namespace SwapSolver.Kitchen.Ingredients;

/// <summary>A group of ingredients.</summary>
/// <param name="Id">Its id, as <c>seeds</c>.</param>
/// <param name="Name">Its name for a sentence.</param>
/// <param name="Also">Other words that mean it.</param>
public sealed record GroupName(string Id, string Name, ImmutableArray<string> Also);
