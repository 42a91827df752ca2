using SwapSolver.Asking.Grammar;
using SwapSolver.Asking.Text;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Asking;

/// <content>What was not read, and whether it can turn what is asked.</content>
internal sealed partial class Reading
{
    /// <summary>Says what was not read, and whether it can turn what is asked.</summary>
    private void ReadRest()
    {
        if (amounts.Where(amount => amount != going).Select(amount => amount.Words).ToList() is { Count: > 0 } doses)
        {
            problems.Add(sentences.Say("asked-amount", ("words", Phrases.List(doses))));
        }

        if (!shares.IsEmpty && going is null)
        {
            // Half of it is no whole.
            isTurned = true;
            NotRead(Phrases.List(shares.Select(share => share.Words)));
        }

        if (All("KEEP").FirstOrDefault(clause => clause.All("keep").Any(IsNamedOut)) is { } kept)
        {
            // Leave out the vanilla; actually no, keep it.
            isTurned = true;
            problems.Add(sentences.Say("asked-at-odds", ("words", Phrases.List(All("WITHOUT").Append(kept).Select(clause => $"'{clause.Words}'")))));
        }
        else if (All("KEEP").Any())
        {
            problems.Add(sentences.Say("asked-keep", ("words", Phrases.List(All("KEEP").Select(clause => clause.Words)))));
        }

        if (told.To.Length == 0 && told.From.Length == 0 && All("TO").Any(clause => !IsPlenty(clause)))
        {
            NotRead(All("TO"));
        }

        // To leave some eggs out is not to leave out the eggs.
        if (All("WITHOUT").Where(clause => clause.First("outword") is not null || clause.First("out") is not null).SelectMany(clause => clause.All("without")).FirstOrDefault(name => Before(name).LastOrDefault()?.Is("someof") is true) is { } less)
        {
            isTurned = true;
            NotRead($"some {less.Text}");
        }

        if (told.OvenCelsius is not null && !IsTimed)
        {
            NotRead(string.Join(' ', All("OVEN", "GAS").Select(clause => clause.Words)));
        }

        foreach (var fact in clauses.Where(clause => clause.First("free") is not null || clause.Means == "DIET" || (clause.Means == "WITHOUT" && clause.Parts[0].Lexeme.Is("butnot"))).Select(clause => JustBefore(clause.Parts[0].Lexeme)).OfType<Lexeme>().Where(name => name.Thing is not null && unread.Contains(name) && IsSaidAlready(name)).ToList())
        {
            // Whether ghee is free of milk is asked of ghee; who has ghee but no other dairy keeps ghee.
            NotRead(fact.Text);
        }

        foreach (var (more, many) in lexemes.Zip(lexemes.Skip(1)).Where(pair => pair.First.Is("more") && IsUnread(pair.First) && IsUnread(pair.Second) && (pair.Second.Is("slice") || pair.Second.Is("loaf"))))
        {
            // More slices, and softer: nobody says how many.
            NotRead($"{more.Text} {many.Text}");
        }

        foreach (var (alike, high) in lexemes.Zip(lexemes.Skip(1)).Where(pair => pair.First.Text == "as" && pair.Second.Is("praising") && IsUnread(pair.Second)))
        {
            problems.Add(sentences.Say("asked-keep", ("words", $"{alike.Text} {high.Text}")));
        }

        foreach (var still in lexemes.Where(lexeme => lexeme.Is("stillso") && JustBefore(lexeme)?.Is("join") is true))
        {
            problems.Add(sentences.Say("asked-keep", ("words", still.Text)));
        }

        foreach (var after in lexemes.Where(lexeme => lexeme.Is(Lexeme.NamedAfter) && !meaning.IsBorne(lexeme.Means(Lexeme.NamedAfter))))
        {
            // A walnut loaf is no loaf of hazelnuts.
            NotRead(after.Text);
            // What a slice of another loaf has is not worked out here.
            isTurned |= All("FIGURES").Any();
        }

        isTurned |= All("FIGURES").Any() && (lexemes.Any(lexeme => lexeme.Is("tale")) || clauses.Any(clause => clause.IsNegated));

        var rest = unread.Where(lexeme => !lexeme.MayBeUnread && !(lexeme.Is(Lexeme.Count) && told.Slices == lexeme.Number(Lexeme.Count)) && !(told.IsSized && lexeme.Is("samecarbs")) && !IsSaidAlready(lexeme) && !IsAmountOfSize(lexeme) && !(told.Text.Length > 0 && lexeme.Is("reported")) && !(lexeme.Is("bodily") && !told.Without.IsEmpty)).ToList();
        if (rest.Count == 0)
        {
            return;
        }

        // A name that stands in no clause may be what somebody cannot eat; a word beside a measure, or beside a swap that says
        // not what comes in, may belong to it.
        isTurned |= rest.Any(lexeme => Turning.Any(lexeme.Is) || lexeme.Thing is not null || IsBeforeLimit(lexeme) || (told.Factor is not null && (lexeme.Is("instead") || lexeme.Is("swap")))) || told.Text.Length > 0 || (told.To.Length == 0 && IsInsteadOf() && rest.Any(lexeme => (lexeme.Is(Lexeme.Unknown) || lexeme.Is("makesother")) && IsInSentenceOfSwap(lexeme)));
        // The shop has only soya, which I cannot have.
        isTurned |= told.To.Length > 0 && rest.Any(lexeme => lexeme.Is("cannothave"));
        // Pumpkin pie spice is no pumpkin.
        isTurned |= rest.Any(lexeme => lexeme.Is("makesother") && Before(lexeme).LastOrDefault()?.Thing is not null);
        // Protein per roll a bit higher is no question what a roll has.
        isTurned |= All("FIGURES").Any(clause => IsBareFigure(clause) && rest.Any(lexeme => !lexeme.Is("reading") && SentenceOf(lexeme) == SentenceOf(clause.Parts[0].Lexeme)));
        // A third of the flour is not the flour.
        isTurned |= told.From.Length > 0 && rest.Any(lexeme => lexeme.Is("share"));
        // Of several swaps one may be denied by what is not read.
        isTurned |= !told.AlsoSwaps.IsEmpty;
        NotRead(string.Join(", ", rest.Select(lexeme => lexeme.Text)));
    }

