using System.Collections.Immutable;
using Superpower.Model;
using SwapSolver.Asking.Text;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Asking.Grammar;

/// <summary>Reads the clauses of a question one behind the other. What is in no clause is kept, so that nothing is passed
/// over in silence.</summary>
internal sealed class ClauseReader(QuestionWords words)
{
    private const string Not = "not";

    private const string Join = "join";

    private const string Instead = "instead";

    private const string Narrow = "narrow";

    private const string Infinitive = "infinitive";

    /// <summary>Classes of words that stand between what comes in and what goes out.</summary>
    private static readonly ImmutableArray<string> BetweenTwo = ["for", "by", "instead", "arrow", "standin", "replaces"];

    /// <summary>Classes of words before which a 'to' says nothing.</summary>
    private static readonly ImmutableArray<string> Verbs = ["out", "bareout", "outverb", "use", "swap", "put"];

    private static readonly ImmutableDictionary<string, string> Had = Lexeme.OneClass("only").Add("contrasting", string.Empty);

    private readonly PatternsByStart patterns = new([.. words.Patterns.Select(pattern => new ClausePattern(pattern))]);

    /// <summary>The clauses, and what is in none.</summary>
    public (ImmutableArray<Clause> Clauses, ImmutableArray<Lexeme> Unread) Read(ImmutableArray<Lexeme> lexemes)
    {
        // What comes behind a 'just' belongs to no list before it: no coconut flour, just almond flour.
        var apart = lexemes.Where((lexeme, place) => place + 1 == lexemes.Length
            || !((lexeme.Is(Join) && (lexemes[place + 1].Is(Narrow) || IsNoList(lexemes, place))) || (lexeme.Is(Infinitive) && Verbs.Any(lexemes[place + 1].Is))));
        var telling = WithoutIdleCommas(Narrowed([.. apart.Where(lexeme => !lexeme.MayBeSkipped || lexeme.Is(Lexeme.Stop) || lexeme.Is(Narrow))]));
        var list = new TokenList<Lexeme>([.. telling.Select(lexeme => new Token<Lexeme>(lexeme, TextSpan.None))]);
        var clauses = ImmutableArray.CreateBuilder<Clause>();
        var unread = ImmutableArray.CreateBuilder<Lexeme>();
        Lexeme? not = null;
        while (!list.IsAtEnd)
        {
            if (Longest(list) is { } best)
            {
                clauses.Add(new Clause(best.Means, best.Parts, not is not null));
                not = null;
                list = Behind(list, best.Length);
                continue;
            }

            var lexeme = list.ConsumeToken().Value.Kind;
            if (not is not null)
            {
                unread.Add(not);
            }

            not = lexeme.Is(Not) ? lexeme : null;
            if (not is null && !lexeme.Is(Join) && !lexeme.Is(Lexeme.Stop))
            {
                unread.Add(lexeme);
            }

            list = Behind(list, 1);
        }

        if (not is not null)
        {
            unread.Add(not);
        }

        return (WithNotAdded(clauses.ToImmutable(), lexemes), unread.ToImmutable());
    }

    /// <summary>The clauses, of which those are negated that say what is not to be added for a wish before them: softer without adding eggs leaves no eggs out.</summary>
    private static ImmutableArray<Clause> WithNotAdded(ImmutableArray<Clause> clauses, ImmutableArray<Lexeme> lexemes) =>
    [
        .. clauses.Select((clause, place) =>
            IsNotAdded(clause) && place > 0 && IsWish(clauses[place - 1]) && AreJoined(lexemes, clauses[place - 1], clause) ? clause with { IsNegated = true } : clause),
    ];

    /// <summary>Whether nothing parts two clauses: no comma, no 'and' and no stop.</summary>
    private static bool AreJoined(ImmutableArray<Lexeme> lexemes, Clause first, Clause second) =>
        !lexemes.SkipWhile(lexeme => !ReferenceEquals(lexeme, first.Parts[^1].Lexeme)).Skip(1).TakeWhile(lexeme => !ReferenceEquals(lexeme, second.Parts[0].Lexeme)).Any(lexeme => lexeme.Is(Join) || lexeme.Is(Lexeme.Stop));

    /// <summary>Whether something is not to be added.</summary>
    private static bool IsNotAdded(Clause clause) => clause.Means == "WITHOUT" && clause.First("out")?.Is("adding") is true;

    /// <summary>Whether a clause is a wish for what a loaf is to be like.</summary>
    private static bool IsWish(Clause clause) => clause is { IsNegated: false, Means: "GOAL" or "MORE" or "LESS" or "LINE_MORE" or "LINE_LESS" };

