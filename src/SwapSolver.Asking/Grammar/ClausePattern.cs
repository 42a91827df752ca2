using System.Collections.Immutable;
using Superpower;
using Superpower.Model;
using Superpower.Parsers;
using SwapSolver.Asking.Text;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Asking.Grammar;

/// <summary>A pattern of the data as a parser over lexemes. A part in braces is a class of words or a place for names:
/// <c>{from}</c>, <c>{also}</c>, <c>{to}</c> and <c>{thing}</c> take one name, <c>{without}</c> and <c>{keep}</c> a list of names,
/// <c>{end}</c> stands where the sentence or the thought ends and <c>{plain}</c> where no unit,
/// <c>{known}</c> where no unknown word and <c>{apart}</c> where no swap follows. A part with a question mark behind it may be missing.</summary>
internal sealed class ClausePattern
{
    private const string Join = "join";

    private const string Instead = "instead";

    private const string Alone = "alone";

    /// <summary>Where the sentence or the thought ends.</summary>
    private const string End = "end";

    /// <summary>Where the number before is that of things, and of no unit.</summary>
    private const string Plain = "plain";

    /// <summary>Where nothing follows that is not known: 50 g of what is no loaf.</summary>
    private const string Known = "known";

    /// <summary>Where what was read is no part of another swap.</summary>
    private const string Apart = "apart";

    /// <summary>Where something is left out next: make 16 without the whey.</summary>
    private const string BeforeOut = "beforeout";

    /// <summary>Where a count is none of pieces: a bigger round, 16 slices.</summary>
    private const string NoPieces = "nopieces";

    /// <summary>Words that put out what was named before them: take the erythritol out.</summary>
    private const string OutWord = "outword";

    private static readonly ImmutableArray<string> Swaps = [Instead, "replaces", "where", "for"];

    private static readonly ImmutableArray<string> Units = ["cross", "length", "mass", "measure", "times", "degree", "reading", "tin", Lexeme.Count];

    /// <summary>Words that leave out what was named before; what is named behind them they leave out instead.</summary>
    private const string BareOut = "bareout";

    private static readonly TokenListParser<Lexeme, Lexeme> Name =
        Token.Matching<Lexeme>(lexeme => lexeme.Thing is not null, "name").Select(token => token.Kind);

    private const string To = "to";

    /// <summary>The second of two things of which either may come in: xanthan or guar gum.</summary>
    public const string OrTo = "orto";

    private static readonly TokenListParser<Lexeme, Lexeme> Other =
        Token.Matching<Lexeme>(lexeme => lexeme.Is(Join) && lexeme.Text == "or", "or").IgnoreThen(Name);

    private static readonly ImmutableArray<string> Single = ["from", "also", "to", "alsoto", "thing"];

    private static readonly ImmutableArray<string> Lists = ["without", "keep"];

    private readonly TokenListParser<Lexeme, ImmutableArray<Filled>> parser;

    /// <summary>Makes the parser of a pattern.</summary>
    public ClausePattern(QuestionPattern pattern)
    {
        Means = pattern.Means;
        var starts = pattern.Says.Take(pattern.Says.TakeWhile(MayMiss).Count() + 1).Select(NameOf).ToList();
        StartsWithName = starts.Any(part => Single.Contains(part) || Lists.Contains(part));
        StartsWith = [.. starts.Where(part => !Single.Contains(part) && !Lists.Contains(part))];
        parser = pattern.Says.Select(PartOf).Aggregate((left, right) => left.Then(read => right.Select(more => read.AddRange(more))));
    }

    /// <summary>What the clause means.</summary>
    public string Means { get; }

    /// <summary>Classes of words that it may begin with.</summary>
    public ImmutableArray<string> StartsWith { get; }

    /// <summary>Whether it may begin with a name.</summary>
    public bool StartsWithName { get; }

    /// <summary>What is read at the start of these lexemes, and how many it takes; null where it does not stand there.</summary>
    public (ImmutableArray<Filled> Parts, int Length)? At(TokenList<Lexeme> lexemes)
    {
        var result = parser.TryParse(lexemes);
        return result.HasValue && result.Remainder.Position > lexemes.Position ? (result.Value, result.Remainder.Position - lexemes.Position) : null;
    }

