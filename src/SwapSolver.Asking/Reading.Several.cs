using System.Collections.Immutable;
using SwapSolver.Asking.Grammar;
using SwapSolver.Asking.Text;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Asking;

/// <content>Where several things go out or come in: two for one, one for two, several swaps, and one or the other.</content>
internal sealed partial class Reading
{
    /// <summary>Of two things either of which may come in, the first is looked at.</summary>
    private void ReadEither()
    {
        var named = unread.Where(lexeme => lexeme.Thing is not null).ToList();
        foreach (var (one, other) in named.Zip(named.Skip(1)).Where(pair => IsOr(pair.First, pair.Second)).Take(1).ToList())
        {
            unread.Remove(other);
            TellEither(one, other);
        }

        foreach (var clause in clauses.Where(clause => clause.First(ClausePattern.OrTo) is not null))
        {
            TellEither(clause.First("to")!, clause.First(ClausePattern.OrTo)!);
        }
    }

    /// <summary>So many of one thing for so many of another are a swap, and no number of eggs: two whole eggs in place of four whites.</summary>
    private void ReadCounted()
    {
        foreach (var clause in All("EGGS").ToList())
        {
            if (clause.All("thing").ToList() is [var comes, var goes] && !IsOneOf(comes, goes) && meaning.IsOwn(goes.Thing!) && !Behind(comes).TakeWhile(lexeme => !ReferenceEquals(lexeme, goes)).Any(lexeme => lexeme.Text == ","))
            {
                clauses = clauses.Replace(clause, new Clause("REPLACE", [new Filled("to", comes), new Filled("instead", (clause.First("instead") ?? clause.First("standin") ?? clause.First("replaces"))!), new Filled("from", goes)], IsNegated: false));
                problems.Add(sentences.Say("asked-amount", ("words", $"{Said(clause.Counts[0])} {comes.Text}")));
            }
        }
    }

    private void TellEither(Lexeme one, Lexeme other) =>
        problems.Add(sentences.Say("asked-either", ("words", $"{one.Text} or {other.Text}")));

    /// <summary>Whether there is an 'or' and nothing else between two things that the formula has not.</summary>
    private bool IsOr(Lexeme one, Lexeme other) =>
        !meaning.IsOwn(one.Thing!) && !meaning.IsOwn(other.Thing!)
        && Behind(one).TakeWhile(lexeme => !ReferenceEquals(lexeme, other)).Where(lexeme => !lexeme.Is("article")).ToList() is [] or [{ Text: "or" }]
        && Behind(one).FirstOrDefault()?.Text == "or";

    /// <summary>The second of two things that come in together: an acid and a base for a powder. Other pairs are not dosed here.</summary>
    private void ReadAlsoComing(Clause swap, Ingredient? goesOut)
    {
        if (swap.First("alsoto") is not { } also)
        {
            return;
        }

        // Milk with a little vinegar for buttermilk is two doses of which nobody can work out more than one.
        if (Leavens(goesOut) && told.To.Length > 0 && Leavens(meaning.Found(told.To)) && meaning.In(also, goesOut) is { } comesToo && Leavens(comesToo) && comesToo.Id != told.To)
        {
            ReadHeld(comesToo);
            told = told with { AlsoTo = comesToo.Id };
            return;
        }

        isTurned = true;
        NotRead(swap.Words);
    }

    private static bool Leavens(Ingredient? one) => one?.Role is Role.LeaveningBlend or Role.Acid or Role.Base;

    /// <summary>A swap beside the first. Half of two swaps would be sent out as the whole: one that is not sure turns the question.</summary>
    private void ReadAlsoSwapped(Clause more)
    {
        var (goes, comes) = (more.First("from")!, more.First("to"));
        if (comes is not null && meaning.IsOwn(comes.Thing!) && !meaning.IsOwn(goes.Thing!))
        {
            // Swap butter for ghee and erythritol for xylitol: what the formula has goes out.
            assumed.Add(sentences.Say("asked-turned-round", ("from", comes.Text), ("to", goes.Text)));
            (goes, comes) = (comes, goes);
        }

        if (comes is null || more.First("also") is not null || told.To.Length == 0 || told.AlsoFrom.Length > 0 || isMadeOf || comes.Thing!.IsMadeOf || meaning.Out(goes, newcomer: comes) is not { } goesOut
            || meaning.In(comes, goesOut) is not { } comesIn || goesOut.Equals(comesIn) || goesOut.Id == told.From || told.AlsoSwaps.Any(swap => swap.From == goesOut.Id))
        {
            isTurned = true;
            NotRead(more.Words);
            return;
        }

        if (IsBehindOr(more))
        {
            // Butter for oil or almond milk for oat milk?
            problems.Add(sentences.Say("asked-either", ("words", $"{All("REPLACE").First().Words} or {more.Words}")));
            return;
        }

        ReadHeld(comesIn);
        ReadDoubt(more, goes, comes, goesOut, comesIn);
        if (IsOneOfSeveral(goes, goesOut))
        {
            assumed.Add(sentences.Say("asked-all-of-it", ("thing", goesOut.Name)));
        }

        told = told with { AlsoSwaps = told.AlsoSwaps.Add(new AskedSwap(goesOut.Id, comesIn.Id)) };
    }

    /// <summary>Whether an 'or' stands before a clause, so that it may be asked for in place of the one before it.</summary>
    private bool IsBehindOr(Clause clause) => Before(clause.Parts[0].Lexeme).LastOrDefault(lexeme => lexeme.Text == "or" || !lexeme.MayBeSkipped || lexeme.Is(Lexeme.Stop)) is { Text: "or" };

    /// <summary>What may be asked for in place of something else.</summary>
    private static readonly ImmutableArray<string> Choosable = ["WITHOUT", "REPLACE", "SLICES", "FACTOR", "TIN", "ROUND", "SQUARE", "NAMED_TIN", "GOAL", "LESS", "MORE", "LINE_LESS", "LINE_MORE", "EGGS"];

    private static bool IsChoosable(Clause clause) => Choosable.Contains(clause.Means) || clause.First("bigger") is not null;

    /// <summary>Says where two wishes may be meant one in place of the other: leave out the walnuts or make it less sweet?</summary>
    private void ReadChoices()
    {
        foreach (var (first, second) in clauses.Zip(clauses.Skip(1)).Where(pair => !pair.First.IsNegated && !pair.Second.IsNegated && pair.First.Means != pair.Second.Means && IsChoosable(pair.First) && IsChoosable(pair.Second) && IsBehindOr(pair.Second)))
        {
            assumed.Add(sentences.Say("asked-both", ("words", $"{first.Words} or {second.Words}")));
        }
    }

    /// <summary>The second of two things in whose place one comes. Only a check can be asked with it.</summary>
    private void ReadAlso(Clause swap)
    {
        if (swap.First("also") is not { } also)
        {
            return;
        }

        var goesToo = meaning.Out(also);
        isTurned |= goesToo is null;
        told = told with { AlsoFrom = goesToo?.Id ?? string.Empty };
    }
}
