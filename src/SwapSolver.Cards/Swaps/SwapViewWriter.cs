using System.Collections.Immutable;
using SwapSolver.Cards.Texts;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Questions;

namespace SwapSolver.Cards.Swaps;

/// <summary>Writes a table of swaps into words.</summary>
/// <param name="Room">What cards are printed with.</param>
/// <param name="Escape">What makes words harmless to the page that they are written on.</param>
internal sealed record SwapViewWriter(CardRoom Room, Func<string, string> Escape)
{
    private static readonly ImmutableArray<string> Heads = ["instead", "use", "change", "mind"];

    /// <summary>The table in words.</summary>
    public SwapTableView Write(SwapTable table)
    {
        var words = new CardWords(Room.Phrases, Room.Dials, table.Locale);
        return new SwapTableView(
            Clean(words.Say("swaps-title", ("formula", table.Formula.DisplayName))),
            Escape(words.Say("swaps-about")),
            table.Judged < table.Pairs ? Escape(words.Say("swaps-part", ("count", words.Number(table.Judged, "0")), ("total", words.Number(table.Pairs, "0")))) : string.Empty,
            Escape(words.Say("swaps-none")),
            Heads.ToImmutableDictionary(head => head, head => Escape(words.Say($"head-{head}"))),
            [.. table.Swaps.Select(swap => Write(words, swap))]);
    }

    private SwapRow Write(CardWords words, ChartedSwap swap) => new(
        Clean(swap.Pair.From.Name),
        Clean(swap is { Pair.To: { } to, Dose: { } dose } ? words.Say("swap-dose", ("grams", words.Grams(dose)), ("ingredient", to.Name)) : words.Say("swap-nothing")),
        Clean(Changes(words, swap)),
        Clean(string.Join(' ', swap.Cautions)));

    private static string Changes(CardWords words, ChartedSwap swap)
    {
        var others = swap.Changes
            .Where(change => !change.Ingredient.Equals(swap.Pair.From) && (swap.Pair.To is not { } to || !change.Ingredient.Equals(to)))
            .Select(change => Change(words, change))
            .ToList();
        return others.Count == 0 ? words.Say("swap-no-change") : string.Join("; ", others);
    }

    private static string Change(CardWords words, Change change)
    {
        var phrase = change.Before == Grams.None ? "swap-in" : change.After == Grams.None ? "swap-out" : "swap-change";
        return words.Say(phrase, ("before", words.Grams(change.Before)), ("after", words.Grams(change.After)), ("ingredient", change.Ingredient.Name));
    }

    private string Clean(string text) => Escape(PlainWords.Of(text));
}
