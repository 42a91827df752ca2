using System.Collections.Immutable;
using SwapSolver.Asking.Grammar;
using SwapSolver.Asking.Text;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Asking;

/// <content>What a loaf is to become by a word, and where such a word is no wish for it.</content>
internal sealed partial class Reading
{
    private static readonly ImmutableArray<(string One, string Other)> AtOdds = [("softer", "firmer"), ("sweeter", "less-sweet"), ("moister", "drier"), ("saltier", "less-salt")];

    /// <summary>Whether a word of what a loaf is like is no wish that it be so; then it is told.</summary>
    private bool IsNoWish(Clause clause)
    {
        var goal = clause.First("goal")!;
        if (IsKindOf(goal))
        {
            NotRead(clause.Words);
            return true;
        }

        if (goal.Is("comparative") && JustBefore(goal) is { } denied && (denied.Is("out") || denied.Is("not") || denied.Is("andno")) && IsUnread(denied))
        {
            // No wetter is no wish for it.
            unread.RemoveAll(lexeme => ReferenceEquals(lexeme, denied));
            problems.Add(sentences.Say("asked-negated", ("words", clause.Words)));
            return true;
        }

        if (IsAmongDenied(goal))
        {
            // Neither softer nor sweeter; without getting sweeter or drier.
            problems.Add(sentences.Say("asked-negated", ("words", clause.Words)));
            return true;
        }

        if (clauses.Any(other => other is { IsNegated: true, Means: "GOAL" } && other.First("goal")!.Text == goal.Text))
        {
            // More moist? It could not be more moist.
            isTurned = true;
            return true;
        }

        if (goal.Is("praising") && JustBefore(goal) is { Text: "as" or "equally" } alike && Behind(goal).FirstOrDefault() is not { Text: "as" } && !IsAsFarAsItGoes(goal))
        {
            // As moist as it is, with less butter.
            problems.Add(sentences.Say("asked-keep", ("words", $"{alike.Text} {clause.Words}")));
            isTurned |= clauses.All(other => other == clause || other.Means == "IDLE");
            return true;
        }

        if (goal.Is("praising") && (IsTold(goal) || (JustBefore(goal) is { Text: "how" } && !Behind(goal).Any(next => !next.Is(Lexeme.Stop)))))
        {
            // That it came out soft is no wish that it be.
            NotRead(clause.Words);
            isTurned |= clauses.All(other => other == clause || other.Means == "IDLE");
            return true;
        }

        if (JustBefore(goal) is { } became && (became.Is("foretold") || became.Is("becomes") || (goal.Is("comparative") && FirstOfSentence(clause)?.Is("newthought") is true)) && Behind(goal).FirstOrDefault() is { } later && later.Is("later") && !Before(goal).Any(lexeme => lexeme.Is("wish") || lexeme.Is("please")))
        {
            // How it is the next day is of how it keeps.
            NotRead($"{clause.Words} {later.Text}");
            isTurned |= clauses.All(other => other == clause || other.Means == "IDLE");
            return true;
        }

        if (!IsForetold(clause))
        {
            return false;
        }

        // Whether it will be softer is no wish that it be.
        NotRead(clause.Words);
        return true;
    }

    /// <summary>Whether a word can be but a wish; that a loaf is bland, or soft in its bag, may be said and no more, and cream for something lighter may be of the cream.</summary>
    private bool IsWishedOutright(Lexeme goal)
    {
        var sentence = SentenceOf(goal);
        var before = JustBefore(goal);
        var isOfNewcomer = before is not null && (before.Is("vague") || before.Is("standinafter"));
        var isComparative = goal.Is("comparative") && before?.Is("becomes") is not true && FirstOfSentence(goal)?.Is("newthought") is not true;
        return !isOfNewcomer && (isComparative || lexemes.Any(lexeme => (lexeme.Is("wish") || lexeme.Is("please")) && SentenceOf(lexeme) == sentence));
    }

    /// <summary>Whether as much of it is wished for as can be: as moist as possible.</summary>
    private bool IsAsFarAsItGoes(Lexeme goal) => Behind(goal).FirstOrDefault() is { } next && next.Text.StartsWith("as ", StringComparison.Ordinal);

