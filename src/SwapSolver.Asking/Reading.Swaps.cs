using System.Collections.Immutable;
using SwapSolver.Asking.Grammar;
using SwapSolver.Asking.Text;
using SwapSolver.Asking.Things;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Asking;

/// <content>Which thing goes out and which comes in.</content>
internal sealed partial class Reading
{
    /// <summary>Parts of a swap that say for certain which of two things goes out.</summary>
    private static readonly ImmutableArray<string> Directed = ["only", "out", "andno", "not"];

    /// <summary>Parts of a clause that leaves one thing out and has another, and says not that it comes in its place.</summary>
    private static readonly ImmutableArray<string> Implied = ["out", "andno", "lack"];

    private void ReadSwap()
    {
        var swaps = All("REPLACE", "LACK").Where(clause => clause != leftAway).OrderBy(clause => clause.First("to") is null ? 1 : 0).ToList();
        if (swaps is [var kept] && kept.Parts[0].Part == "instead" && kept.First("to") is null && All("WITHOUT").Any() && All("TO").ToList() is [] && !lexemes.Any(lexeme => lexeme.Is("what")))
        {
            // The eggs out instead of the butter: the butter stays.
            problems.Add(sentences.Say("asked-keep", ("words", kept.Words)));
            swaps.Clear();
        }

        // Who has only ghee and no butter asks for ghee in butter's place.
        if (swaps.Count == 0 && All("TO").FirstOrDefault() is { } only && (only.First("only") ?? only.First("sole") ?? only.First("alone")) is not null && All("WITHOUT").ToList() is [var lacked] && lacked.All("without").ToList() is [var lone] && !IsOfSomethingElse(only, lacked.Parts[0].Lexeme, lone))
        {
            var word = (only.First("only") ?? only.First("sole") ?? only.First("alone"))!;
            // Lots of cocoa are no word of what they are for; only chia is.
            var part = only.First("only") is null || word.Is("contrasting") ? "only" : "out";
            swaps.Add(lacked with { Parts = [new Filled(part, word), new Filled("from", lone), new Filled("to", only.First("to")!)] });
            // Who cannot eat eggs is not helped where the whites stay.
            told = told with { Without = IsAllergy(lacked) || meaning.IsMoreThanOneLine(lone, only.First("to")!) ? told.Without : [] };
        }

        if (swaps.Count == 0 && LoneLeftOut() is { } gone && InsteadOf(gone) is { } swap)
        {
            swaps.Add(swap);
            told = told with { Without = All("WITHOUT").Any(IsAllergy) ? told.Without : [] };
        }

        if (swaps.Count == 0 && MixOfTwo() is { } mix)
        {
            swaps.Add(mix);
        }

        if (swaps is [{ Parts: [{ Part: "from", Lexeme: var offered }, { Part: "standinafter" }] }] && !meaning.IsOwn(offered.Thing!) && All("WITHOUT", "DIET").Any())
        {
            // Would hazelnut meal be a good stand-in? That is what comes in.
            unread.Add(offered);
            swaps.Clear();
        }

        if (swaps.Count == 0)
        {
            ReadSweetenedWith();
            ReadNewcomer();
            if (All("TO").FirstOrDefault(clause => clause.First("alsoto") is not null) is { } both)
            {
                // Can I use ghee and olive oil? The second does not go without a word.
                ReadAlsoComing(both, told.From.Length > 0 ? meaning.Found(told.From) : null);
            }

            return;
        }

        var first = swaps[0];
        var outLexeme = first.First("from")!;
        var had = All("TO").FirstOrDefault(clause => !IsOfSomethingElse(clause, first.Parts[0].Lexeme, outLexeme));
        if (had is null && All("TO").Where(clause => !IsPlenty(clause)).ToList() is { Count: > 0 } others)
        {
            NotRead(others);
        }

        var inLexeme = first.First("to") ?? had?.First("to") ?? LoneThing(outLexeme);
        if (inLexeme is { Thing.Ingredient: null } && JustBefore(inLexeme) is { } which && which.Is("whichone"))
        {
            // What nuts instead of hazelnuts? Of what kind it is to be is told by what can stand in.
            NotRead(inLexeme.Text);
            inLexeme = null;
        }

        // Who writes 'butter for ghee' may mean either way; what the formula has goes out. Who wants one and none of the other may not.
        if (!Directed.Any(part => first.First(part) is not null) && first.First("also") is null && inLexeme?.Thing?.Ingredient is { } maybe && meaning.IsInFormula(maybe.Id) && outLexeme.Thing!.Ingredient is { } other && !meaning.IsInFormula(other.Id))
        {
            assumed.Add(sentences.Say("asked-turned-round", ("from", maybe.Name), ("to", other.Name)));
            (outLexeme, inLexeme) = (inLexeme, outLexeme);
        }

        if (first.First("out")?.Is("bodily") is true || IsAilingBesides(outLexeme, inLexeme))
        {
            // What somebody is allergic to stays out, whatever comes in for one line of it: what instead of the eggs? She's allergic.
            told = told with { Without = [.. told.Without.Concat(meaning.LeftOut(outLexeme, isAllergy: true)).DistinctBy(wish => wish.Id)] };
            if (first.First("out")?.Is("bodily") is not true)
            {
                assumed.Add(sentences.Say("asked-hurts", ("words", unread.First(lexeme => lexeme.Is("bodily")).Text), ("thing", outLexeme.Text)));
            }
        }

        // Whoever may have no egg is not told that the egg white stays.
        var isWhole = BanOf(first, outLexeme) is not null && meaning.IsAllergen(outLexeme.Thing!);
        var goesOut = meaning.Out(outLexeme, told.Without.IsEmpty && !isWhole, inLexeme);
        ReadAlso(first);
        var comesIn = inLexeme is null ? null : meaning.In(inLexeme, goesOut);
        if (comesIn is not null && meaning.IsInFormula(comesIn.Id) && first.First("use") is null && first.First("only") is null && first.First("out") is null && GoesAnyway(comesIn))
        {
            // What is had instead of the ghee, the whey and the buttermilk, none of which may stay?
            assumed.Add(sentences.Say("asked-goes-too", ("ingredient", comesIn.Name)));
            (inLexeme, comesIn) = (null, null);
        }

        isTurned |= goesOut is null || (inLexeme is not null && comesIn is null);
        ReadDoubt(first, outLexeme, inLexeme, goesOut, comesIn);
        ReadBanned(first, outLexeme, inLexeme, goesOut, comesIn);
        ReadHeld(comesIn);
        if (All("FACTOR").FirstOrDefault(clause => clause.First("times")?.Is("ofwhole") is false || clause.First("factor")?.Is("partfactor") is true || IsOfOneThing(clause)) is { } times && told.Factor is not null)
        {
            // Twice as much allulose is no cake of twice the size, nor is half the butter.
            isTurned = true;
            problems.Add(sentences.Say("asked-unsupported", ("words", times.Words)));
        }

        if (goesOut is not null && IsOneOfSeveral(outLexeme, goesOut))
        {
            assumed.Add(sentences.Say("asked-all-of-it", ("thing", goesOut.Name)));
        }

        if (first.First("whatkind") is { } kind && goesOut is not null && !kind.Text.Contains(goesOut.Role.ToString(), StringComparison.OrdinalIgnoreCase))
        {
            // Which oil instead of butter? What else can stand in is told too.
            NotRead(kind.Text);
        }

        if (inLexeme is not null && All("TO").FirstOrDefault(clause => !IsPlenty(clause) && clause.First("to") is { } newer && JustBefore(newer)?.Is("whichone") is not true && !newer.Thing!.Words.Intersect(inLexeme.Thing!.Words).Any() && !IsOneOf(newer, outLexeme)) is { } another)
        {
            // It was too dense with almond flour instead. Can I use pecan meal instead?
            isTurned = true;
            NotRead(another.Words);
        }

        isMadeOf = inLexeme?.Thing?.IsMadeOf is true;
        told = told with { From = goesOut?.Id ?? string.Empty, To = comesIn?.Id ?? string.Empty };
        ReadGoing(outLexeme, inLexeme, goesOut);
        ReadAlsoComing(All("TO").FirstOrDefault(clause => first.First("to") is null || ReferenceEquals(clause.First("to"), inLexeme)) ?? first, goesOut);
        foreach (var more in swaps.Skip(1).Where(clause => clause.First("to") is not null || !(clause.First("from")!.Thing!.Words.SequenceEqual(outLexeme.Thing!.Words) || meaning.IsLine(clause.First("from")!, goesOut?.Id ?? string.Empty))))
        {
            ReadAlsoSwapped(more);
        }
    }

