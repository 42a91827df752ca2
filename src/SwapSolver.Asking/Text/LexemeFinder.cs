using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;
using SwapSolver.Kitchen.Wording;
using SwapSolver.Lines.Names;

namespace SwapSolver.Asking.Text;

/// <summary>Finds the phrases, names and numbers of a question; the longest at each place counts.</summary>
internal sealed class LexemeFinder
{
    /// <summary>Class of numbers that an oven can be set to.</summary>
    private const string OvenHeat = "ovenheat";

    /// <summary>Classes of phrases as no more than.</summary>
    private static readonly ImmutableArray<string> Limits = ["below", "above"];

    /// <summary>The end of words as eggless.</summary>
    private static readonly ImmutableArray<string> Endings = ["less", "free"];

    private const double LeastOven = 100;

    private const double MostOven = 500;

    /// <summary>Shorter parts of a word are no words [letters].</summary>
    private const int ShortestPart = 3;

    /// <summary>Class of what is called otherwise in every phrase: a bap is a roll.</summary>
    private const string SaidFor = "saidfor";

    /// <summary>Class of what a loaf is to be like.</summary>
    private const string Goal = "goal";

    /// <summary>Class of what tells how one was.</summary>
    private const string WasSo = "wasso";

    /// <summary>Class of words that tell what was.</summary>
    private const string Past = "past";

    private readonly PhraseTree phrases;

    private readonly FrozenDictionary<string, string> saidFor;

    private readonly ThingWords things;

    private readonly SpokenNames names;

    private readonly Spelling spelling;

    private readonly Phrases sentences;

    /// <summary>Finds these words.</summary>
    public LexemeFinder(QuestionWords words, ThingWords things, SpokenNames names, Phrases sentences)
    {
        phrases = new PhraseTree(words.Words.Where(word => word.Class != SaidFor && !PartCutter.Classes.Contains(word.Class)));
        saidFor = words.Words.Where(word => word.Class == SaidFor).ToFrozenDictionary(word => word.Phrase, word => word.Means, StringComparer.Ordinal);
        this.things = things;
        this.names = names;
        this.sentences = sentences;
        spelling = new Spelling(phrases.AllWords.Concat(things.AllWords).Concat(saidFor.Keys.SelectMany(phrase => phrase.Split(' '))).ToFrozenSet(StringComparer.Ordinal));
    }

    /// <summary>The lexemes of a text, and what was taken for granted.</summary>
    public (ImmutableArray<Lexeme> Lexemes, ImmutableArray<string> Assumed) In(string text)
    {
        var assumed = new List<string>();
        var cuts = Joined([.. WithoutHyphens(WordCutter.Of(text)).SelectMany(Parted).SelectMany(cut => Unjoined(cut, assumed)).Select(cut => Spelt(cut, assumed))]);
        var words = cuts.Select(cut => saidFor.GetValueOrDefault(cut.Text, cut.Text)).ToList();
        var lexemes = new List<Lexeme>();
        for (var place = 0; place < cuts.Count;)
        {
            var (lexeme, length) = At(cuts, words, place);
            lexemes.Add(lexeme);
            place += length;
        }

        return ([.. Described(lexemes)], [.. assumed]);
    }

    private (Lexeme Lexeme, int Length) At(List<Cut> cuts, List<string> words, int place)
    {
        var (length, classes) = PhraseAt(words, place);
        if (length > 1 && classes.ContainsKey(Goal) && cuts[place + length - 1].Kind == CutKind.Word && things.At(cuts, place + length - 1) is { Length: > 1, Thing.Ingredient: not null })
        {
            // In 'is heavy cream' nothing is heavy.
            (length, classes) = PhraseAt(words[..(place + length - 1)], place);
        }

        // 50/50 is no whole of two halves.
        if (NumberFinder.At(cuts, place) is { } number && number.Length >= length && !classes.ContainsKey(Lexeme.Fifty))
        {
            return (NumberOf(Said(cuts, place, number.Length), number.Value), number.Length);
        }

        var named = cuts[place].Kind == CutKind.Word ? things.At(cuts, place) : null;
        // A part of a name is less than a phrase of the same words; a whole name is as much.
        var isName = named is { } found && (found.Length > length || (found.Length == length && (found.Thing.Ingredient is not null || found.Thing.LeftOut is not null || classes.ContainsKey(Lexeme.Filler))));
        var taken = isName ? named!.Value.Length : Math.Max(1, length);
        var said = Said(cuts, place, taken);
        if (isName)
        {
            return (new Lexeme(said, length == taken ? classes : ImmutableDictionary<string, string>.Empty, named!.Value.Thing), taken);
        }

        if (length > 0)
        {
            return (new Lexeme(said, BeginsInPast(words, place, classes) ? classes.Add(WasSo, string.Empty) : classes, null), taken);
        }

        return (new Lexeme(said, Lexeme.OneClass(cuts[place].Kind switch { CutKind.Stop => Lexeme.Stop, CutKind.Sign => Lexeme.Filler, _ => Lexeme.Unknown }), null), 1);
    }

    private static string Said(List<Cut> cuts, int place, int length) => string.Join(' ', cuts.Skip(place).Take(length).Select(cut => cut.Text));

