using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Forecasts;

/// <summary>Where the figures of a forecast stand: all at their typical value but for one that is moved to an end.</summary>
internal sealed class Doubts
{
    private const string Between = " of ";

    private readonly SortedSet<string> asked = new(StringComparer.Ordinal);

    private readonly string? moved;

    private readonly double share;

    private Doubts(string? moved, double share)
    {
        this.moved = moved;
        this.share = share;
    }

    /// <summary>Every figure that was asked for and has a range to be moved in, by its name; empty where one is moved, for then they are known.</summary>
    public IReadOnlyCollection<string> Asked => asked;

    /// <summary>Nothing is moved.</summary>
    public static Doubts None() => new(null, 0.5);

    /// <summary>One figure stands at its low or high end.</summary>
    /// <param name="doubt">Name of the figure.</param>
    /// <param name="high">Whether it is the high end.</param>
    public static Doubts Moved(string doubt, bool high) => new(doubt, high ? 1 : 0);

    /// <summary>A figure where it stands.</summary>
    /// <param name="doubt">Its name; figures of one name move together.</param>
    /// <param name="figure">The figure, in its own unit.</param>
    public double Of(string doubt, Figure figure)
    {
        if (moved is null && figure.Range.Low < figure.Range.High)
        {
            asked.Add(doubt);
        }

        return doubt == moved ? figure.Range.At(share) : figure.Range.Typical;
    }

    /// <summary>A figure of one of many things where it stands; its name is put together only where it is asked for.</summary>
    /// <param name="doubt">What the figure is.</param>
    /// <param name="id">Of what.</param>
    /// <param name="figure">The figure, in its own unit.</param>
    public double Of(string doubt, string id, Figure figure) =>
        moved is null ? Of($"{doubt}{Between}{id}", figure)
        : IsMoved(doubt, id) ? figure.Range.At(share)
        : figure.Range.Typical;

    /// <summary>A fact of an ingredient where it stands: as drawn, or at an end of its range [per g].</summary>
    public double Of(Fact fact, FactSheet facts)
    {
        if (moved is null)
        {
            var drawn = facts[fact];
            // Most lines have no acid and no soda, for certain: many figures would be moved from nothing to nothing.
            if (FactSheet.FactAt(facts.Ingredient, fact, 0) != drawn || FactSheet.FactAt(facts.Ingredient, fact, 1) != drawn)
            {
                asked.Add($"{fact.Id}{Between}{facts.Ingredient.Id}");
            }

            return drawn;
        }

        return IsMoved(fact.Id, facts.Ingredient.Id) ? FactSheet.FactAt(facts.Ingredient, fact, share) : facts[fact];
    }

    /// <summary>Whether a fact of some ingredient may be moved: always where nothing is, for then it is asked what could be.</summary>
    /// <param name="fact">The fact.</param>
    public bool Concern(Fact fact) =>
        moved is null
        || (moved.Length > fact.Id.Length + Between.Length
            && moved.StartsWith(fact.Id, StringComparison.Ordinal)
            && moved.AsSpan(fact.Id.Length, Between.Length).SequenceEqual(Between));

    /// <summary>Whether it is this that is moved; compared in pieces, for it is asked for every fact of every line.</summary>
    private bool IsMoved(string doubt, string id) =>
        moved!.Length == doubt.Length + Between.Length + id.Length
        && moved.StartsWith(doubt, StringComparison.Ordinal)
        && moved.EndsWith(id, StringComparison.Ordinal)
        && moved.AsSpan(doubt.Length, Between.Length).SequenceEqual(Between);
}