    /// <summary>Whether what is had does not what that does of which it is asked, but what another line does, or is said in another sentence than
    /// the question: I only have salted butter, can I leave out the flax?</summary>
    private bool IsOfSomethingElse(Clause had, Lexeme asked, Lexeme gone) =>
        had.First("to") is { } one && !one.Thing!.IsMadeOf && !meaning.DoesTheSame(one, gone, isOwnToo: true)
        && ((Behind(one).Any(lexeme => ReferenceEquals(lexeme, gone)) && meaning.DoesAsAnother(one, gone))
            || (SentenceOf(had.Parts[0].Lexeme) != SentenceOf(asked) && lexemes.Any(lexeme => (lexeme.Is("ask") || lexeme.Is("what") || lexeme.Is("how")) && SentenceOf(lexeme) == SentenceOf(asked))));

    /// <summary>Whether somebody is said to be allergic, and not to what: it is to what goes.</summary>
    private bool IsAilingBesides(Lexeme goes, Lexeme? comes) =>
        !All("WITHOUT").Any() && unread.FirstOrDefault(lexeme => lexeme.Is("bodily")) is { } ailing
        && !(JustBefore(ailing) is { } before && (before.Is("not") || before.Is("nobody") || before.Is("lack") || before.Is("out") || before.Is(Lexeme.Unknown)))
        && !lexemes.Any(lexeme => lexeme.Thing is not null && SentenceOf(lexeme) == SentenceOf(ailing) && !IsOneOf(lexeme, goes) && !(comes is not null && IsOneOf(lexeme, comes)));