    private static bool MayMiss(string part) => part.EndsWith('?');

    private static string NameOf(string part) => part.Trim('{', '}', '?');

    private static TokenListParser<Lexeme, ImmutableArray<Filled>> PartOf(string part)
    {
        var name = NameOf(part);
        var one = name switch
        {
            To => Name.Then(first => Other.Select(other => new[] { new Filled(OrTo, other) }).Try().OptionalOrDefault([]).Select(other => ImmutableArray.Create([new Filled(To, first), .. other]))),
            _ when Single.Contains(name) => Name.Select(lexeme => ImmutableArray.Create(new Filled(name, lexeme))),
            _ when Lists.Contains(name) => ListOf(name),
            End => NoneBehind(next => !next.Is(Lexeme.Stop) && !next.Is(Join)),
            Apart => NoneBehind(next => Swaps.Any(next.Is) || next.Is(OutWord)),
            Known => NoneBehind(next => next.Is(Lexeme.Unknown)),
            Plain => NoneBehind(next => Units.Any(next.Is)),
            BeforeOut => WhereBehind(next => next?.Is("out") is true),
            NoPieces => NoneBehind(next => next.Is("slice")),
            BareOut => ClassOf(name).Then(word => NoNameBehind.Value(ImmutableArray.Create(new Filled(name, word)))),
            _ => ClassOf(name).Select(lexeme => ImmutableArray.Create(new Filled(name, lexeme))),
        };
        return MayMiss(part) ? one.Try().Or(Parse.Return<Lexeme, ImmutableArray<Filled>>([])) : one;
    }

    /// <summary>Names with commas and words like 'and' between them. The last before an 'instead of', or an 'instead', belongs to that.</summary>
    private static TokenListParser<Lexeme, ImmutableArray<Filled>> ListOf(string place)
    {
        var more = ClassOf(Join).AtLeastOnce().IgnoreThen(Name).Then(name => NoneBehind(next => next.Is(Instead) || next.Is(Alone)).Value(name)).Try().Many();
        return Name.Then(first => more.Select(rest => rest.Prepend(first).Select(name => new Filled(place, name)).ToImmutableArray()));
    }

    /// <summary>Reads nothing, and stands only where no such thing follows.</summary>
    private static TokenListParser<Lexeme, ImmutableArray<Filled>> NoneBehind(Func<Lexeme, bool> isSuch) => WhereBehind(next => next is null || !isSuch(next));

    /// <summary>Reads nothing, and stands only where such a thing follows, or at the end nothing.</summary>
    private static TokenListParser<Lexeme, ImmutableArray<Filled>> WhereBehind(Func<Lexeme?, bool> isSuch) => list =>
        isSuch(list.ConsumeToken() is { HasValue: true } next ? next.Value.Kind : null)
            ? TokenListParserResult.Value(ImmutableArray<Filled>.Empty, list, list)
            : TokenListParserResult.Empty<Lexeme, ImmutableArray<Filled>>(list);

    /// <summary>Reads nothing, and stands only where nothing is named behind it: would it be ok to skip the zest?</summary>
    private static readonly TokenListParser<Lexeme, ImmutableArray<Filled>> NoNameBehind = list =>
    {
        var next = list.ConsumeToken();
        next = next is { HasValue: true, Value.Kind: { Thing: null } word } && word.Is("out") ? next.Remainder.ConsumeToken() : next;
        return next is { HasValue: true, Value.Kind.Thing: not null }
            ? TokenListParserResult.Empty<Lexeme, ImmutableArray<Filled>>(list)
            : TokenListParserResult.Value(ImmutableArray<Filled>.Empty, list, list);
    };

    private static TokenListParser<Lexeme, Lexeme> ClassOf(string name) =>
        Token.Matching<Lexeme>(lexeme => lexeme.Is(name), name).Select(token => token.Kind);
}
