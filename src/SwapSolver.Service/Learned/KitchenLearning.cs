using SwapSolver.Learning;
using SwapSolver.Records.Trials;
using SwapSolver.Service.Records;
using SwapSolver.Service.Stored;
using SwapSolver.V1;

namespace SwapSolver.Service.Learned;

/// <summary>What this kitchen learned from its trials. It is worked out from them each time, so that a trial and a choice count
/// at once, and nothing that was learned can drift from what was measured.</summary>
internal sealed class KitchenLearning(KitchenShelf shelf)
{
    /// <summary>Older trials teach no more: a kitchen changes its oven and its bags.</summary>
    private const int MostTrials = 500;

    /// <summary>Every fact of which something was learned, by id.</summary>
    public IReadOnlyList<LearnedOne> All()
    {
        var choices = shelf.Records.Trials.Choices();
        var found = new SortedDictionary<string, (LearnableFact Fact, List<(string, Evidence)> Evidence)>(StringComparer.Ordinal);
        foreach (var (trial, stored) in Trials())
        {
            foreach (var (fact, evidence) in TrialEvidence.Of(trial, stored.Formula, shelf.Learning, shelf.Untouched))
            {
                if (choices.GetValueOrDefault(fact.Id) is { } choice && string.CompareOrdinal(stored.Created, choice.ForgottenBefore) <= 0)
                {
                    continue;
                }

                if (!found.TryGetValue(fact.Id, out var known))
                {
                    found.Add(fact.Id, known = (fact, []));
                }

                known.Evidence.Add((TrialDocument.NameOf(stored), evidence));
            }
        }

        return [.. found.Values.Select(one => new LearnedOne(one.Fact, [.. one.Evidence], choices.GetValueOrDefault(one.Fact.Id) is not { IsOff: 1 }))];
    }

    /// <summary>What was learned of one fact; null where nothing was.</summary>
    public LearnedOne? Find(string id) => All().FirstOrDefault(one => one.Fact.Id == id);

    /// <summary>What is believed of a fact: learned and in use, or as published.</summary>
    public static Belief BeliefOf(LearnableFact fact, IEnumerable<LearnedOne> learned) =>
        learned.FirstOrDefault(one => one.Fact.Id == fact.Id && one.IsUsed)?.Belief ?? fact.Before;

    /// <summary>The trials that count, oldest first.</summary>
    public IEnumerable<(Trial Trial, StoredTrial Stored)> Trials() => shelf.Records.Trials.Newest(MostTrials).Select(stored => (TrialDocument.Read(stored), stored));
}
