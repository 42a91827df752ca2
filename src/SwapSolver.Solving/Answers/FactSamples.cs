using System.Buffers;
using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Diagnostics;
using System.Numerics;
using System.Numerics.Tensors;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Answers;

/// <summary>
/// A formula in many kitchens: brands differ, harvests differ. The reference and its variant see the same bag; the verdict
/// is on the change, not on the absolute figure.
/// </summary>
public sealed class FactSamples : IDisposable
{
    private readonly Bags drawn;

    private readonly int kitchens;

    private readonly FrozenDictionary<Ingredient, Bag> bags;

    private readonly MeasuredLines measured;

    private readonly FrozenDictionary<Ingredient, double[]> fillings;

    // Of one answer: its bands and its readings ask for the same.
    private readonly Dictionary<(Balance Balance, Formula Formula, Formula Reference), double[]> read = new(SameObjects.Instance);

    // Its size is one that the pool has exactly. What is worked out of one answer is overwritten with the next: room that is taken anew
    // each time is slow to write to, for it has left the processor's own memory.
    private readonly List<double[]> borrowed = [];

    private (Formula Reference, ReferenceSamples Samples)? known;

    private (Formula Formula, Formula Reference, Ingredient[] Differing)? compared;

    /// <summary>Draws the samples for some ingredients.</summary>
    /// <param name="ingredients">The ingredients.</param>
    /// <param name="measured">What lines may weigh that were not weighed; null where all were.</param>
    /// <param name="drawn">The bags of this question; null for the usual ones.</param>
    public FactSamples(IEnumerable<Ingredient> ingredients, MeasuredLines? measured = null, Bags? drawn = null)
        : this(ingredients, measured, drawn, Bags.Kitchens)
    {
    }

    private FactSamples(IEnumerable<Ingredient> ingredients, MeasuredLines? measured, Bags? drawn, int kitchens)
    {
        this.drawn = drawn ?? new Bags();
        this.kitchens = kitchens;
        this.measured = measured ?? MeasuredLines.None;
        fillings = this.measured.MayWeigh.Keys.ToFrozenDictionary(ingredient => ingredient, this.drawn.FillingsOf);
        bags = ingredients.Distinct().ToFrozenDictionary(ingredient => ingredient, this.drawn.Of);
    }

    /// <summary>Draws the samples for a reference and what became of it.</summary>
    /// <param name="reference">The reference.</param>
    /// <param name="formula">What became of it.</param>
    /// <param name="drawn">The bags of this question.</param>
    /// <param name="kitchens">How many kitchens are looked at: all, the first of them that are spread over the ranges by themselves, or a few of those.</param>
    internal FactSamples(Formula reference, Formula formula, Bags drawn, int kitchens = Bags.Kitchens)
        : this(reference.Lines.Concat(formula.Lines).Select(line => line.Ingredient), null, drawn, kitchens)
    {
    }

    /// <summary>How many kitchens are looked at.</summary>
    internal int Kitchens => kitchens;

    /// <summary>Where some facts stand in their ranges, by ingredient; those that have no range stand nowhere.</summary>
    /// <param name="facts">The facts.</param>
    internal IEnumerable<(Ingredient Ingredient, Fact Fact, RangeParts Parts)> PartsOf(IReadOnlySet<Fact> facts) =>
        from bag in bags
        from fact in bag.Value.Shares.Keys
        where facts.Contains(fact)
        select (bag.Key, fact, bag.Value.PartsOf(fact));

    /// <summary>Share of kitchens in which a formula keeps every band, 0 to 1.</summary>
    public double ChanceOfBalance(ImmutableArray<Hold> holds, Formula reference, Formula formula) =>
        Misses(holds, reference, formula).AsSpan().Count(0) / (double)kitchens;

    /// <summary>Whether a formula keeps every band, by kitchen. Bands that hang on the reference are taken from the
    /// reference in the same kitchen.</summary>
    public bool[] Balances(ImmutableArray<Hold> holds, Formula reference, Formula formula) =>
        Array.ConvertAll(Misses(holds, reference, formula), static misses => misses == 0);

    /// <summary>0 for each kitchen in which a formula keeps every band, and anything else for the others.</summary>
    private long[] Misses(ImmutableArray<Hold> holds, Formula reference, Formula formula)
    {
        var misses = new long[kitchens];
        foreach (var hold in holds)
        {
            var levels = Levels(hold.Balance, formula, reference);
            var (lowest, highest) = Of(reference).EndsOf(hold);
            if (levels is [var single] && lowest is [var low] && highest is [var high])
            {
                if (single < low || single > high)
                {
                    Array.Fill(misses, -1);
                    break;
                }

                continue;
            }

            AddMisses(misses, levels, lowest, highest);
        }

        return misses;
    }

    /// <summary>Marks those kitchens in which the reading does not lie between the ends. No reading is no number, which is neither below nor above.</summary>
    private static void AddMisses(Span<long> misses, ReadOnlySpan<double> levels, ReadOnlySpan<double> lowest, ReadOnlySpan<double> highest)
    {
        // Kitchens are drawn by powers of two: none is left over.
        Debug.Assert(misses.Length % Vector<double>.Count == 0, "some kitchens would be left over");
        for (var kitchen = 0; kitchen < misses.Length; kitchen += Vector<double>.Count)
        {
            var level = Some(levels, kitchen);
            var outside = Vector.LessThan(level, Some(lowest, kitchen)) | Vector.GreaterThan(level, Some(highest, kitchen));
            (new Vector<long>(misses[kitchen..]) | outside).CopyTo(misses[kitchen..]);
        }

        // Where all kitchens have one figure, it stands there once.
        static Vector<double> Some(ReadOnlySpan<double> figures, int kitchen) =>
            figures.Length == 1 ? new Vector<double>(figures[0]) : new Vector<double>(figures[kitchen..]);
    }

