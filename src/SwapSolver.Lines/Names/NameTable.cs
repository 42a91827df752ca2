using System.Collections.Frozen;
using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Measures;

namespace SwapSolver.Lines.Names;

/// <summary>Finds the ingredient that words mean. Sure is only the very name, once words that only describe are dropped;
/// the order of the words does not matter.</summary>
internal sealed class NameTable
{
    /// <summary>A note is read up to one of these: what follows is about something else.</summary>
    private static readonly FrozenSet<string> EndsNote = FrozenSet.Create(
        "or", "for", "plus", "with", "to", "such", "if", "until", "from", "preferably", "see", "note", "use", "then", "into", "weighed", "about", "not", "no", "without", "instead", "but");

    /// <summary>A name is read up to one of these: what follows says what it is for.</summary>
    private static readonly FrozenSet<string> Purpose = FrozenSet.Create("for", "to", "until", "if", "see", "then");

    /// <summary>So many telling words of a note are tried in all their joinings [1].</summary>
    private const int MostTelling = 5;

    private readonly KnownNames known;

    private readonly FrozenDictionary<string, Ingredient> partsOfEggs;

    private readonly NameScores scores;

    /// <summary>Makes the table.</summary>
    public NameTable(IngredientNames names, Pantry pantry)
    {
        Form = new WordForm(names.SameWords);
        known = new KnownNames(names, pantry, Form);
        partsOfEggs = names.PartsOfEggs.DistinctBy(part => Form.Of(part.Name))
            .ToFrozenDictionary(part => Form.Of(part.Name), part => KnownNames.IngredientOf(part, pantry), StringComparer.Ordinal);
        scores = new NameScores([.. names.Names.Select(name => (Form.Words(name.Name), KnownNames.IngredientOf(name, pantry)))]);
    }

    /// <summary>The one form of words.</summary>
    public WordForm Form { get; }

    /// <summary>What a part of an egg is, where it is named beside eggs; null where it is none.</summary>
    public Ingredient? PartOfEgg(IReadOnlyList<string> words) =>
        known.Plain([.. words.Select(Form.Of)]) is [var word] && partsOfEggs.TryGetValue(word, out var part) ? part : null;

    /// <summary>Whether words behind a further amount name another ingredient than the name before them, or a thing that is none of ours.</summary>
    public bool AreTwo(IReadOnlyList<string> name, IReadOnlyList<string> beside) =>
        PartOfEgg(beside) is not null || (known.Alone(WordForm.Join(beside.Select(Form.Of)), []) is { } other
        && (other.Ingredient is not { } ingredient || ingredient != known.Alone(WordForm.Join(name.Select(Form.Of)), [])?.Ingredient));

    /// <summary>Finds what a name means.</summary>
    /// <param name="name">The words of the name, as written.</param>
    /// <param name="notes">The words behind it, as written.</param>
    public FoundName Find(IReadOnlyList<string> name, IReadOnlyList<string> notes)
    {
        var words = WordForm.Join(name.Select(Form.Of));
        if (words.Contains("or"))
        {
            return OneByTwoNames(words) ?? Unsure(words, "a choice of ingredients; write the one that you use");
        }

        if (words.Contains("each") && words.Contains("and"))
        {
            return Unsure(words, "one amount for each of several ingredients; write a line for each");
        }

        var more = WordForm.Join(WithoutUse([.. notes.Select(Form.Of)]).TakeWhile(word => !EndsNote.Contains(word)));
        var telling = more.Where(known.IsTelling).Except(words).ToImmutableArray();
        var meaning = WithWholeNote(words, more) ?? WithNote(words, more, telling) ?? BeforePurpose(words, more, telling);
        return meaning switch
        {
            { Ingredient: { } ingredient } when KnownNames.Contradiction(ingredient, words.AddRange(more)) is { } says => Unsure(words, says),
            { Ingredient: { } ingredient } => new FoundName(ingredient, known.Assumed(meaning, words, more), null, [], meaning.Form),
            { Says: { } says } => Unsure(words.AddRange(telling), $"'{string.Join(' ', name)}' is not taken for one of ours: {says}"),
            _ => Unsure(words.AddRange(telling), null),
        };
    }

