using System.Collections.Frozen;
using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Measures;

namespace SwapSolver.Lines.Names;

/// <summary>The names of ingredients in running words, where nothing but the very name counts.</summary>
public sealed class SpokenNames
{
    private readonly KnownNames known;

    private readonly WordForm form;

    private readonly FrozenSet<string> describes;

    private readonly NameTable table;

    internal SpokenNames(IngredientNames names, Pantry pantry, NameTable table)
    {
        form = table.Form;
        this.table = table;
        known = new KnownNames(names, pantry, form);
        describes = names.Describes.Select(form.Of).ToFrozenSet(StringComparer.Ordinal);
    }

    /// <summary>What exactly these words name; null where they name nothing that is known.</summary>
    public SpokenName? Of(IReadOnlyList<string> words)
    {
        var said = Said(words);
        return known.Meant(said) is { } meant ? new SpokenName(meant.Ingredient, meant.Assumed, meant.Says) : null;
    }

    /// <summary>What may be meant by words that name nothing, best first.</summary>
    public ImmutableArray<Candidate> Nearest(IReadOnlyList<string> words) => table.Find(words, []).Candidates;

    /// <summary>Whether a word only describes.</summary>
    public bool Describes(string word) => describes.Contains(form.Of(word));

    /// <summary>The one form of a word: its case, plural and spelling do not matter.</summary>
    public string FormOf(string word) => form.Of(word);

    private ImmutableArray<string> Said(IReadOnlyList<string> words) => WordForm.Join(words.Select(form.Of));
}

/// <summary>What words name.</summary>
/// <param name="Ingredient">The ingredient; null where it is a thing that the pantry lacks.</param>
/// <param name="Assumed">What is taken for granted; null where nothing is.</param>
/// <param name="Says">Why it is none of ours; null where it is.</param>
public sealed record SpokenName(Ingredient? Ingredient, string? Assumed, string? Says);