    /// <summary>Whether a factor stands just before a name: double the flax is no loaf of twice the size.</summary>
    private bool IsOfOneThing(Clause factor) =>
        Behind(factor.Parts[^1].Lexeme).FirstOrDefault(lexeme => !lexeme.Is("article") || lexeme.Is("join")) is { Thing: not null };

    /// <summary>The one ingredient of the formula that is to be left out; null where there is none, or several, or a whole group.</summary>
    private Lexeme? LoneLeftOut() => LoneNamedOut() is { } lone && meaning.IsOwn(lone.Thing!) ? lone : null;

    /// <summary>The one thing that is named to be left out; null where there is none, or several, or somebody is allergic to a whole group.</summary>
    private Lexeme? LoneNamedOut() =>
        All("WITHOUT").ToList() is [var clause] && clause.All("without").ToList() is [var lone] && told.Diet.Length == 0 && (lone.Thing!.LeftOut is null || IsOneLine(clause, lone)) ? lone : null;

    /// <summary>Whether a word that may mean a group means one line here, as psyllium does.</summary>
    private bool IsOneLine(Clause clause, Lexeme lone) => !IsAllergy(clause) && told.Without is [var wish] && lone.Thing!.LeftOut == wish.Word && meaning.IsOwn(lone.Thing) && !meaning.IsAllergen(wish.Id);

    /// <summary>What is asked of something that has to go, as in 'erythritol upsets me, could I use allulose' or 'what might I use instead';
    /// null where nothing is.</summary>
    private Clause? InsteadOf(Lexeme gone)
    {
        if (lexemes.Any(lexeme => lexeme.Is("ask") || lexeme.Is("howmuch")) && OnlyThingUnread() is { } named && !IsDisliked(named) && meaning.DoesTheSame(named, gone))
        {
            unread.Remove(named);
            return new Clause("REPLACE", [new Filled("from", gone), new Filled("to", named)], IsNegated: false);
        }

        var isWhatToUse = lexemes.Zip(lexemes.Skip(1)).Any(pair => pair.First.Is("what") && (pair.Second.Is("use") || pair.Second.Is("addto")));
        return isWhatToUse || lexemes.Any(lexeme => lexeme.Is("whatelse")) || (lexemes.Any(lexeme => lexeme.Is("what")) && lexemes.Any(lexeme => lexeme.Is("alone")))
            ? new Clause("REPLACE", [new Filled("from", gone)], IsNegated: false)
            : null;
    }

    /// <summary>Says where it is not sure that one comes in the other's place: who uses ghee and no eggs may mean two things.</summary>
    private void ReadDoubt(Clause swap, Lexeme outLexeme, Lexeme? inLexeme, Ingredient? goesOut, Ingredient? comesIn)
    {
        if (goesOut is null || comesIn is null || swap.First("also") is not null)
        {
            return;
        }

        if (goesOut.Equals(comesIn) && swap.First("mustbe") is null)
        {
            isTurned = true;
            problems.Add(sentences.Say("asked-same", ("from", outLexeme.Text), ("to", inLexeme!.Text), ("ingredient", goesOut.Name)));
        }
        else if ((!ThingMeaning.IsAlike(goesOut, comesIn) || (meaning.IsInFormula(comesIn.Id) && swap.First("only") is null && swap.First("use") is null)) && swap.First("to") is not null && swap.First("alone") is null && IsImplied(swap))
        {
            if (swap.Parts[0] is { Part: "out", Lexeme: var drop } && drop.Is("choosing") && swap.First("use") is not null && !meaning.IsInFormula(comesIn.Id))
            {
                // Drop the one and use the other says it nearly; use the one and drop the other may be two wishes.
                assumed.Add(sentences.Say("asked-made-for", ("from", goesOut.Name), ("to", comesIn.Name)));
                return;
            }

            isTurned = true;
            problems.Add(sentences.Say("asked-unsure-swap", ("from", goesOut.Name), ("to", comesIn.Name)));
        }
    }