    /// <summary>Whether a word stands in one list with others of which none is wished for.</summary>
    private bool IsAmongDenied(Lexeme goal)
    {
        var before = Before(goal).Reverse().SkipWhile(lexeme => lexeme.Is("article") || lexeme.Is("goal") || lexeme.Text == "or").ToList();
        return before.FirstOrDefault() is { } first && (first.Is("nobody") || (first.Is("not") && Before(goal).LastOrDefault() is { } last && (last.Is("article") || last.Text == "or")));
    }

    /// <summary>Whether a word is of how it came out.</summary>
    private bool IsTold(Lexeme word) => Before(word).Reverse().TakeWhile(lexeme => (lexeme.MayBeSkipped || lexeme.Text == "and") && !lexeme.Is(Lexeme.Stop) && !lexeme.Is("wish") && !lexeme.Is("please") && !lexeme.Is("exempting")).Any(lexeme => lexeme.Is("cameout"));

    /// <summary>What is wished for by a word; its contrary where less of it is, as in 'a bit less moist'; null where that has no name.</summary>
    private AskedTarget? GoalOf(Lexeme goal)
    {
        var means = goal.Means("goal");
        if (JustBefore(goal) is not { } before || !before.Is("less") || !IsUnread(before))
        {
            return new AskedTarget(means, null, null);
        }

        unread.RemoveAll(lexeme => ReferenceEquals(lexeme, before));
        return AtOdds.Where(pair => pair.One == means || pair.Other == means).Select(pair => new AskedTarget(pair.One == means ? pair.Other : pair.One, null, null)).FirstOrDefault();
    }

    /// <summary>Whether it is asked if a change makes it so: will it be softer without the egg?</summary>
    private bool IsForetold(Clause goal) =>
        ((Before(goal.Parts[0].Lexeme).LastOrDefault() is { } before && before.Is("foretold")) || FirstOfSentence(goal) is { } first && (first.Is("foretelling") || first.Is("foretold")))
        && All("WITHOUT", "REPLACE", "LACK", "DIET", "FACTOR", "SLICES", "LINE_LESS", "LINE_MORE", "LINE_TIMES", "EGGS").Any();

    private Lexeme? FirstOfSentence(Clause clause) => FirstOfSentence(clause.Parts[0].Lexeme);

    private Lexeme? FirstOfSentence(Lexeme word) =>
        Before(word).Reverse().TakeWhile(lexeme => !lexeme.Is(Lexeme.Stop) && !lexeme.Is("wish") && lexeme.Text != ",").LastOrDefault(lexeme => !lexeme.Is("join"));

    /// <summary>Whether a word says of what kind a thing is that comes in, as in 'low-fat yoghurt for sour cream', and not what the loaf is to be.</summary>
    private bool IsKindOf(Lexeme word) =>
        Behind(word).FirstOrDefault() is { Thing: { } thing } && !meaning.IsOwn(thing);

    private bool IsUnread(Lexeme word) => unread.Any(lexeme => ReferenceEquals(lexeme, word));

    /// <summary>Which of two contraries says how the loaf is, where the other says by its form how it is to be; null where that is not sure.</summary>
    private Clause? OneSaidOfLoaf(string one, string other)
    {
        var both = All("GOAL").Where(clause => clause.First("goal")!.Means("goal") is var goal && (goal == one || goal == other)).ToList();
        static bool IsComparative(Clause clause) => clause.First("goal") is { } goal && (goal.Is("comparative") || goal.Text.StartsWith("more ", StringComparison.Ordinal) || goal.Text.StartsWith("less ", StringComparison.Ordinal));
        return both is [var first, var second] && IsComparative(first) != IsComparative(second) ? (IsComparative(first) ? second : first) : null;
    }

    /// <summary>What cannot both be wished: softer and firmer.</summary>
    private void ReadAtOdds()
    {
        foreach (var (one, other) in AtOdds)
        {
            if (wanted.Any(target => target.Name == one) && wanted.Any(target => target.Name == other))
            {
                if (OneSaidOfLoaf(one, other) is { } said)
                {
                    // Could they be softer? They are a bit chewy.
                    wanted.RemoveAll(target => target.Name == said.First("goal")!.Means("goal"));
                    NotRead(said.Words);
                    continue;
                }

                isTurned = true;
                problems.Add(sentences.Say("asked-at-odds", ("words", Phrases.List(All("GOAL").Select(clause => $"'{clause.Words}'")))));
            }
        }
    }
}
