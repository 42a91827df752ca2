using SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Solving.Answers;

/// <summary>What is known by kitchen of the loaves that were asked about last: many ask about one loaf, each for something else.</summary>
/// <param name="drawn">The bags.</param>
/// <param name="kitchens">How many kitchens are looked at.</param>
internal sealed class KnownReferences(Bags drawn, int kitchens)
{
    /// <summary>Most loaves that are kept; one takes some two megabytes where all kitchens are looked at.</summary>
    private const int MostKept = 8;

    private readonly Lock guard = new();

    // The one that was asked for last stands first.
    private readonly List<ReferenceSamples> kept = [];

    /// <summary>What is known of a reference; whoever asks for the same loaf meanwhile gets the same.</summary>
    public ReferenceSamples Of(Formula reference)
    {
        lock (guard)
        {
            var place = kept.FindIndex(known => known.IsOf(reference));
            var samples = place < 0 ? new ReferenceSamples(reference, drawn, kitchens) : kept[place];
            if (place >= 0)
            {
                kept.RemoveAt(place);
            }
            else if (kept.Count == MostKept)
            {
                kept.RemoveAt(MostKept - 1);
            }

            kept.Insert(0, samples);
            return samples;
        }
    }
}
