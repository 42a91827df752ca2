using System.Collections.Immutable;
using SwapSolver.Asking.Text;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Asking;

/// <content>What is likely meant by names that stand in no clause: a swap beside other wishes, what goes or is replaced where nothing else goes. It is always told.</content>
internal sealed partial class Reading
{
    /// <summary>Classes of words with which one thing is asked for in another's place; where the names tell who comes in, they say no more.</summary>
    private static readonly ImmutableArray<string> OfReplacing =
        ["swap", "put", "instead", "alone", "standin", "standinafter", "whatelse", "replaces", "where", "for", "by", "arrow", "use", "only", "contrasting", "lack", "gonefrom", "mustbe", "goin"];

    /// <summary>Classes of words that ask for what stands in for a thing, where only that is named.</summary>
    private static readonly ImmutableArray<string> OfStandIn = ["alone", "standin", "standinafter", "whatelse", "replaces", "swap", "put", "instead", "gonefrom"];

    /// <summary>Classes of words with which something goes.</summary>
    private static readonly ImmutableArray<string> OfGoing = ["out", "outword", "bareout", "leftout", "outverb", "needed", "needit", "need", "cut", "gone"];

    /// <summary>Classes of words beside which nothing is guessed: they may turn what is asked.</summary>
    private static readonly ImmutableArray<string> NoGuess =
        ["addto", "hold", "howmuch", "amountof", "hard", "raw", "animals", "claim", "reported"];

    /// <summary>Classes of words beside which it is not guessed that something goes.</summary>
    private static readonly ImmutableArray<string> NotBesideGoing = ["not", "more", "less", "free", "bodily", "allergy", "welcome", Lexeme.Count];

    /// <summary>Reads names that stand in no clause by what the formula has of them.</summary>
    /// <param name="isPart">Whether more was asked than this: then it is not guessed that something goes.</param>
    private void ReadGuess(bool isPart)
    {
        if (isTurned || told.From.Length > 0 || clauses.Any(clause => clause.IsNegated) || All("REPLACE", "KEEP", "BAKE", "HOW_LONG", "MEASURE", "CONVERT").Any() || lexemes.Any(lexeme => NoGuess.Any(lexeme.Is)))
        {
            return;
        }

        var named = unread.Concat(All("TO", "LACK").SelectMany(clause => clause.Parts).Select(part => part.Lexeme))
            .Where(lexeme => lexeme.Thing is not null)
            .DistinctBy(lexeme => string.Join(' ', lexeme.Thing!.Words))
            .ToList();
        if (named is [var comes] && LoneNamedOut() is { } gone && (!meaning.IsOwn(comes.Thing!) || IsAllOfIt(comes)) && !lexemes.Any(lexeme => lexeme.Is("welcome") || lexeme.Is("bodily")))
        {
            GuessSwap(gone, comes);
            if (told.From.Length > 0)
            {
                told = told with { Without = [] };
                var comesIn = told.To.Length > 0 ? meaning.Found(told.To) : null;
                ReadBanned(null, gone, comes, meaning.Found(told.From), comesIn);
                ReadHeld(comesIn);
            }
        }
        else if (named is [var one, var other])
        {
            GuessSwap(one, other);
        }
        else if (!isPart && named.Count > 0 && named.All(unread.Contains) && told.Without.IsEmpty && told.Diet.Length == 0 && !lexemes.Any(lexeme => NotBesideGoing.Any(lexeme.Is)))
        {
            GuessGone(named);
        }
    }