    private static bool IsImplied(Clause swap) =>
        Implied.Any(part => swap.First(part) is not null) || (swap.First("not") is not null && swap.First("only") is null && swap.First("use") is null);

    /// <summary>To whom egg is no food, egg white in place of egg is answered with no, and not with another loaf; nor is lard for a vegetarian.</summary>
    private void ReadHeld(Ingredient? comesIn)
    {
        if (comesIn is null)
        {
            return;
        }

        if (told.Without.FirstOrDefault(wish => LeavesOut(wish, comesIn)) is { } held)
        {
            isTurned = true;
            problems.Add(sentences.Say("asked-holds", ("to", comesIn.Name), ("wish", held.Word.Replace('-', ' '))));
        }

        if (IsAgainstDiet(comesIn))
        {
            isTurned = true;
            problems.Add(sentences.Say("asked-not-suits", ("to", comesIn.Name), ("wish", told.Diet.ToLowerInvariant())));
        }
    }

    /// <summary>Whether one is named of what the formula has several of: an egg.</summary>
    private bool IsOneOfSeveral(Lexeme named, Ingredient line) =>
        formula.Lines.FirstOrDefault(one => one.Ingredient.Equals(line)) is { Count: > 1 and var count }
        && JustBefore(named) is { } before && (before.Text is "an" or "a" || (before.Is(Lexeme.Count) && before.Number(Lexeme.Count) < count));

    /// <summary>A sweetener that is to be used, beside any other wish: there is but one that it can come in place of.</summary>
    private void ReadSweetenedWith()
    {
        var asked = All("TO").Where(clause => clause.First("use") is not null).Select(clause => clause.First("to")).FirstOrDefault();
        if ((asked ?? OnlyThingUnread()) is { } named && JustBefore(named) is { } before && before.Is("use") && !before.Is("reported") && !IsDisliked(named) && meaning.OneThatDoesTheSame(named) is var (own, newcomer) && newcomer.Role == Role.Sweetener && own.Role == Role.Sweetener)
        {
            unread.RemoveAll(lexeme => ReferenceEquals(lexeme, named) || ReferenceEquals(lexeme, before));
            assumed.Add(sentences.Say("asked-in-place-of", ("to", newcomer.Name), ("from", own.Name)));
            told = told with { From = own.Id, To = newcomer.Id };
            ReadHeld(newcomer);
        }
    }

    /// <summary>Something that is to come in, and nobody says in whose place, as in 'would stevia work?': in that of the one line that does
    /// the same, where there is one.</summary>
    private void ReadNewcomer()
    {
        // What is added stands in nobody's place, and a word that is not known may say where it goes.
        if (ReadInPlaceOfWhatGoes() || told.From.Length > 0 || told.Diet.Length > 0 || told.IsSized || wanted.Count > 0 || !(IsDoubted() || lexemes.Any(lexeme => lexeme.Is("use") || lexeme.Is("alone")) || IsAllThereIs || (OnlyThingUnread() is { } all && (IsAllOfIt(all) || all.Thing!.IsMadeOf))) || All("BAKE", "HOW_LONG", "MEASURE", "CONVERT").Any()
            || lexemes.Any(lexeme => lexeme.Is("addto")))
        {
            return;
        }

        var named = All("TO").Select(clause => clause.First("to")).FirstOrDefault() ?? OnlyThingUnread();
        if (named is not null && unread.Any(lexeme => lexeme.Is(Lexeme.Unknown) && SentenceOf(lexeme) == SentenceOf(named)))
        {
            return;
        }

        // Beside what is left out it can only come in place of something that goes: no dairy, would coconut oil do?
        if (named is not null && !IsDisliked(named) && !IsOfHealth(named) && (meaning.OneThatDoesTheSame(named) ?? (IsAllOfIt(named) && named.Thing!.Says is null && !clauses.Any(clause => clause.IsNegated) && told.Without.IsEmpty ? meaning.OtherLike(named) : null)) is var (own, newcomer) && (IsAllThereIs || told.Without.All(wish => own.Allergens.Carries(wish.Id) || own.Groups.Contains(wish.Id))))
        {
            unread.RemoveAll(lexeme => ReferenceEquals(lexeme, named) || lexeme.Is("use") || lexeme.Is("alone"));
            assumed.Add(sentences.Say(named.Thing!.IsMadeOf ? "asked-made-for" : "asked-in-place-of", ("to", newcomer.Name), ("from", own.Name)));
            told = told with { From = own.Id, To = newcomer.Id };
            ReadHeld(newcomer);
            isMadeOf = named.Thing.IsMadeOf;
        }
    }

