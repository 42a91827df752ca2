using System.Collections.Immutable;
using SwapSolver.Data.Files;
using SwapSolver.Data.Ingredients;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Data.Foods;

/// <summary>Reads <c>data/practice/foods.json</c>.</summary>
public static class FoodRulesFile
{
    private const double MostWidening = 10;

    /// <summary>What is taken of a food that states only its composition.</summary>
    /// <exception cref="DataFaultException">The file cannot be believed.</exception>
    public static FoodRules Read(DataFolder folder, SourceKeys sources)
    {
        var root = folder.Read("practice/foods.json").Only(
            "about", "families", "familyRule", "otherRole", "waterModel", "spreads", "usage", "estimate", "likeness", "table", "packet", "measured", "kinds", "rests");
        string SourceOf(string part) => sources.Key(root.Get(part).Only("source").Get("source"));
        var likeness = root.Get("likeness").Only("widening", "source");
        var vocabulary = Vocabulary.Read(folder, sources);
        _ = SourceOf("familyRule");
        return new FoodRules(
            [.. root.Get("families").Items.Select(family => FamilyOf(family, vocabulary))],
            Words.RoleOf(root.Get("otherRole")),
            WaterModelOf(root.Get("waterModel"), sources),
            root.Get("spreads").Properties.ToImmutableDictionary(
                pair => Fact.All.FirstOrDefault(fact => fact.Id == pair.Key) ?? throw pair.Value.Fault($"'{pair.Key}' is not a known fact"),
                pair => SpreadOf(pair.Value, sources)),
            UsageOf(root.Get("usage"), sources),
            SourceOf("estimate"),
            sources.Key(likeness.Get("source")),
            Between(likeness.Get("widening"), 1, MostWidening),
            SourceOf("table"),
            SourceOf("packet"),
            SourceOf("measured"),
            FoodKindsFile.KindsOf(root.Get("kinds"), sources),
            [.. root.Get("rests").Items.Select(rest => FoodKindsFile.RestOf(rest, sources))]);
    }

    private static FoodFamily FamilyOf(JsonPlace place, Vocabulary vocabulary)
    {
        place.Only("usdaGroup", "role", "groups");
        return new FoodFamily(
            place.Get("usdaGroup").Text, Words.RoleOf(place.Get("role")), [.. place.Get("groups").Items.Select(vocabulary.Group)]);
    }

    private static WaterModel WaterModelOf(JsonPlace place, SourceKeys sources)
    {
        place.Only("fibreGPerG", "proteinGPerG", "starchGPerG", "batterShare", "wetFromWaterGPer100G", "source");
        Range Of(string name)
        {
            var range = place.Get(name).Only("low", "typical", "high");
            var read = new Range(range.Get("low").Number, range.Get("typical").Number, range.Get("high").Number);
            return read.IsInOrder && read.Low >= 0 ? read : throw range.Fault("low, typical and high must stand in order, from 0");
        }

        return new WaterModel(
            Of("fibreGPerG"), Of("proteinGPerG"), Of("starchGPerG"), Of("batterShare"),
            new Grams(Between(place.Get("wetFromWaterGPer100G"), 0, Fact.Water.Most)), sources.Key(place.Get("source")));
    }

    private static Spread SpreadOf(JsonPlace place, SourceKeys sources)
    {
        place.Only("percent", "percentOfRest", "least", "source");
        return new Spread(
            new Percent(Between(place.Get("percent"), 0, 100)).Share, Between(place.Get("least"), 0, 100), sources.Key(place.Get("source")))
        {
            OfRest = place.Find("percentOfRest") is { } rest ? new Percent(Between(rest, 0, 100)) : null,
        };
    }

    private static Usage UsageOf(JsonPlace place, SourceKeys sources)
    {
        place.Only("maximumPercentOfBatter", "sensibleMinimumGrams", "scaleStepGrams", "source");
        return new Usage(
            null,
            new Percent(Between(place.Get("maximumPercentOfBatter"), 0, 100)),
            new Grams(Between(place.Get("sensibleMinimumGrams"), 0, 1000)),
            Offered: false,
            new Grams(Between(place.Get("scaleStepGrams"), 0, 100)),
            sources.Key(place.Get("source")),
            Mark.Practice);
    }

    private static double Between(JsonPlace place, double least, double most) =>
        place.Number >= least && place.Number <= most
            ? place.Number
            : throw place.Fault($"{place.Number} must lie between {least} and {most}");
}
