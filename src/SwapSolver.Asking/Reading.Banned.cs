using SwapSolver.Asking.Grammar;
using SwapSolver.Asking.Text;
using SwapSolver.Asking.Things;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Asking;

/// <content>What somebody may not have stays out of the whole loaf, whatever comes in for one line of it.</content>
internal sealed partial class Reading
{
    /// <summary>What is not to be in it stays out, whatever comes in for one line of it: he can't have nuts, could I use oat milk?</summary>
    /// <param name="swap">The clause of the swap; null where the swap was guessed.</param>
    /// <param name="gone">What is named to go.</param>
    /// <param name="comes">What is named to come in; null where nothing is.</param>
    /// <param name="goesOut">The line that goes out for it.</param>
    /// <param name="comesIn">What comes in; null where nobody says.</param>
    private void ReadBanned(Clause? swap, Lexeme gone, Lexeme? comes, Ingredient? goesOut, Ingredient? comesIn)
    {
        // All coconut flour and no almond: flour is spoken of.
        if (goesOut is null || BanOf(swap, gone) is not { } ban || (comes is not null && JustBefore(comes)?.Is("allof") is true))
        {
            return;
        }

        var isOfSomebody = IsKeptOut || ban.Parts.Any(part => part.Lexeme.Is("cannothave"));
        var isExact = gone.Thing is { LeftOut: null, Ingredient: not null };
        var wishes = isExact ? [] : meaning.LeftOut(gone, isAllergy: false).ToList();
        // Who may have no egg white may have no whole egg, who may have no oats no oat flour, and who may have no sweeteners no other one.
        if (isOfSomebody && comesIn is not null && !wishes.Any(wish => LeavesOut(wish, comesIn)) && ((isExact && meaning.IsPartOf(gone.Thing!.Ingredient!, comesIn)) || meaning.IsOfKind(comesIn, gone.Thing!)))
        {
            isTurned = true;
            problems.Add(sentences.Say("asked-holds", ("to", comesIn.Name), ("wish", isExact ? gone.Thing!.Ingredient!.Name : gone.Text)));
        }

        // No vinegar, where there is one, goes with the swap of it; where nobody says what comes in for almonds, it is no other almond.
        if (comesIn is null ? isOfSomebody && wishes.Any(wish => wish.Id != goesOut.Id)
            : wishes.Any(wish => meaning.IsAllergen(wish.Id) || LeavesOut(wish, comesIn) || formula.Lines.Any(line => !line.Ingredient.Equals(goesOut) && LeavesOut(wish, line.Ingredient))))
        {
            told = told with { Without = [.. told.Without.Concat(wishes).DistinctBy(wish => wish.Id)] };
        }
    }

    /// <summary>The clause that says of what is named that it is not to be in it; null where none does, as in 'hazelnut flour but no almond'.</summary>
    private Clause? BanOf(Clause? swap, Lexeme gone) =>
        All("WITHOUT").FirstOrDefault(clause => clause.All("without").Any(name => ReferenceEquals(name, gone)) && !clause.Parts.Any(part => part.Lexeme.Is("butnot")))
        ?? (swap?.First("out") is not null || (swap?.First("lack") is not null && IsKeptOut) ? swap : null);

    /// <summary>Whether something is not had for somebody's sake: we have no nuts in the house because of my son.</summary>
    private bool IsKeptOut => lexemes.Any(lexeme => lexeme.Is("keptout") || (lexeme.Is("ailment") && lexemes.Any(word => word.Is("lack") && SentenceOf(word) == SentenceOf(lexeme))));

    /// <summary>What is asked about beside what somebody may not have comes in for the line that goes by that: he can't have eggs, could I use
    /// applesauce? Not where another line does what that does, or several lines that go may be meant.</summary>
    private bool ReadInPlaceOfWhatGoes()
    {
        bool IsSaidWith(Lexeme name, params ReadOnlySpan<string> classes)
        {
            var said = classes.ToArray();
            return lexemes.Any(lexeme => said.Any(lexeme.Is) && SentenceOf(lexeme) == SentenceOf(name));
        }

        if (told.From.Length > 0 || told.Diet.Length > 0 || wanted.Count > 0 || All("WITHOUT").ToList() is not [var ban] || ban.Parts.Any(part => part.Lexeme.Is("butnot"))
            || (All("TO").Select(clause => clause.First("to")).FirstOrDefault() ?? OnlyThingUnread()) is not { } named || IsDisliked(named) || IsOfHealth(named)
            || !IsSaidWith(named, "ask", "what")
            || lexemes.Any(lexeme => lexeme.Is("addto")) || unread.Any(lexeme => lexeme.Is(Lexeme.Unknown) && SentenceOf(lexeme) == SentenceOf(named))
            || meaning.InPlaceOf(named, IsSaidWith(named, "stands", "welcome", "use", "put", "goin", "replaces", "instead", "inplace", "alone") && !IsSaidWith(named, "besides"), IsSaidWith(named, "replaces", "instead", "inplace", "standin"), [.. formula.Lines.Select(line => line.Ingredient).Distinct().Where(GoesAnyway)]) is not var (going, coming))
        {
            return false;
        }

        unread.RemoveAll(lexeme => ReferenceEquals(lexeme, named) || lexeme.Is("use") || lexeme.Is("alone"));
        assumed.Add(sentences.Say(ThingMeaning.IsAlike(going, coming) ? "asked-in-place-of" : "asked-made-for", ("to", coming.Name), ("from", going.Name)));
        told = told with { From = going.Id, To = coming.Id };
        foreach (var gone in ban.All("without"))
        {
            ReadBanned(null, gone, named, going, coming);
        }

        ReadHeld(coming);
        return true;
    }

    /// <summary>A little of something that comes in for what goes: how much is worked out. I can't have xanthan gum, would a bit of psyllium do?</summary>
    private void ReadALittle()
    {
        foreach (var little in All("UNSUPPORTED").Where(clause => clause.First("alittle") is not null && !meaning.IsOwn(clause.First("thing")!.Thing!) && All("WITHOUT", "LACK").Any()).ToList())
        {
            clauses = clauses.Remove(little);
            unread.Add(little.First("thing")!);
            NotRead(little.First("alittle")!.Text);
        }
    }

    /// <summary>Whether a line goes by what is to be left out, or by a diet.</summary>
    private bool GoesAnyway(Ingredient line) => told.Without.Any(wish => LeavesOut(wish, line)) || IsAgainstDiet(line);
}