    /// <summary>Of two things of one role the formula has one: the other is to come in its place.</summary>
    private void GuessSwap(Lexeme one, Lexeme other)
    {
        var (goes, comes) = meaning.DoesTheSame(other, one, isOwnToo: IsAllOfIt(other)) ? (one, other) : (other, one);
        if (!meaning.DoesTheSame(comes, goes, isOwnToo: IsAllOfIt(comes)) || IsDenied(comes) || IsBeside(one, other) || IsDisliked(comes))
        {
            return;
        }

        var outgoing = meaning.Out(goes, newcomer: comes);
        unread.RemoveAll(lexeme => lexeme.Thing is null ? lexeme.Is("not") || OfReplacing.Any(lexeme.Is) : IsOneOf(lexeme, goes, comes));
        var incoming = meaning.In(comes, outgoing);
        ReadHeld(incoming);
        told = told with { From = outgoing?.Id ?? string.Empty, To = incoming?.Id ?? string.Empty };
        assumed.Add(sentences.Say("asked-guessed-swap", ("to", comes.Text), ("from", goes.Text)));
    }

    /// <summary>Something is named, and a word with which things go, or are replaced.</summary>
    private void GuessGone(List<Lexeme> named)
    {
        var words = Phrases.List(named.Select(lexeme => lexeme.Text));
        if (named is [var lone] && meaning.IsOwn(lone.Thing!) && lexemes.Any(lexeme => OfStandIn.Any(lexeme.Is)))
        {
            unread.RemoveAll(lexeme => lexeme.Thing is null ? OfReplacing.Any(lexeme.Is) || OfGoing.Any(lexeme.Is) : IsOneOf(lexeme, lone));
            told = told with { From = meaning.Out(lone)?.Id ?? string.Empty };
            assumed.Add(sentences.Say("asked-guessed-stand-in", ("words", words)));
        }
        else if (named.All(lexeme => meaning.IsOwn(lexeme.Thing!) || lexeme.Thing!.LeftOut is not null) && lexemes.Any(lexeme => OfGoing.Any(lexeme.Is)))
        {
            unread.RemoveAll(lexeme => lexeme.Thing is null ? OfGoing.Any(lexeme.Is) : IsOneOf(lexeme, named));
            told = told with { Without = [.. named.SelectMany(lexeme => meaning.LeftOut(lexeme, isAllergy: false)).DistinctBy(wish => wish.Id)] };
            assumed.Add(sentences.Say("asked-guessed-without", ("words", words)));
        }
    }

    private static bool IsOneOf(Lexeme lexeme, params IEnumerable<Lexeme> named) => named.Any(name => lexeme.Thing!.Words.SequenceEqual(name.Thing!.Words));

    /// <summary>Whether all is to be of one thing, which the formula may have already: all sunflower, no pumpkin.</summary>
    private bool IsAllOfIt(Lexeme name) =>
        Before(name).LastOrDefault() is { } before && (before.Is("allof") || before.Is("only") || before.Is("narrow"));

    /// <summary>Whether one is had with the other: sunflower seed flour with the hazelnut flour, butter and coconut oil.</summary>
    private bool IsBeside(Lexeme one, Lexeme other)
    {
        bool IsEither(Lexeme lexeme) => ReferenceEquals(lexeme, one) || ReferenceEquals(lexeme, other);
        static bool Joins(Lexeme lexeme) => lexeme.Is("plus") || lexeme.Text == "with";
        var between = lexemes.SkipWhile(lexeme => !IsEither(lexeme)).Skip(1).TakeWhile(lexeme => !IsEither(lexeme)).ToList();
        return between.Any(Joins) && between.All(lexeme => Joins(lexeme) || lexeme.Is("article"));
    }

    /// <summary>Whether something is said to be disliked, or to hurt: it is not what is to come in. Where nobody knows what, it may be.</summary>
    private bool IsDisliked(Lexeme name) => lexemes.Where(lexeme => lexeme.Is("dislike") || lexeme.Is("hurts")).Any(word =>
        NamesBeside(word) is var (before, behind) && ((behind ?? before) is not { } nearest || IsOneOf(nearest, name)));

    /// <summary>Whether a word just before a name says that it is not had, or not wanted.</summary>
    private bool IsDenied(Lexeme name) =>
        Before(name).LastOrDefault(lexeme => !lexeme.MayBeSkipped) is { } before
        && (before.Is("not") || before.Is("out") || before.Is("lack") || before.Is("instead"));
}