    /// <summary>Two words that are said for one, as soda bread for bread, in one piece.</summary>
    private List<Cut> Joined(List<Cut> cuts)
    {
        for (var place = cuts.Count - 2; place >= 0; place--)
        {
            var both = $"{cuts[place].Text} {cuts[place + 1].Text}";
            if (saidFor.ContainsKey(both))
            {
                cuts[place] = cuts[place] with { Text = both };
                cuts.RemoveAt(place + 1);
            }
        }

        return cuts;
    }

    /// <summary>The phrase at a place. 'Have no more than' is no phrase with 'have no' in it.</summary>
    private (int Length, ImmutableDictionary<string, string> Classes) PhraseAt(List<string> words, int place)
    {
        var (length, classes) = phrases.At(words, place);
        var last = place + length - 1;
        return length > 1 && words[last] is "no" or "not" && phrases.At(words, last) is { Length: > 1 } limit && Limits.Any(limit.Classes.ContainsKey)
            ? phrases.At(words[..last], place)
            : (length, classes);
    }

    /// <summary>Whether a phrase of what a loaf is to be like tells how one was: came out dry.</summary>
    private bool BeginsInPast(List<string> words, int place, ImmutableDictionary<string, string> classes) =>
        classes.ContainsKey(Goal) && phrases.At(words[..(place + 1)], place).Classes.ContainsKey(Past);

    private static Lexeme NumberOf(string said, double value)
    {
        var number = value.ToString("R", CultureInfo.InvariantCulture);
        var classes = Lexeme.OneClass(Lexeme.Count, number);
        return new Lexeme(said, value is >= LeastOven and <= MostOven ? classes.Add(OvenHeat, number) : classes, null);
    }

    /// <summary>Takes words that only describe, as large before eggs, for nothing where a name follows.</summary>
    private List<Lexeme> Described(List<Lexeme> lexemes)
    {
        for (var place = lexemes.Count - 2; place >= 0; place--)
        {
            var next = lexemes[place + 1];
            if (lexemes[place].Thing is not null && (next.Is("title") ? !(place > 0 && lexemes[place - 1].Is("out")) : next.Is(Lexeme.NamedAfter) && place > 0 && lexemes[place - 1].Is("article") && !lexemes[place - 1].Is("join")))
            {
                // The hazelnut loaf and the lemon poppy loaf are formulas, and no hazelnut is asked about; in a no egg loaf there is to be none.
                lexemes[place] = lexemes[place].As(Lexeme.NamedAfter, string.Join(' ', lexemes[place].Thing!.Words)) with { Thing = null };
            }
            else if (lexemes[place].Is(Lexeme.Unknown) && names.Describes(lexemes[place].Text) && (next.Thing is not null || next.Is(Lexeme.Filler)))
            {
                lexemes[place] = lexemes[place].As(Lexeme.Filler);
            }
        }

        return lexemes;
    }

    /// <summary>Eggless is egg free, where no phrase has the word.</summary>
    private IEnumerable<Cut> Parted(Cut cut) =>
        cut.Kind == CutKind.Word && !phrases.AllWords.Contains(cut.Text) && Endings.FirstOrDefault(ending => cut.Text.EndsWith(ending, StringComparison.Ordinal)) is { } end && things.Names(cut.Text[..^end.Length])
            ? [cut with { Text = cut.Text[..^end.Length] }, cut with { Text = "free" }]
            : [cut];

    /// <summary>Two words of names that were written as one: eggwhites, lemonjuice.</summary>
    private IEnumerable<Cut> Unjoined(Cut cut, List<string> assumed)
    {
        if (cut.Kind != CutKind.Word || IsKnown(cut.Text))
        {
            return [cut];
        }

        bool IsOfName(string part) => part.Length >= ShortestPart && things.AllWords.Contains(names.FormOf(part));
        var ends = Enumerable.Range(0, cut.Text.Length).Where(end => IsOfName(cut.Text[..end]) && IsOfName(cut.Text[end..])).ToList();
        if (ends is not [var only])
        {
            return [cut];
        }

        var (first, second) = (cut.Text[..only], cut.Text[only..]);
        assumed.Add(sentences.Say("asked-spelt", ("from", cut.Text), ("to", $"{first} {second}")));
        return [cut with { Text = first }, cut with { Text = second }];
    }

    private bool IsKnown(string word) =>
        phrases.AllWords.Contains(word) || saidFor.ContainsKey(word) || things.AllWords.Contains(names.FormOf(word)) || names.Describes(word) || names.Of([word]) is not null;

    private Cut Spelt(Cut cut, List<string> assumed)
    {
        if (cut.Kind != CutKind.Word || IsKnown(cut.Text))
        {
            return cut;
        }

        var nearest = spelling.Nearest(cut.Text) ?? spelling.Nearest(names.FormOf(cut.Text));
        if (nearest is null)
        {
            return cut;
        }

        assumed.Add(sentences.Say("asked-spelt", ("from", cut.Text), ("to", nearest)));
        return cut with { Text = nearest };
    }

    /// <summary>The pieces without hyphens between words: nut-free is two words, and 8-10 is not.</summary>
    private static IEnumerable<Cut> WithoutHyphens(ImmutableArray<Cut> cuts) => cuts.Where((cut, place) =>
        cut is not { Kind: CutKind.Sign, Text: "-" or "\u2010" or "\u2011" } || place == 0 || place == cuts.Length - 1
        || cuts[place - 1].Kind == CutKind.Number && cuts[place + 1].Kind == CutKind.Number);
}
