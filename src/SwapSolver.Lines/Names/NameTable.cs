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
    private static readonly FrozenSet<string> EndsNote =
        FrozenSet.Create("or", "for", "plus", "with", "to", "such", "if", "until", "from", "preferably", "see", "note", "use", "then", "into", "weighed", "about");

    private readonly FrozenDictionary<string, (Ingredient Ingredient, string? Assumed)> names;

    private readonly FrozenDictionary<string, string> otherThings;

    private readonly ImmutableArray<(ImmutableArray<string> Words, string Says)> describedThings;

    private readonly FrozenDictionary<string, Ingredient> partsOfEggs;

    private readonly FrozenSet<string> vocabulary;

    private readonly FrozenSet<string> describes;

    private readonly NameScores scores;

    /// <summary>Makes the table.</summary>
    public NameTable(IngredientNames known, Pantry pantry)
    {
        Form = new WordForm(known.SameWords);
        Ingredient Of(IngredientName name) => pantry.TryGet(name.IngredientId, out var found) ? found : throw new ArgumentException($"no ingredient '{name.IngredientId}'", nameof(known));
        describes = known.Describes.Select(Form.Of).ToFrozenSet(StringComparer.Ordinal);
        // Where two rows come to the same words, the first one counts: an ingredient's own name stands before all.
        names = known.Names.DistinctBy(name => Key(Form.Words(name.Name)))
            .ToFrozenDictionary(name => Key(Form.Words(name.Name)), name => (Of(name), name.Assumed), StringComparer.Ordinal);
        otherThings = known.OtherThings.DistinctBy(other => Key(Form.Words(other.Name)))
            .ToFrozenDictionary(other => Key(Form.Words(other.Name)), other => other.Says, StringComparer.Ordinal);
        describedThings =
        [
            .. known.OtherThings.Select(other => (Form.Words(other.Name), other.Says)).Where(other => other.Item1.Any(describes.Contains)),
        ];
        partsOfEggs = known.PartsOfEggs.DistinctBy(part => Form.Of(part.Name))
            .ToFrozenDictionary(part => Form.Of(part.Name), Of, StringComparer.Ordinal);
        vocabulary = known.Names.SelectMany(name => Form.Words(name.Name)).Concat(known.OtherThings.SelectMany(other => Form.Words(other.Name)))
            .Where(word => !describes.Contains(word)).ToFrozenSet(StringComparer.Ordinal);
        scores = new NameScores([.. known.Names.Select(name => (Form.Words(name.Name), Of(name)))]);
    }

    /// <summary>The one form of words.</summary>
    public WordForm Form { get; }

    /// <summary>What a part of an egg is, where it is named beside eggs; null where it is none.</summary>
    public Ingredient? PartOfEgg(IReadOnlyList<string> words) =>
        words.Select(Form.Of).Where(word => !describes.Contains(word)).ToList() is [var word] && partsOfEggs.TryGetValue(word, out var part) ? part : null;

    /// <summary>Finds what a name means.</summary>
    /// <param name="name">The words of the name, as written.</param>
    /// <param name="notes">The words behind it, as written.</param>
    public FoundName Find(IReadOnlyList<string> name, IReadOnlyList<string> notes)
    {
        var words = name.Select(Form.Of).ToImmutableArray();
        if (words.Contains("or"))
        {
            return Unsure(words, "a choice of ingredients; write the one that you use");
        }

        var more = notes.Select(Form.Of).TakeWhile(word => !EndsNote.Contains(word)).ToImmutableArray();
        var telling = more.Where(vocabulary.Contains).ToImmutableArray();
        foreach (var tried in Tries(words, more, telling))
        {
            var key = Key(tried);
            if (otherThings.TryGetValue(key, out var says))
            {
                return Unsure(words.AddRange(telling), $"'{string.Join(' ', name)}' is not taken for one of ours: {says}");
            }

            if (names.TryGetValue(key, out var found))
            {
                return new FoundName(found.Ingredient, found.Assumed, null, []);
            }
        }

        return SaidTwice(words, more) ?? Unsure(words.AddRange(telling), null);
    }

    /// <summary>A name that a note says again in other words, as bicarbonate of soda (baking soda); null where it does not.</summary>
    private FoundName? SaidTwice(ImmutableArray<string> words, ImmutableArray<string> more) =>
        names.TryGetValue(Key(words), out var first) && names.TryGetValue(Key(Plain(more)), out var second) && first.Ingredient == second.Ingredient
            ? new FoundName(first.Ingredient, first.Assumed, null, [])
            : null;

    private IEnumerable<ImmutableArray<string>> Tries(ImmutableArray<string> words, ImmutableArray<string> more, ImmutableArray<string> telling)
    {
        var plain = Plain(words);
        if (more.Length > 0)
        {
            yield return words.AddRange(more);
            yield return plain.AddRange(Plain(more));
        }

        if (telling.Length > 0)
        {
            yield return words.AddRange(telling);
            yield return plain.AddRange(telling);
            // What else the note tells would change the name, so the name alone is not sure.
            yield break;
        }

        yield return words;
        if (describedThings.FirstOrDefault(other => other.Words.All(words.Contains)) is { Says: not null } other)
        {
            yield return other.Words;
        }

        yield return plain;
    }

    private ImmutableArray<string> Plain(ImmutableArray<string> words) => [.. words.Where(word => !describes.Contains(word))];

    private FoundName Unsure(ImmutableArray<string> words, string? problem)
    {
        var near = scores.Nearest(Plain(words));
        return new FoundName(
            null,
            null,
            problem ?? (near.IsEmpty ? "no ingredient of the pantry has a name like this" : "not sure which ingredient is meant"),
            near);
    }

    private static string Key(ImmutableArray<string> words) => string.Join(' ', words.Distinct().Order(StringComparer.Ordinal));
}
