using System.Collections.Frozen;
using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Measures;

namespace SwapSolver.Lines.Names;

/// <summary>What words mean together.</summary>
/// <param name="Ingredient">The ingredient; null where they mean something that the pantry lacks.</param>
/// <param name="Assumed">What was taken for granted; null where nothing was.</param>
/// <param name="Says">Why it is none of ours; null where it is.</param>
/// <param name="Words">The words of the name, in their one form.</param>
/// <param name="Form">The form that it is measured in where a line says none; empty where the name says nothing.</param>
internal sealed record Meaning(Ingredient? Ingredient, string? Assumed, string? Says, ImmutableArray<string> Words, ImmutableArray<string> Form);

/// <summary>The names that are known, by their words in any order.</summary>
internal sealed class KnownNames
{
    private const string Gluten = "gluten-cereals";

    private static readonly FrozenSet<string> Promises = FrozenSet.Create("gluten-free", "gf", "vegan");

    private readonly FrozenDictionary<string, Meaning> meanings;

    private readonly ImmutableArray<Meaning> describedThings;

    private readonly ImmutableArray<Meaning> toldApart;

    private readonly FrozenSet<string> vocabulary;

    private readonly FrozenSet<string> describes;

    private readonly FrozenDictionary<string, string> describesAssumed;

    /// <summary>Puts the names in order.</summary>
    public KnownNames(IngredientNames names, Pantry pantry, WordForm form)
    {
        describesAssumed = names.DescribesAssumed.DistinctBy(pair => form.Of(pair.Key)).ToFrozenDictionary(pair => form.Of(pair.Key), pair => pair.Value, StringComparer.Ordinal);
        describes = names.Describes.Concat(names.DescribesAssumed.Keys).Select(form.Of).ToFrozenSet(StringComparer.Ordinal);
        var others = names.OtherThings.Select(other => new Meaning(null, null, other.Says, form.Words(other.Name), [])).ToList();
        var ours = names.Names.Select(name => new Meaning(IngredientOf(name, pantry), name.Assumed, null, form.Words(name.Name), name.Form));
        // Where two rows come to the same words, the first one counts: other things before ours, an ingredient's own name before its by-names.
        meanings = others.Concat(ours).DistinctBy(meaning => Key(meaning.Words)).ToFrozenDictionary(meaning => Key(meaning.Words), StringComparer.Ordinal);
        // What a packet promises is held against the facts of the ingredient instead.
        describedThings = [.. others.Where(other => other.Words.Any(word => describes.Contains(word) && !Promises.Contains(word)))];
        toldApart =
        [
            .. ours.Where(our => our.Words.Any(describes.Contains) && Meant(Plain(our.Words)) is { } plain && plain.Ingredient != our.Ingredient)
                .OrderByDescending(our => our.Words.Length),
        ];
        vocabulary = meanings.Values.SelectMany(meaning => meaning.Words).Where(word => !describes.Contains(word)).ToFrozenSet(StringComparer.Ordinal);
    }

    /// <summary>The ingredient of a row of names.</summary>
    public static Ingredient IngredientOf(IngredientName name, Pantry pantry) =>
        pantry.TryGet(name.IngredientId, out var found) ? found : throw new ArgumentException($"no ingredient '{name.IngredientId}'", nameof(name));

    /// <summary>Whether a word stands in a name, so that it can change what is meant.</summary>
    public bool IsTelling(string word) => vocabulary.Contains(word);

    /// <summary>The words that do not only describe.</summary>
    public ImmutableArray<string> Plain(ImmutableArray<string> words) => [.. words.Where(word => !describes.Contains(word))];

    /// <summary>What exactly these words mean; null where that is not known.</summary>
    public Meaning? Meant(ImmutableArray<string> words) => meanings.GetValueOrDefault(Key(words));

    /// <summary>What a name means by itself, once words that only describe are dropped; null where that is not known. A word
    /// that tells two of ours apart, as fresh yeast from yeast, is not dropped, be it in the name or behind it.</summary>
    /// <param name="words">The words of the name.</param>
    /// <param name="more">The words behind it.</param>
    public Meaning? Alone(ImmutableArray<string> words, ImmutableArray<string> more)
    {
        var told = toldApart.FirstOrDefault(our => IsSaid(our, words, more));
        return Meant(words) is { } meant && (told is null || told.Words.All(words.Contains))
            ? meant
            : told ?? describedThings.FirstOrDefault(other => other.Words.All(words.Contains)) ?? Meant(Plain(words));
    }

    private bool IsSaid(Meaning our, ImmutableArray<string> words, ImmutableArray<string> more) =>
        our.Words.All(word => words.Contains(word) || (describes.Contains(word) && more.Contains(word)))
        && Plain(words).All(our.Words.Contains);

    /// <summary>What is taken for granted with a meaning: by its name, by words that were dropped, by a promise of the packet.</summary>
    public ImmutableArray<string> Assumed(Meaning meaning, ImmutableArray<string> words, ImmutableArray<string> more) =>
    [
        .. meaning.Assumed is { } assumed ? new[] { assumed } : [],
        .. words.Except(meaning.Words).Where(describesAssumed.ContainsKey).Select(word => describesAssumed[word]),
        .. IsGlutenFree(words.AddRange(more)) && !meaning.Ingredient!.Suits.GlutenFree
            ? new[] { $"'gluten-free' is the promise of that packet: {meaning.Ingredient.Name} counts as gluten here" } : [],
    ];

    /// <summary>Why an ingredient cannot be what a word promises, by its facts; null where it can. What only comes into contact
    /// with gluten, as oats, can be sold without.</summary>
    public static string? Contradiction(Ingredient ingredient, ImmutableArray<string> words) =>
        IsGlutenFree(words) && !ingredient.Suits.GlutenFree && !ingredient.Allergens.MayContain.Contains(Gluten) ? $"'gluten-free' is said, and {ingredient.Name} is not"
        : words.Contains("vegan") && !ingredient.Suits.Vegan ? $"'vegan' is said, and {ingredient.Name} is not"
        : null;

    private static bool IsGlutenFree(ImmutableArray<string> words) => words.Contains("gluten-free") || words.Contains("gf");

    private static string Key(ImmutableArray<string> words) => string.Join(' ', words.Distinct().Order(StringComparer.Ordinal));
}
