using System.Collections.Immutable;
using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Data.Ingredients;

/// <summary>Reads one file of <c>data/ingredients/</c>.</summary>
/// <param name="Sources">The bibliography.</param>
/// <param name="Vocabulary">Known allergen and group ids.</param>
internal sealed record IngredientFile(SourceKeys Sources, Vocabulary Vocabulary)
{
    /// <summary>The ingredient that a file describes.</summary>
    /// <param name="root">The file.</param>
    /// <param name="fileId">Id that the file's name gives.</param>
    public Ingredient Read(JsonPlace root, string fileId)
    {
        root.Only(
            "id", "name", "role", "about", "notFor", "made", "usdaFoodNumber", "groups", "allergens", "suits",
            "carbohydrateBasis", "facts", "noneByNature", "usage", "scaleStepGrams", "countedUnits",
            "householdMeasures", "behaviours", "cautions");
        var id = root.Get("id");
        if (id.Text != fileId)
        {
            throw id.Fault($"the id '{id.Text}' is not the file's name '{fileId}'");
        }

        if (root.Get("carbohydrateBasis") is { Text: not "by-difference-with-fibre" } basis)
        {
            throw basis.Fault($"carbohydrate on the basis '{basis.Text}' is not read; write it by difference, fibre within");
        }

        var allergens = AllergensOf(root.Get("allergens"));
        var suits = SuitsOf(root.Get("suits"));
        if (suits.GlutenFree && (allergens.Carries("wheat") || allergens.Carries("gluten-cereals")))
        {
            throw root.Get("suits").Fault("'glutenFree' is true, but a cereal with gluten stands among the allergens; one of them is wrong");
        }

        var (figures, none) = new FactReader(Sources).Read(root);
        return new Ingredient
        {
            Id = id.Text,
            Name = root.Get("name").Text,
            Role = Words.RoleOf(root.Get("role")),
            About = root.Get("about").Text,
            NotFor = root.Get("notFor").Text,
            Made = root.Get("made").Text,
            UsdaFoodNumber = root.Find("usdaFoodNumber")?.Text,
            Groups = [.. root.Get("groups").Items.Select(Vocabulary.Group)],
            Allergens = allergens,
            Suits = suits,
            Figures = figures,
            NoneByNature = none,
            Usage = UsageOf(root.Get("usage"), root.Get("scaleStepGrams")),
            CountedUnits = [.. root.Get("countedUnits").Items.Select(CountedUnitOf)],
            HouseholdMeasures = [.. root.Get("householdMeasures").Items.Select(HouseholdMeasureOf)],
            Behaviours = [.. root.Get("behaviours").Items.Select(BehaviourOf)],
            Cautions = [.. root.Get("cautions").Items.Select(place => place.Text)],
        };
    }

    private Allergens AllergensOf(JsonPlace place)
    {
        place.Only("us", "eu", "mayContain", "source", "mark");
        ImmutableArray<string> On(string list) => [.. place.Get(list).Items.Select(item => Vocabulary.AllergenOn(list, item))];
        return new Allergens(
            On("us"),
            On("eu"),
            [.. place.Get("mayContain").Items.Select(Vocabulary.Allergen)],
            Sources.Key(place.Get("source")),
            Words.MarkOf(place.Get("mark")));
    }

    private Suits SuitsOf(JsonPlace place)
    {
        place.Only("vegan", "vegetarian", "glutenFree", "source", "mark");
        _ = Sources.Key(place.Get("source"));
        _ = Words.MarkOf(place.Get("mark"));
        return new Suits(place.Get("vegan").Flag, place.Get("vegetarian").Flag, place.Get("glutenFree").Flag);
    }

    private Usage UsageOf(JsonPlace place, JsonPlace scaleStep)
    {
        place.Only("maximumPercentOfFlour", "maximumPercentOfBatter", "sensibleMinimumGrams", "offered", "source", "mark");
        Percent? Share(string name) => place.Find(name) is { } share ? new Percent(Positive(share)) : null;
        return new Usage(
            Share("maximumPercentOfFlour"),
            Share("maximumPercentOfBatter"),
            new Grams(Positive(place.Get("sensibleMinimumGrams"))),
            place.Get("offered").Flag,
            new Grams(Positive(scaleStep)),
            Sources.Key(place.Get("source")),
            Words.MarkOf(place.Get("mark")));
    }

    private CountedUnit CountedUnitOf(JsonPlace place)
    {
        place.Only("size", "grams", "source", "mark");
        return new CountedUnit(
            Words.SizeOf(place.Get("size")),
            new Grams(Positive(place.Get("grams"))),
            Sources.Key(place.Get("source")),
            Words.MarkOf(place.Get("mark")));
    }

    private HouseholdMeasure HouseholdMeasureOf(JsonPlace place)
    {
        place.Only("amount", "measure", "grams", "lowGrams", "highGrams", "source", "mark");
        return new HouseholdMeasure(
            (decimal)Positive(place.Get("amount")),
            place.Get("measure").Text,
            new Grams(Positive(place.Get("grams"))),
            Sources.Key(place.Get("source")),
            Words.MarkOf(place.Get("mark")),
            place.Find("lowGrams") is null && place.Find("highGrams") is null ? null : EstimateOf(place));
    }

    private static GramRange EstimateOf(JsonPlace place)
    {
        Grams Of(string name) => new(Positive(place.Get(name)));
        var estimate = new GramRange(Of("lowGrams"), Of("grams"), Of("highGrams"));
        return estimate.Low <= estimate.Typical && estimate.Typical <= estimate.High
            ? estimate
            : throw place.Fault("lowGrams, grams and highGrams must stand in order");
    }

    private Behaviour BehaviourOf(JsonPlace place)
    {
        place.Only("kind", "note", "source", "mark");
        return new Behaviour(
            place.Get("kind").Text, place.Get("note").Text, Sources.Key(place.Get("source")), Words.MarkOf(place.Get("mark")));
    }

    private static double Positive(JsonPlace place) =>
        place.Number > 0 ? place.Number : throw place.Fault($"{place.Number} must be above 0");
}
