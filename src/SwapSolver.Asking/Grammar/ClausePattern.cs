using System.Collections.Immutable;
using Superpower;
using Superpower.Model;
using Superpower.Parsers;
using SwapSolver.Asking.Text;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Asking.Grammar;

/// <summary>A pattern of the data as a parser over lexemes. A part in braces is a class of words or a place for names:
/// <c>{from}</c>, <c>{to}</c> and <c>{thing}</c> take one name, <c>{without}</c> and <c>{keep}</c> a list of names. A part with a
/// question mark behind it may be missing.</summary>
internal sealed class ClausePattern
{
    private const string Join = "join";

    private const string Instead = "instead";

    private static readonly TokenListParser<Lexeme, Lexeme> Name =
        Token.Matching<Lexeme>(lexeme => lexeme.Thing is not null, "name").Select(token => token.Kind);

    private readonly TokenListParser<Lexeme, ImmutableArray<Filled>> parser;

    /// <summary>Makes the parser of a pattern.</summary>
    public ClausePattern(QuestionPattern pattern)
    {
        Means = pattern.Means;
        parser = pattern.Says.Select(PartOf).Aggregate((left, right) => left.Then(read => right.Select(more => read.AddRange(more))));
    }

    /// <summary>What the clause means.</summary>
    public string Means { get; }

    /// <summary>What is read at the start of these lexemes, and how many it takes; null where it does not stand there.</summary>
    public (ImmutableArray<Filled> Parts, int Length)? At(TokenList<Lexeme> lexemes)
    {
        var result = parser.TryParse(lexemes);
        return result.HasValue && result.Remainder.Position > lexemes.Position ? (result.Value, result.Remainder.Position - lexemes.Position) : null;
    }

    private static TokenListParser<Lexeme, ImmutableArray<Filled>> PartOf(string part)
    {
        var mayMiss = part.EndsWith('?');
        var name = part.Trim('{', '}', '?');
        var one = name switch
        {
            "from" or "to" or "thing" => Name.Select(lexeme => ImmutableArray.Create(new Filled(name, lexeme))),
            "without" or "keep" => ListOf(name),
            _ => ClassOf(name).Select(lexeme => ImmutableArray.Create(new Filled(name, lexeme))),
        };
        return mayMiss ? one.Try().Or(Parse.Return<Lexeme, ImmutableArray<Filled>>([])) : one;
    }

    /// <summary>Names with commas and words like 'and' between them. The last before an 'instead of' belongs to that.</summary>
    private static TokenListParser<Lexeme, ImmutableArray<Filled>> ListOf(string place)
    {
        var more = ClassOf(Join).AtLeastOnce().IgnoreThen(Name).Then(name => Parse.Not(ClassOf(Instead)).Value(name)).Try().Many();
        return Name.Then(first => more.Select(rest => rest.Prepend(first).Select(name => new Filled(place, name)).ToImmutableArray()));
    }

    private static TokenListParser<Lexeme, Lexeme> ClassOf(string name) =>
        Token.Matching<Lexeme>(lexeme => lexeme.Is(name), name).Select(token => token.Kind);
}