    /// <summary>Whether it is but said that there is much of something that the loaf has.</summary>
    private bool IsPlenty(Clause clause) => clause.Parts[0].Lexeme.Is("plenty") && meaning.IsOwn(clause.First("to")!.Thing!);

    /// <summary>Whether a reading is named and no word asks for it: net carbs per slice.</summary>
    private static bool IsBareFigure(Clause clause) => clause is { Means: "FIGURES" } && clause.First("figuresask") is null && clause.First("saltasked") is null;

    private void NotRead(string said) => problems.Add(sentences.Say("asked-not-read", ("words", said)));

    private void NotRead(IEnumerable<Clause> what) => NotRead(Phrases.List(what.Select(clause => clause.Words)));

    /// <summary>Whether a word unread denies the limit behind it: what I cannot have more than is at most that.</summary>
    private bool IsBeforeLimit(Lexeme lexeme) =>
        (lexeme.Is("out") || lexeme.Is("lack"))
        && Behind(lexeme).FirstOrDefault(other => !other.MayBeSkipped) is { } next && (next.Is("below") || next.Is("above") || next.Is("slice"));

    /// <summary>Whether something unread is named that goes anyway, as in 'no egg please: I get hives from egg'.</summary>
    private bool IsSaidAlready(Lexeme lexeme) =>
        lexeme.Thing is { } thing && (meaning.IsLine(lexeme, told.From) || (told.To.Length > 0 && thing.Ingredient?.Id == told.To) || IsLeftOutAnyway(lexeme));

    private bool IsNamedOut(Lexeme kept) => All("WITHOUT").SelectMany(clause => clause.All("without")).Any(name => IsOneOf(name, kept));

    private bool IsLeftOutAnyway(Lexeme lexeme) =>
        (told.Diet == "VEGAN" && meaning.LineOf(lexeme) is { Suits.Vegan: false })
        || meaning.LineOf(lexeme) is { } line && told.Without.Any(wish => LeavesOut(wish, line))
        || meaning.LeftOut(lexeme, isAllergy: false).ToList() is { Count: > 0 } wishes && wishes.All(wish => told.Without.Any(other => other.Id == wish.Id));

    /// <summary>Whether the amount of one line is asked for in another size: the amounts of all are told.</summary>
    private bool IsAmountOfSize(Lexeme lexeme) =>
        told.IsSized && lexeme.Thing is not null && meaning.IsOwn(lexeme.Thing)
        && JustBefore(lexeme)?.Is("howmuch") is true;
}
