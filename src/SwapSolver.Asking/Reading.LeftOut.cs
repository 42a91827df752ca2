using SwapSolver.Asking.Grammar;
using SwapSolver.Asking.Text;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Asking;

/// <content>What is to be left out.</content>
internal sealed partial class Reading
{
    /// <summary>With this word begins what is asked without a word of asking: any eggs in it?</summary>
    private const string Any = "any ";

    private void ReadLeftOut()
    {
        var goes = All("WITHOUT").ToList();
        foreach (var inside in goes.Where(clause => IsOfInside(clause) && !IsAskedInside(clause)).ToList())
        {
            // That eggs are in it is no question, and who would put walnuts in it does not ask whether they are.
            goes.Remove(inside);
            unread.AddRange(inside.All("without"));
        }

        foreach (var amount in goes.Where(clause => clause.First("without") is { } name && JustBefore(name)?.Is("howmuch") is true).ToList())
        {
            // How much of the flour do I need is no question whether it is needed.
            goes.Remove(amount);
            unread.AddRange(amount.All("without"));
        }

        foreach (var offered in goes.Where(clause => clause is { Parts: [.., { Lexeme: var end }] } && end.Is("isitok") && clause.First("out") is null && clause.All("without").All(name => !meaning.IsOwn(name.Thing!) && name.Thing!.LeftOut is null)).ToList())
        {
            // Unsalted butter, is that ok? What the loaf has not is to come in.
            goes.Remove(offered);
            unread.AddRange(offered.All("without"));
        }

        ReadLacked(goes);
        if (goes.Count > 1 && goes.Skip(1).Any(clause => Before(clause.Parts[0].Lexeme).LastOrDefault()?.Text == "or"))
        {
            // Without butter or without eggs?
            assumed.Add(sentences.Say("asked-list", ("words", string.Join(", ", goes.Select(clause => clause.Words)))));
        }

        told = told with { Without = [.. goes.SelectMany(LeftOutBy).DistinctBy(wish => wish.Id)] };
        foreach (var clause in goes.Where(clause => clause.First("contains") is not null || clause.First("need") is not null || clause.First("needed") is not null || IsOfInside(clause) || IsWhetherItBothers(clause)))
        {
            if (clause.First("needed") is { } needed && !question.Contains('?', StringComparison.Ordinal) && !IsAskedBefore(needed))
            {
                // That vanilla is essential is no question.
                isTurned = true;
                problems.Add(sentences.Say("asked-keep", ("words", clause.Words)));
                continue;
            }

            assumed.Add(sentences.Say("asked-whether-without", ("words", clause.Words)));
        }
    }

    /// <summary>Says where milk goes and almond milk stays.</summary>
    private void ReadStays()
    {
        foreach (var named in All("WITHOUT").SelectMany(clause => clause.All("without")))
        {
            if (meaning.CalledAlike(named) is { } stays && stays.Id != told.From && !told.Without.Any(wish => LeavesOut(wish, stays)))
            {
                assumed.Add(sentences.Say("asked-stays", ("thing", named.Text), ("ingredient", stays.Name)));
            }
        }
    }

    /// <summary>Who cannot have nuts in the house has not run out of them.</summary>
    private void ReadForbidden()
    {
        foreach (var clause in All("LACK").Where(clause => clause.First("out")?.Is("cannothave") is true || IsKeptOut).ToList())
        {
            clauses = clauses.Replace(clause, LeavingOutWhatIs(clause));
        }

        foreach (var clause in All("REPLACE").Where(clause => clause.Parts is [{ Part: "to" }, { Part: "not", Lexeme: var not }, { Part: "from" }] && not.Is("thatsnot")).ToList())
        {
            // A yogurt that is not dairy does not come in for the dairy.
            clauses = clauses.Replace(clause, LeavingOutWhatIs(clause with { Parts = clause.Parts.RemoveAt(0) }));
            unread.Add(clause.First("to")!);
        }
    }

    private static Clause LeavingOutWhatIs(Clause lack) =>
        lack with { Means = "WITHOUT", Parts = [.. lack.Parts.Select(part => part.Part == "from" ? part with { Part = "without" } : part)] };

    /// <summary>Whether it is asked if something harms: is the psyllium a problem?</summary>
    private bool IsWhetherItBothers(Clause clause) =>
        clause.First("allergy") is { } word && word.Is("bother") && Before(clause.Parts[0].Lexeme).Reverse().TakeWhile(lexeme => !lexeme.Is(Lexeme.Stop)).FirstOrDefault(lexeme => !lexeme.Is("article")) is { } asks && asks.Is("ask");

    private static bool IsOfInside(Clause clause) => clause.First("inside") is not null && clause.First("lack") is null;

