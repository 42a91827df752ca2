using System.Collections.Frozen;
using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Wording;
using SwapSolver.Lines.Names;

namespace SwapSolver.Asking.Text;

/// <summary>Finds names of ingredients, groups and allergens in running words.</summary>
internal sealed class ThingWords
{
    private const int MostWords = 6;

    private const string Free = "free";

    /// <summary>Who replaces erythritol with monk fruit names two things.</summary>
    private const string With = "with";

    /// <summary>No name begins with it, though half-and-half has it.</summary>
    private const string And = "and";

    private static readonly ImmutableArray<string> Ground = ["flour", "meal"];

    private readonly SpokenNames names;

    private readonly FrozenDictionary<string, string> leftOut;

    private readonly FrozenDictionary<string, string> shortNames;

    private readonly FrozenSet<string> telling;

    private readonly FrozenSet<string> plain;

    private readonly QuestionWords words;

    /// <summary>Finds names of this pantry.</summary>
    public ThingWords(QuestionWords words, SpokenNames names, Pantry pantry)
    {
        this.words = words;
        this.names = names;
        Pantry = pantry;
        var said = pantry.Allergens.SelectMany(one => one.Also.Append(one.Name).Append(one.Id).Select(word => (Word: word, Id: word == one.Name ? one.Id : word)))
            .Concat(pantry.Groups.SelectMany(one => one.Also.Append(one.Name).Append(one.Id).Select(word => (Word: word, Id: word == one.Name ? one.Id : word))));
        leftOut = words.LeftOut.Select(pair => (Word: pair.Key, Id: pair.Value)).Concat(said)
            .DistinctBy(pair => Key(pair.Word)).ToFrozenDictionary(pair => Key(pair.Word), pair => pair.Id, StringComparer.Ordinal);
        shortNames = words.ShortNames.ToFrozenDictionary(pair => Key(pair.Key), pair => pair.Value, StringComparer.Ordinal);
        plain = words.TooPlain.Select(names.FormOf).ToFrozenSet(StringComparer.Ordinal);
        telling = pantry.Ids.SelectMany(WordsOf).Where(word => !words.TooPlain.Contains(word)).ToFrozenSet(StringComparer.Ordinal);
        AllWords = telling.Concat(plain).Concat(leftOut.Keys.SelectMany(key => key.Split(' '))).ToFrozenSet(StringComparer.Ordinal);
    }

    /// <summary>The ingredients.</summary>
    public Pantry Pantry { get; }

    /// <summary>Allergens whose foods are sold in parts.</summary>
    public IEnumerable<string> SoldInParts => words.SoldInParts;

    /// <summary>The id of what something is a part of; null where it is none.</summary>
    public string? WholeOf(string id) => words.PartOf.GetValueOrDefault(id);

    /// <summary>The word that the one line bears which is meant by a kind of thing, as protein of a protein powder; null where it is no such kind.</summary>
    public string? OwnWordOf(Thing thing) => words.OwnWords.GetValueOrDefault(string.Join(' ', thing.Words));

    /// <summary>Every word that tells what is named.</summary>
    public FrozenSet<string> AllWords { get; }

    /// <summary>The longest name at a place, and how many words it takes; null where none stands there.</summary>
    public (Thing Thing, int Length)? At(IReadOnlyList<Cut> cuts, int place)
    {
        var most = 0;
        while (cuts[place].Text != And && most < MostWords && place + most < cuts.Count && cuts[place + most] is { Kind: CutKind.Word, Text: not (Free or With) })
        {
            most++;
        }

        for (var length = most; length > 0; length--)
        {
            if (Of([.. cuts.Skip(place).Take(length).Select(cut => cut.Text)]) is { } thing)
            {
                return (thing, length);
            }
        }

        return null;
    }

    /// <summary>Whether a word by itself names something.</summary>
    public bool Names(string word) => Of([word]) is not null;

    /// <summary>The id that a short name stands for; null where it is none.</summary>
    public string? ShortFor(Thing thing) => shortNames.GetValueOrDefault(string.Join(' ', thing.Words));

    /// <summary>Whether a word tells what is named: walnut does, and flour does not.</summary>
    public bool Tells(string word) => telling.Contains(word);

    /// <summary>Whether a word by itself tells nothing of what is named, as natural.</summary>
    public bool IsPlain(string word) => plain.Contains(names.FormOf(word));

    /// <summary>Whether two things are one nut or seed, ground: almond meal and blanched almond flour.</summary>
    public bool IsGroundAlike(string id, string other) =>
        WordsOf(id).First() == WordsOf(other).First() && IsGround(id) && IsGround(other);

    private bool IsGround(string id) => WordsOf(id).Any(Ground.Contains);

    /// <summary>The words of an id, in their one form.</summary>
    public IEnumerable<string> WordsOf(string id) => id.Split('-').Select(names.FormOf);

    /// <summary>What some words together name; null where they name nothing.</summary>
    public Thing? Of(ImmutableArray<string> words)
    {
        ImmutableArray<string> forms = [.. words.Select(names.FormOf)];
        var group = leftOut.GetValueOrDefault(string.Join(' ', forms));
        var named = names.Of(words);
        var usual = shortNames.TryGetValue(string.Join(' ', forms), out var id) && Pantry.TryGet(id, out var meant) ? meant : null;
        if (usual is not null && group is null && named is { Ingredient: null } && !forms.All(WordsOf(usual.Id).Contains))
        {
            // A thing that the pantry lacks, made of one that it has, as a flax egg; vegetable oil is an oil.
            return new Thing(forms, usual, usual.Name, null, null) { IsMadeOf = !WordsOf(usual.Id).Contains(forms[^1]) };
        }

        if (named is not null || group is not null)
        {
            // A short name, as almond, is no more than a part of a name, whatever a line of ingredients means by it.
            return usual is not null && Pantry.Ids.Any(id => forms.All(WordsOf(id).Contains))
                ? new Thing(forms, null, null, null, group)
                : new Thing(forms, named?.Ingredient, named?.Assumed, named?.Says, group);
        }

        if (forms.All(word => telling.Contains(word) || shortNames.ContainsKey(word)) && Pantry.Ids.Any(id => forms.All(WordsOf(id).Contains)))
        {
            return new Thing(forms, null, null, null, null);
        }

        return usual is null ? null : new Thing(forms, usual, usual.Name, null, null);
    }

    private string Key(string words) => string.Join(' ', words.Split([' ', '-'], StringSplitOptions.RemoveEmptyEntries).Select(names.FormOf));
}
