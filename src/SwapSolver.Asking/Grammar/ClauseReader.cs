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

    private const string Narrow = "narrow";

    private readonly ImmutableArray<ClausePattern> patterns = [.. words.Patterns.Select(pattern => new ClausePattern(pattern))];

    /// <summary>The clauses, and what is in none.</summary>
    public (ImmutableArray<Clause> Clauses, ImmutableArray<Lexeme> Unread) Read(ImmutableArray<Lexeme> lexemes)
    {
        // What comes behind a 'just' belongs to no list before it: no coconut flour, just almond flour.
        var apart = lexemes.Where((lexeme, place) => !(lexeme.Is(Join) && place + 1 < lexemes.Length && lexemes[place + 1].Is(Narrow)));
        var telling = WithoutIdleCommas([.. apart.Where(lexeme => !lexeme.MayBeSkipped || lexeme.Is(Lexeme.Stop))]);
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

        return (clauses.ToImmutable(), unread.ToImmutable());
    }

    /// <summary>The clause at the start that reads most; of several the first of the data.</summary>
    private (string Means, ImmutableArray<Filled> Parts, int Length)? Longest(TokenList<Lexeme> list)
    {
        (string Means, ImmutableArray<Filled> Parts, int Length)? longest = null;
        foreach (var pattern in patterns)
        {
            if (pattern.At(list) is { } read && read.Length > (longest?.Length ?? 0))
            {
                longest = (pattern.Means, read.Parts, read.Length);
            }
        }

        return longest;
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