    /// <summary>Whether it is asked if something is in it: any eggs in it; dairy in this?</summary>
    private bool IsAskedInside(Clause clause)
    {
        var name = clause.First("without")!;
        if (Behind(clause.First("inside")!).FirstOrDefault() is { } next && next.Is("join"))
        {
            // Chia in there and no flax.
            return false;
        }

        if (Behind(name).FirstOrDefault() is { } verb && verb.Is("ask"))
        {
            // Would olive oil do in these?
            return false;
        }

        var before = Before(name).Reverse().TakeWhile(lexeme => !lexeme.Is(Lexeme.Stop) && !lexeme.Is("join")).ToList();
        return name.Text.StartsWith(Any, StringComparison.Ordinal) || before is [{ Text: "any" }] || (before.Count <= 1 && IsDoubted());
    }

    /// <summary>What ran out, and may be left out: I have no flax and the shops are shut, can I skip it?</summary>
    private void ReadLacked(List<Clause> goes)
    {
        if (All("LACK").ToList() is [var lack] && !All("TO", "REPLACE").Any() && unread.RemoveAll(lexeme => lexeme.Is("bareout")) > 0)
        {
            leftAway = lack;
            goes.Add(LeavingOutWhatIs(lack));
        }
    }

    /// <summary>Whether an 'or' between what goes may leave the choice, as in 'can I drop butter or cream'.</summary>
    private static bool IsChoice(Clause clause) => clause.First("bareout") is not null || clause.First("leftout") is not null || clause.First("out")?.Is("choosing") is true;

    /// <summary>Says where a wish may be for a part only: two loaves, one without egg; no salt, or half of it.</summary>
    private void ReadPartly()
    {
        for (var place = 0; place < lexemes.Length; place++)
        {
            var said = lexemes[place];
            var behind = lexemes.Skip(place + 1).Where(lexeme => !lexeme.MayBeSkipped).Take(2).ToList();
            var next = behind.FirstOrDefault();
            var isPart = said.Is("partly") && (said.Is("factor") || told.IsSized) && next is not null && (next.Is("out") || next.Is("diet") || (next.Thing is not null && behind[^1].Is("free")));
            var isEither = said.Is("factor") && place > 0 && lexemes[place - 1].Text is "or" or "with" && (!told.Without.IsEmpty || All("REPLACE").Any());
            if (isPart || isEither)
            {
                isTurned = true;
                problems.Add(sentences.Say("asked-unsupported", ("words", isPart ? $"{said.Text} {next!.Text}" : $"{lexemes[place - 1].Text} {said.Text}")));
            }
        }
    }

    private bool IsAllergy(Clause clause) => clause.Parts.Any(part => part.Lexeme.Is("bodily")) || unread.Any(lexeme => lexeme.Is("bodily"));

    /// <summary>Whether a wish leaves an ingredient out: by its own name, by what it carries, or by its group.</summary>
    private static bool LeavesOut(LeftOutWish wish, Ingredient one) => one.Id == wish.Id || one.Allergens.Carries(wish.Id) || one.Groups.Contains(wish.Id);

    private IEnumerable<LeftOutWish> LeftOutBy(Clause clause)
    {
        if (clause.First("illness") is { } illness)
        {
            return [new LeftOutWish(illness.Means("illness"), illness.Means("illness"))];
        }

        var named = clause.All("without").ToList();
        if (named.Count > 1 && (named.Count == 2 || !meaning.IsOwn(named[^1].Thing!)) && JoinsBetween(named[^2], named[^1]).All(join => join.Text == ","))
        {
            // Behind a comma may stand what comes for what goes.
            assumed.Add(sentences.Say("asked-list", ("words", string.Join(", ", named.Select(lexeme => lexeme.Text)))));
        }

        if (named.Count > 1 && (clause.First("both")?.Is("either") is true || (IsChoice(clause) && JoinsBetween(named[0], named[^1]).Any(join => join.Text == "or"))))
        {
            assumed.Add(sentences.Say("asked-list", ("words", Phrases.List(named.Select(lexeme => lexeme.Text)))));
        }

        return named.SelectMany(lexeme => meaning.LeftOut(lexeme, IsAllergy(clause)));
    }

    /// <summary>Whether a word of asking stands before the first name, and before this word.</summary>
    private bool IsAskedBefore(Lexeme word) =>
        lexemes.TakeWhile(lexeme => !ReferenceEquals(lexeme, word) && lexeme.Thing is null).Any(lexeme => lexeme.Is("ask"));

    private IEnumerable<Lexeme> JoinsBetween(Lexeme first, Lexeme last) =>
        lexemes.SkipWhile(lexeme => !ReferenceEquals(lexeme, first)).TakeWhile(lexeme => !ReferenceEquals(lexeme, last)).Where(lexeme => lexeme.Is("join"));
}
