using System.Collections.Immutable;

namespace SwapSolver.Kitchen.Labels;

/// <summary>The laws on labels that are known.</summary>
/// <param name="All">The laws, by id.</param>
public sealed record LabelLaws(ImmutableArray<LabelLaw> All)
{
    /// <summary>The law of an id; null where there is none.</summary>
    public LabelLaw? Find(string id) => All.FirstOrDefault(law => law.Id == id);
}
