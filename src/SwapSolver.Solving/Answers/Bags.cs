using System.Collections.Concurrent;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Solving.Answers;

/// <summary>Seeded Latin-hypercube samples of the facts, drawn once for all questions: to draw them anew takes longer than to solve.
/// One bag is one draw: an ingredient is drawn alike whatever else is in the bowl.</summary>
public sealed class Bags
{
    /// <summary>Kitchens that are drawn. The standard error of a share is then at most 0.6 points: strata steady the mean of
    /// each fact, and a share of kitchens in which all bands hold hardly at all.</summary>
    public const int Kitchens = 8192;

    /// <summary>So many of them, the first, are a Latin hypercube by themselves: readings' ranges are told from these. The standard error of
    /// what lies below a range's end is then at most 0.7 points.</summary>
    public const int First = 1024;

    /// <summary>So many, the first of the first, where no more is asked than whether a chance is clearly even: drawn as if by lot, with a
    /// standard error of a share of at most 3.1 points.</summary>
    public const int Few = 256;

    private const int Seed = 20_251;

    /// <summary>Spoons and cups have draws of their own, so that the facts are drawn alike whether or not a line was weighed.</summary>
    private const int SeedOfMeasures = 31_013;

    /// <summary>Most ingredients that are kept drawn, the cupboard of some ten loaves; one takes between one and two megabytes.</summary>
    private const int MostKept = 48;

    /// <summary>How many of them make room for new ones, those that were asked for longest ago.</summary>
    private const int MakeRoom = 12;

    // By object, not by id: what a kitchen measured anew is another bag.
    private readonly ConcurrentDictionary<Ingredient, Kept> drawn = new(ReferenceEqualityComparer.Instance);

    private readonly KnownReferences references;

    private readonly KnownReferences referencesInFirst;

    private readonly int batch;

    private long asked;

    /// <summary>Bags that are drawn where they are asked for.</summary>
    /// <param name="batch">Which batch: another number draws other bags of the same kind.</param>
    public Bags(int batch = 0)
    {
        this.batch = batch;
        references = new KnownReferences(this, Kitchens);
        referencesInFirst = new KnownReferences(this, First);
    }

    /// <summary>The bags of an ingredient.</summary>
    public Bag Of(Ingredient ingredient)
    {
        if (!drawn.TryGetValue(ingredient, out var kept))
        {
            if (drawn.Count >= MostKept)
            {
                // Its own copy: one that is made by its count and then filled fails where others draw meanwhile.
                foreach (var (old, _) in drawn.ToArray().OrderBy(pair => pair.Value.Asked).Take(MakeRoom))
                {
                    drawn.TryRemove(old, out _);
                }
            }

            var random = RandomOf(ingredient, Seed);
            kept = drawn.GetOrAdd(ingredient, new Kept(new Bag(ingredient, Kitchens, _ => Strata(random))));
        }

        kept.Asked = Interlocked.Increment(ref asked);
        return kept.Bag;
    }

    /// <summary>What is known of a reference by kitchen.</summary>
    /// <param name="reference">The reference.</param>
    /// <param name="kitchens">How many kitchens are looked at: <see cref="Kitchens"/>, or <see cref="First"/> or fewer, of which the first are known.</param>
    internal ReferenceSamples OfReference(Formula reference, int kitchens = Kitchens) => (kitchens <= First ? referencesInFirst : references).Of(reference);

    /// <summary>How full the spoons and cups of an ingredient are, by kitchen: 0 (least) to 1 (most).</summary>
    public double[] FillingsOf(Ingredient ingredient) => Strata(RandomOf(ingredient, SeedOfMeasures));

    /// <summary>The seed hangs on the id, so that an ingredient is drawn alike whatever else is in the bowl.</summary>
    private Random RandomOf(Ingredient ingredient, int start) =>
        new(ingredient.Id.Aggregate(unchecked(start + (batch * 7919)), (seed, letter) => unchecked((seed * 31) + letter)));

    /// <summary>A range is cut into as many strata as there are kitchens, and each stratum is drawn from once. Of those that lie side by side
    /// in one of the wider strata of the first kitchens, one goes to them.</summary>
    private static double[] Strata(Random random)
    {
        const int Wide = Kitchens / First;
        var strata = new double[Kitchens];
        var others = First;
        for (var wide = 0; wide < First; wide++)
        {
            var toFirst = random.Next(Wide);
            for (var one = 0; one < Wide; one++)
            {
                strata[one == toFirst ? wide : others++] = ((wide * Wide) + one + random.NextDouble()) / Kitchens;
            }
        }

        random.Shuffle(strata.AsSpan(0, First));
        random.Shuffle(strata.AsSpan(First));
        return strata;
    }

    private sealed class Kept(Bag bag)
    {
        public Bag Bag { get; } = bag;

        public long Asked { get; set; }
    }
}
