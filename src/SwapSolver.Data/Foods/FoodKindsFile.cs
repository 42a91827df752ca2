using System.Collections.Immutable;
using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Data.Foods;

/// <summary>Reads the parts of <c>data/practice/foods.json</c> that go by the name of a food.</summary>
internal static class FoodKindsFile
{
    private static readonly ImmutableArray<Fact> MayBeLeftOut = [Fact.Alcohol, Fact.Other];

    /// <summary>The foods that are told by their names.</summary>
    /// <exception cref="DataFaultException">The place cannot be believed.</exception>
    public static FoodKinds KindsOf(JsonPlace place, SourceKeys sources)
    {
        place.Only("fillers", "list", "source");
        _ = sources.Key(place.Get("source"));
        return new FoodKinds(
            [.. place.Get("list").Items.Select(KindOf)],
            [.. place.Get("fillers").Items.Select(filler => WordsOf(filler) is [var word] ? word : throw filler.Fault("one word is wanted"))]);
    }

    /// <summary>What tables have no column for.</summary>
    /// <exception cref="DataFaultException">The place cannot be believed.</exception>
    public static RestOfFood RestOf(JsonPlace place, SourceKeys sources)
    {
        place.Only("names", "fact", "mostGPer100G", "spreadPercent", "acidMmolPerG", "source", "mark");
        _ = Words.MarkOf(place.Get("mark"));
        var fact = place.Get("fact");
        return new RestOfFood(
            [.. place.Get("names").Items.Select(WordsOf)],
            MayBeLeftOut.FirstOrDefault(one => one.Id == fact.Text) ?? throw fact.Fault($"'{fact.Text}' must be alcohol or other"),
            new Grams(UpTo100(place.Get("mostGPer100G"))),
            new Percent(UpTo100(place.Get("spreadPercent"))),
            new PerGram(UpTo100(place.Get("acidMmolPerG"))),
            sources.Key(place.Get("source")));
    }

    private static FoodKind KindOf(JsonPlace place)
    {
        place.Only("like", "names");
        return new FoodKind([.. place.Get("names").Items.Select(name => WordsOf(name).ToImmutableHashSet(StringComparer.Ordinal))], place.Get("like").Text);
    }

    private static ImmutableArray<string> WordsOf(JsonPlace place) =>
        FoodName.Words(place.Text) is { IsEmpty: false } words ? words : throw place.Fault("a name of letters is wanted");

    private static double UpTo100(JsonPlace place) =>
        place.Number is >= 0 and <= 100 ? place.Number : throw place.Fault($"{place.Number} must lie between 0 and 100");
}
