using System.Collections.Immutable;
using SwapSolver.Learning;

namespace SwapSolver.Service.Learned;

/// <summary>What a kitchen learned of one fact.</summary>
/// <param name="Fact">The fact.</param>
/// <param name="Evidence">What was measured of it, oldest first, each with the name of its trial.</param>
/// <param name="IsUsed">Whether answers go by it.</param>
internal sealed record LearnedOne(LearnableFact Fact, ImmutableArray<(string Trial, Evidence Evidence)> Evidence, bool IsUsed)
{
    /// <summary>What is believed of it now.</summary>
    public Belief Belief => Fact.Before.After(Evidence.Select(one => one.Evidence));
}
