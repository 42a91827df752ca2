using System.Collections.Immutable;
using CsCheck;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Tests.Balances;

/// <summary>Random formulas from the shipped pantry: one to fourteen lines, one to twenty slices.</summary>
internal static class AnyBowl
{
    private static readonly ImmutableArray<Ingredient> Shelf = PricedShelf.Ingredients;

    /// <summary>One thing off the shelf.</summary>
    public static readonly Gen<Ingredient> Ingredient = Gen.Int[0, Shelf.Length - 1].Select(place => Shelf[place]);

    /// <summary>A weighed line of 0.1 g to 400 g.</summary>
    public static readonly Gen<Line> Line =
        Gen.Select(Ingredient, Gen.Int[1, 4000], (ingredient, tenths) => new Line(ingredient, new Grams(tenths / 10.0)));

    /// <summary>Any formula.</summary>
    public static readonly Gen<Formula> Formula = Gen.Select(Line.Array[1, 14], Gen.Int[1, 20], (lines, slices) =>
        new Formula(Words(lines), [.. lines], slices, null, null, null));

    /// <summary>A reference and a loaf near it: every line moved by up to a fifth, and at times one thing more.</summary>
    public static readonly Gen<(Formula Reference, Formula Variant)> Pair = Formula.SelectMany(reference =>
        Gen.Select(Gen.Int[80, 120].Array[reference.Lines.Length], Line.Array[0, 1], (percents, more) =>
            (reference, reference with { Lines = [.. reference.Lines.Zip(percents, Moved), .. more] })));

    /// <summary>The lines in words, so that a failed law prints what was in the bowl.</summary>
    private static string Words(IEnumerable<Line> lines) =>
        string.Join(", ", lines.Select(line => FormattableString.Invariant($"{line.Grams.Value} g {line.Ingredient.Id}")));

    private static Line Moved(Line line, int percent) => line with { Grams = line.Grams * (percent / 100.0) };
}