    /// <summary>Whether a word may be of what the loaf has, or of what a reader's blood has, and of nothing that comes in: any sugar? is it good for my sugars?</summary>
    private bool IsOfHealth(Lexeme named) => named.Is("reading") && !lexemes.Any(lexeme => lexeme.Is("use") || lexeme.Is("only") || lexeme.Is("alone") || lexeme.Is("sole"));

    /// <summary>Whether something is all that there is, so that it has to do.</summary>
    private bool IsAllThereIs => All("TO").Any(clause => (clause.First("only") ?? clause.First("sole")) is { } word && !word.Is("plenty"));

    /// <summary>The one thing that is named and stands in no clause, as in 'will ghee do?' or in 'butter gone, coconut oil in'; it is then no
    /// longer unread.</summary>
    private Lexeme? LoneThing(Lexeme goes)
    {
        if (OnlyThingUnread() is not { } only || (only.Thing!.Ingredient is { } known && meaning.IsInFormula(known.Id)))
        {
            return null;
        }

        // Sugar for the yeast is for it to eat.
        if (IsDisliked(only) || JustBefore(only)?.Is("for") is true || IsLackedToo(only))
        {
            return null;
        }

        isOffered = meaning.DoesTheSame(only, goes);
        // What could I use? Every jar has sugar in it.
        if (!isOffered && !lexemes.Any(lexeme => (lexeme.Is("ask") || lexeme.Is("perhaps")) && SentenceOf(lexeme) == SentenceOf(only)))
        {
            return null;
        }

        unread.Remove(only);
        return only;
    }

    /// <summary>Whether something is not to be had either: I cannot get erythritol, nor xylitol; butter is dear, coconut oil too.</summary>
    private bool IsLackedToo(Lexeme name) =>
        All("LACK").FirstOrDefault(clause => SentenceOf(clause.Parts[0].Lexeme) == SentenceOf(name)) is { } lack
        && !Behind(lack.Parts[^1].Lexeme).Any(lexeme => lexeme.Is("ask") && SentenceOf(lexeme) == SentenceOf(name))
        && (JustBefore(name)?.Is("lackstoo") is true || Behind(name).FirstOrDefault()?.Is("likewise") is true);

    private Lexeme? OnlyThingUnread() => unread.Where(lexeme => lexeme.Thing is not null).ToList() is [var only] ? only : null;

    /// <summary>Whether something is to come in the place of another, as in 'this instead of butter'.</summary>
    private bool IsInsteadOf() => All("REPLACE").Any(clause => Between(clause) is not null);

    /// <summary>Whether a word stands in the sentence in which something is to come in another's place.</summary>
    private bool IsInSentenceOfSwap(Lexeme word) =>
        All("REPLACE").Any(clause => SentenceOf(Between(clause) ?? clause.First("from")!) == SentenceOf(word) && !IsBegunAnew(clause.Parts[^1].Lexeme, word));

    /// <summary>Whether a new thought begins between a swap and a word: instead of erythritol, it gives me a headache.</summary>
    private bool IsBegunAnew(Lexeme swap, Lexeme word)
    {
        var behind = Behind(swap).ToList();
        var place = behind.FindIndex(lexeme => ReferenceEquals(lexeme, word));
        var between = behind.Take(place).ToList();
        // Instead of butter, we use schmaltz: that is what comes in.
        return between.Any(lexeme => lexeme.Is("newthought")) && !between.Any(lexeme => lexeme.Is("use") || lexeme.Is("only") || lexeme.Is("put") || lexeme.Is("addto"));
    }

    /// <summary>The word between what comes in and what goes out, where it says which is which.</summary>
    private static Lexeme? Between(Clause swap) => swap.First("instead") ?? swap.First("replaces") ?? swap.First("standin") ?? swap.First("swap") ?? swap.First("put");

    private int SentenceOf(Lexeme word) =>
        Before(word).Count(lexeme => lexeme.Is(Lexeme.Stop));
}