    /// <summary>A note without its 'I use': what follows is the thing itself.</summary>
    private static ImmutableArray<string> WithoutUse(ImmutableArray<string> note) => note is ["i" or "we", "use" or "used" or "like" or "prefer", ..] ? note[2..] : note;

    /// <summary>What a name means before words that say what it is for, as butter for greasing the tin; null where it says none.</summary>
    private Meaning? BeforePurpose(ImmutableArray<string> words, ImmutableArray<string> more, ImmutableArray<string> telling) =>
        words.TakeWhile(word => !Purpose.Contains(word)).ToImmutableArray() is { IsEmpty: false } before && before.Length < words.Length
            ? WithNote(before, more, telling)
            : null;

    /// <summary>A choice between two names of the same thing, as tapioca starch or flour; null where it is a real choice.</summary>
    private FoundName? OneByTwoNames(ImmutableArray<string> words)
    {
        var at = words.IndexOf("or");
        var (left, right) = (words[..at], words[(at + 1)..]);
        if (left.IsEmpty || right.Contains("or") || known.Alone(left, []) is not { Ingredient: { } ingredient } meaning)
        {
            return null;
        }

        var other = known.Alone(right, []) is { Ingredient: not null } whole ? whole : known.Alone(left[..^1].AddRange(right), []);
        return other?.Ingredient == ingredient ? new FoundName(ingredient, known.Assumed(meaning, left, []), null, [], meaning.Form) : null;
    }

    /// <summary>What a name means with all words of its note; null where there is no note, or no such name.</summary>
    private Meaning? WithWholeNote(ImmutableArray<string> words, ImmutableArray<string> more)
    {
        var plain = known.Plain(more);
        return more.IsEmpty ? null
            : known.Meant(words.AddRange(more)) is { } meaning ? meaning
            : plain.IsEmpty ? null
            : known.Meant(known.Plain(words).AddRange(plain));
    }

    /// <summary>What a name means beside the telling words of its note. The most of them that make a known name count; where
    /// others of them would make it something else, it is not sure, and null.</summary>
    private Meaning? WithNote(ImmutableArray<string> words, ImmutableArray<string> more, ImmutableArray<string> telling)
    {
        var joinings = Joinings(telling)
            .Select(some => (Some: some, Meaning: some.IsEmpty ? known.Alone(words, more) : known.Meant(words.AddRange(some)) ?? known.Meant(known.Plain(words).AddRange(some))))
            .Where(pair => pair.Meaning is not null)
            .OrderByDescending(pair => pair.Some.Length)
            .ToList();
        if (joinings.Count == 0)
        {
            return null;
        }

        var (most, meaning) = joinings[0];
        if (joinings.FirstOrDefault(other => other.Some.Except(most).Any() && other.Meaning!.Ingredient != meaning!.Ingredient) is { Meaning: { } against })
        {
            return against.Says is null ? null : against;
        }

        return most.IsEmpty && NamesAnother(meaning!, more, telling) ? null : meaning;
    }

    /// <summary>Whether a note names another ingredient than the name before it.</summary>
    private bool NamesAnother(Meaning meaning, ImmutableArray<string> more, ImmutableArray<string> telling) =>
        telling.Select(word => known.Meant([word])).Append(known.Meant(known.Plain(more)))
            .Any(other => other?.Ingredient is { } ingredient && ingredient != meaning.Ingredient);

    private static IEnumerable<ImmutableArray<string>> Joinings(ImmutableArray<string> telling)
    {
        var words = telling.Take(MostTelling).ToList();
        return Enumerable.Range(0, 1 << words.Count)
            .Select(chosen => words.Where((_, place) => (chosen >> place & 1) == 1).ToImmutableArray());
    }

    private FoundName Unsure(ImmutableArray<string> words, string? problem)
    {
        var near = scores.Nearest(known.Plain(words));
        return new FoundName(
            null,
            [],
            problem ?? (near.IsEmpty ? "no ingredient of the pantry has a name like this" : "not sure which ingredient is meant"),
            near,
            []);
    }
}