    /// <summary>By how much a reading passes the worse end of its band, by kitchen, counted in half widths of the band with
    /// typical facts; negative where it is inside; none where there is no band or no reading.</summary>
    public double[] Passed(Hold hold, Formula reference, Formula formula)
    {
        if (HalfWidth(Models.Scenario.BandOf(hold, reference, Draws.Typical)) is not { } unit)
        {
            return [];
        }

        var levels = Levels(hold.Balance, formula, reference);
        var bandIn = Of(reference).BandsOf(hold);
        var passed = new double[kitchens];
        for (var kitchen = 0; kitchen < passed.Length; kitchen++)
        {
            var level = ReferenceSamples.At(levels, kitchen);
            passed[kitchen] = double.IsNaN(level) ? double.NegativeInfinity : Passed(bandIn(kitchen), level) / unit;
        }

        return passed;
    }

    /// <summary>The 5th and the 95th percentile of a reading in the first kitchens; its typical value where it has no spread. Lines that were not
    /// weighed are drawn too, so both formulas have one line an ingredient where there are such lines.</summary>
    public (Level Low, Level High) SpreadOf(Balance balance, Formula formula, Formula reference) =>
        measured.MayWeigh.Count > 0 ? Spread(Filled(balance, formula, reference))
        : IsUnchanged(balance, formula, reference) ? Of(reference).SpreadOf(balance, Spread)
        : Spread(Levels(balance, formula, reference));

    private static (Level Low, Level High) Spread(double[] all)
    {
        ReadOnlySpan<double> first = all.AsSpan(0, Math.Min(Bags.First, all.Length));
        var levels = TensorPrimitives.IsNaNAny(first) ? [.. first.ToArray().Where(level => !double.IsNaN(level))] : first;
        if (levels.Length == 0)
        {
            return (new Level(0), new Level(0));
        }

        var (low, high) = Percentiles.Of(levels);
        return (new Level(low), new Level(high));
    }

    /// <summary>Gives back the room for its figures; nothing may be asked of it any more.</summary>
    public void Dispose()
    {
        foreach (var room in borrowed)
        {
            ArrayPool<double>.Shared.Return(room);
        }

        borrowed.Clear();
        read.Clear();
    }

    private double[] Levels(Balance balance, Formula formula, Formula reference)
    {
        if (IsUnchanged(balance, formula, reference))
        {
            return Of(reference).Levels(balance);
        }

        var key = (balance, formula, reference);
        return read.TryGetValue(key, out var levels)
            ? levels
            : read[key] = SampledReading.Of(balance, formula, reference, ingredient => bags[ingredient], kitchens, Borrowed);
    }

    /// <summary>Whether a reading is the reference's own in every kitchen: what differs adds nothing to it.</summary>
    private bool IsUnchanged(Balance balance, Formula formula, Formula reference) =>
        ReferenceEquals(formula, reference)
        || Differing(formula, reference).All(ingredient => States(ingredient, balance) && bags[ingredient].Of(balance, reference).IsNone);

    /// <summary>Whether all that a balance reads is known of an ingredient; what went out need not state it.</summary>
    private static bool States(Ingredient ingredient, Balance balance) => balance.Reads.All(fact => ingredient.RangeOf(fact) is not null);

    /// <summary>The ingredients that do not weigh the same in both.</summary>
    private Ingredient[] Differing(Formula formula, Formula reference)
    {
        if (compared is not { } before || !ReferenceEquals(before.Formula, formula) || !ReferenceEquals(before.Reference, reference))
        {
            var grams = new Dictionary<Ingredient, double>(ReferenceEqualityComparer.Instance);
            foreach (var line in reference.Lines)
            {
                grams[line.Ingredient] = grams.GetValueOrDefault(line.Ingredient) - line.Grams.Value;
            }

            foreach (var line in formula.Lines)
            {
                grams[line.Ingredient] = grams.GetValueOrDefault(line.Ingredient) + line.Grams.Value;
            }

            compared = before = (formula, reference, [.. grams.Where(pair => pair.Value != 0).Select(pair => pair.Key)]);
        }

        return before.Differing;
    }

    private double[] Borrowed()
    {
        var room = ArrayPool<double>.Shared.Rent(kitchens);
        borrowed.Add(room);
        return room;
    }

    private ReferenceSamples Of(Formula reference)
    {
        if (known is not { } before || !ReferenceEquals(before.Reference, reference))
        {
            known = before = (reference, drawn.OfReference(reference, kitchens));
        }

        return before.Samples;
    }

    /// <summary>A reading by kitchen where each kitchen fills its cups in its own way.</summary>
    private double[] Filled(Balance balance, Formula formula, Formula reference) =>
    [
        .. Enumerable.Range(0, Bags.First)
            .Select(kitchen => balance.Read(Filled(formula, kitchen), Filled(reference, kitchen), In(kitchen))?.Value ?? double.NaN),
    ];

    private Formula Filled(Formula formula, int kitchen) => measured.Filled(formula, (ingredient, grams) => grams.At(fillings[ingredient][kitchen]));

    private Draw In(int kitchen) => ingredient => bags[ingredient].In(kitchen);

    private static double Passed(Band band, double level) =>
        Math.Max(band.Low?.Value - level ?? double.NegativeInfinity, level - band.High?.Value ?? double.NegativeInfinity);

    private static double? HalfWidth(Band band) => band switch
    {
        { Low: { } low, High: { } high } when high.Value > low.Value => (high.Value - low.Value) / 2,
        { Low: { Value: > 0 } low } => low.Value / 2,
        { High: { Value: > 0 } high } => high.Value / 2,
        _ => null,
    };
}