    /// <summary>The clause at the start that reads most; of several the first of the data.</summary>
    private (string Means, ImmutableArray<Filled> Parts, int Length)? Longest(TokenList<Lexeme> list)
    {
        (string Means, ImmutableArray<Filled> Parts, int Length)? longest = null;
        foreach (var pattern in patterns.Of(list.ConsumeToken().Value.Kind))
        {
            if (pattern.At(list) is { } read && read.Length > (longest?.Length ?? 0))
            {
                longest = (pattern.Means, read.Parts, read.Length);
            }
        }

        return longest;
    }

    /// <summary>Whether what stands behind a comma or an 'and' is in no list with what stands before it: no vinegar, how about lemon juice; no
    /// hazelnuts, almonds ok.</summary>
    private static bool IsNoList(ImmutableArray<Lexeme> lexemes, int place)
    {
        var between = lexemes.Skip(place + 1).TakeWhile(lexeme => lexeme.MayBeSkipped && !lexeme.Is(Lexeme.Stop)).ToList();
        var next = place + 1 + between.Count;
        if (next < lexemes.Length && lexemes[next].Is(Join) && lexemes[next].Thing is null)
        {
            return IsNoList(lexemes, next);
        }

        if (next >= lexemes.Length || lexemes[next].Thing is null)
        {
            return lexemes[place].Text == "," && between.Any(lexeme => lexeme.Is("ask"));
        }

        if (BeginsAnotherSwap(lexemes, place, next))
        {
            return true;
        }

        return (lexemes[place].Text == "plus" && lexemes.Take(place).Any(lexeme => lexeme.Is("out")))
            || between.Any(lexeme => !lexeme.Is("article"))
            || (next + 1 < lexemes.Length && lexemes[next + 1].Is("welcome") && IsLastSaid(lexemes, next + 1) && lexemes.Take(place).Any(lexeme => lexeme.Is("out")) && !lexemes.Any(lexeme => lexeme.Is("instead")));
    }

    /// <summary>Whether a name behind an 'and' is the first of a swap like the one before: ghee for butter and allulose for erythritol.</summary>
    private static bool BeginsAnotherSwap(ImmutableArray<Lexeme> lexemes, int place, int next) =>
        lexemes.Skip(next + 1).FirstOrDefault(lexeme => !lexeme.MayBeSkipped || lexeme.Is(Lexeme.Stop)) is { } between
        && BetweenTwo.Any(between.Is)
        && (BetweenTwo.Any(one => between.Is(one) && lexemes.Take(place).Any(before => before.Is(one)))
            || (lexemes.Take(place).Any(before => before.Is(Instead)) && Following(lexemes, next + 2)?.Thing is not null));

    private static Lexeme? Following(ImmutableArray<Lexeme> lexemes, int from) => lexemes.Skip(from).FirstOrDefault(lexeme => !lexeme.MayBeSkipped);

    private static bool IsLastSaid(ImmutableArray<Lexeme> lexemes, int place) =>
        lexemes.Skip(place + 1).FirstOrDefault(lexeme => !lexeme.MayBeSkipped || lexeme.Is(Lexeme.Stop)) is not { } next || next.Is(Lexeme.Stop) || next.Is(Join);

    /// <summary>A 'just' before a count of something says that no more is had: just three eggs today. One between two names, of which the first is
    /// not had, says that the second is had: no sour cream, just yogurt. Any other says nothing.</summary>
    private static List<Lexeme> Narrowed(List<Lexeme> lexemes) =>
    [
        .. lexemes.Select((lexeme, place) => !lexeme.Is(Narrow) ? lexeme
                : place + 2 < lexemes.Count && lexemes[place + 1].Is(Lexeme.Count) && lexemes[place + 2].Thing is not null ? lexeme with { Classes = Had }
                : place > 1 && place + 1 < lexemes.Count && lexemes[place + 1].Thing is not null && IsLacked(lexemes, place) ? lexeme with { Classes = Had }
                : null)
            .OfType<Lexeme>(),
    ];

    private static bool IsLacked(List<Lexeme> lexemes, int place)
    {
        var name = place - 1 - (lexemes[place - 1].Is("left") ? 1 : 0);
        return name > 0 && lexemes[name].Thing is not null && (lexemes[name - 1].Is("out") || lexemes[name - 1].Is("lack"));
    }

    /// <summary>A comma counts only between names of one list.</summary>
    private static IEnumerable<Lexeme> WithoutIdleCommas(List<Lexeme> lexemes) => lexemes.Where((lexeme, place) =>
        lexeme.Text != "," || (place > 0 && lexemes[place - 1].Thing is not null && place + 1 < lexemes.Count && (lexemes[place + 1].Thing is not null || lexemes[place + 1].Is(Join))));

    private static TokenList<Lexeme> Behind(TokenList<Lexeme> list, int length)
    {
        for (var count = 0; count < length; count++)
        {
            list = list.ConsumeToken().Remainder;
        }

        return list;
    }
}
