using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Kitchen.Wording;
using SwapSolver.Solving.Answers;

namespace SwapSolver.Solving.Questions;

/// <summary>The words that a check is answered with.</summary>
internal sealed record SwapWords(Phrases Phrases, ImmutableArray<Swap> Swaps)
{
    /// <summary>Chance below which a 'yes' says that it is one on paper [1].</summary>
    public const double EvenChance = 0.5;

    /// <summary>The swap balances.</summary>
    /// <param name="chance">Share of sampled facts in which it does.</param>
    /// <param name="besides">What a reader should know besides; may be empty.</param>
    public string Yes(double chance, string besides) =>
        Sentences(Phrases.Say("reply-balances", ("swap", Proposal)), Unsure(chance), besides);

    /// <summary>The swap balances if other lines move.</summary>
    /// <param name="repair">What moves.</param>
    /// <param name="besides">What a reader should know besides; may be empty.</param>
    public string YesIf(Answer repair, string besides) => Sentences(
        Phrases.Say("reply-with-repair", ("swap", Proposal), ("changes", Changes(repair.Changes, apartFromSwap: true))),
        Unsure(repair.ChanceOfBalance),
        besides);

    /// <summary>The swap does not balance.</summary>
    public string No(ImmutableArray<string> reasons, Answer? instead)
    {
        var no = Phrases.Say("reply-no", ("swap", Proposal), ("reasons", string.Join("; ", reasons)));
        var way = instead is null
            ? Phrases.Say("reply-nothing-found")
            : Phrases.Say("reply-instead", ("changes", Changes(instead.Changes, apartFromSwap: false)));
        return $"{no} {way}";
    }

    /// <summary>One sentence a balance that is missed.</summary>
    public ImmutableArray<string> Reasons(ImmutableArray<Reading> missed) =>
    [
        .. missed.Select(reading =>
        {
            var (value, limit) = NumberWords.Apart(reading.Value, (IsLow(reading) ? reading.Band.Low : reading.Band.High)!.Value);
            return Phrases.Say(
                IsLow(reading) ? "verdict-low" : "verdict-high",
                ("title", reading.Balance.Settings.Title),
                ("value", value),
                ("limit", limit),
                ("meaning", reading.Meaning));
        }),
    ];

    private static string Sentences(params IEnumerable<string> sentences) =>
        string.Join(' ', sentences.Where(sentence => sentence.Length > 0));

    private string Unsure(double chance) => chance >= EvenChance
        ? string.Empty
        : Phrases.Say("reply-unsure", ("count", Math.Round(chance * 100).ToString(System.Globalization.CultureInfo.InvariantCulture)));

    private static bool IsLow(Reading reading) => reading.Standing == Standing.Below;

    private string Proposal => Phrases.List(Swaps.Select(swap => swap.To is { } to
        ? Phrases.Say(
            "swap-for",
            ("grams", swap.Grams is { } grams ? NumberWords.Grams(grams) : Phrases.Say("same-weight")),
            ("to", to.Name),
            ("from", Outgoing(swap)))
        : Phrases.Say("swap-left-out", ("from", Outgoing(swap)))));

    private string Outgoing(Swap swap) => swap.Goes is { } goes ? Phrases.Say("swap-part", ("grams", NumberWords.Grams(goes)), ("from", swap.From.Name)) : swap.From.Name;

    /// <summary>Changes in one breath; those of the swap itself may be left out.</summary>
    public string Changes(ImmutableArray<Change> changes, bool apartFromSwap) => changes.IsEmpty
        ? Phrases.Say("change-none")
        : Phrases.List(ChangesOf(changes, apartFromSwap));

    private IEnumerable<string> ChangesOf(ImmutableArray<Change> changes, bool apartFromSwap) => changes
        .Where(change => !apartFromSwap || Swaps.All(swap => !change.Ingredient.Equals(swap.From) && !change.Ingredient.Equals(swap.To)))
        .Select(change => (change.Before == Grams.None, change.After == Grams.None) switch
        {
            (_, true) => Phrases.Say("change-out", ("ingredient", change.Ingredient.Name)),
            (true, _) => Phrases.Say("change-in", ("grams", NumberWords.Grams(change.After)), ("ingredient", change.Ingredient.Name)),
            _ => Phrases.Say(
                "change-to",
                ("ingredient", change.Ingredient.Name),
                ("before", NumberWords.Grams(change.Before)),
                ("after", NumberWords.Grams(change.After))),
        });
}
