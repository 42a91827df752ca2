using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Unicode;
using System.Xml;
using SwapSolver.Cards.Texts;
using SwapSolver.Cards.Views;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Cards.Linked;

/// <summary>Writes a card in JSON-LD, in the vocabulary of schema.org: a Recipe with its NutritionInformation. Figures are for
/// machines, so they have a point and the unrounded amounts of one slice.</summary>
/// <param name="Room">What cards are printed with.</param>
internal sealed record RecipeData(CardRoom Room)
{
    private const string Context = "https://schema.org";

    private const string Type = "@type";

    private const double Milligrams = 1000;

    /// <summary>Signs of HTML stay escaped, so that the text may stand inside a page.</summary>
    private static readonly JsonSerializerOptions Written = new() { WriteIndented = true, Encoder = JavaScriptEncoder.Create(UnicodeRanges.All) };

    /// <summary>The card.</summary>
    public string Write(Card card)
    {
        var words = new CardWords(Room.Phrases, Room.Dials, Locales.Usual with { IsFahrenheitFirst = card.Locale.IsFahrenheitFirst });
        var formula = card.Formula;
        var recipe = new JsonObject
        {
            ["@context"] = Context,
            [Type] = "Recipe",
            ["name"] = PlainWords.Of(formula.DisplayName),
        };
        AddIfSaid(recipe, "description", PlainWords.Of(formula.Description));
        recipe["version"] = PlainWords.Of(card.Version);
        recipe["inLanguage"] = "en";
        recipe["recipeYield"] = BakingWords.Yield(words, formula);
        AddTimes(recipe, card);
        recipe["recipeIngredient"] = Texts(formula.Lines.Select(line =>
            words.Say("recipe-line", ("grams", words.Grams(line.Grams)), ("ingredient", PlainWords.Of(line.Ingredient.Name)))));
        recipe["recipeInstructions"] = Instructions(words, card);
        recipe["nutrition"] = Nutrition(words, card);
        return recipe.ToJsonString(Written);
    }

    private static void AddTimes(JsonObject recipe, Card card)
    {
        if (card.Bake?.TimeToCore is not { } time)
        {
            return;
        }

        recipe["cookTime"] = Duration(time.Value.Value);
        if (card.Bake.CoolToSlice is { } cooling)
        {
            // What the hands need is not known, so the whole is from the oven's door to the knife.
            recipe["totalTime"] = Duration(time.Value.Value + cooling.Value.Value);
        }
    }

    /// <summary>A duration by ISO 8601, in whole minutes.</summary>
    private static string Duration(double minutes) => XmlConvert.ToString(TimeSpan.FromMinutes(Math.Round(minutes, MidpointRounding.AwayFromZero)));

    private static JsonArray Instructions(CardWords words, Card card)
    {
        var instructions = new JsonArray();
        var position = 1;
        foreach (var step in card.Formula.Steps)
        {
            instructions.Add((JsonNode)new JsonObject { [Type] = "HowToStep", ["position"] = position++, ["text"] = words.Step(PlainWords.Of(step)) });
        }

        // A caution that stays behind on the page would be lost to whoever reads the data.
        instructions.Add((JsonNode)new JsonObject
        {
            [Type] = "HowToSection",
            ["name"] = words.Say("head-cautions"),
            ["position"] = position,
            ["itemListElement"] = new JsonArray([.. card.Statements.Concat(card.Cautions).Select(caution => new JsonObject { [Type] = "HowToTip", ["text"] = PlainWords.Of(caution) })]),
        });
        return instructions;
    }

    private static JsonObject Nutrition(CardWords words, Card card)
    {
        var slice = card.Loaf.Share(1.0 / card.Formula.Slices);
        var nutrition = new JsonObject
        {
            [Type] = "NutritionInformation",
            ["servingSize"] = words.Say("recipe-serving", ("grams", words.Number(slice.Mass.Value, "0"))),
            ["calories"] = $"{Figure(slice.EnergyKcal.Value, "0")} kcal",
            ["fatContent"] = Of(slice.Fat),
        };
        AddIfKnown(nutrition, "saturatedFatContent", slice.SaturatedFat);
        nutrition["carbohydrateContent"] = Of(slice.Carbohydrate);
        AddIfKnown(nutrition, "fiberContent", slice.Fibre);
        AddIfKnown(nutrition, "sugarContent", slice.Sugars);
        nutrition["proteinContent"] = Of(slice.Protein);
        if (slice.Sodium is { } sodium)
        {
            nutrition["sodiumContent"] = $"{Figure(sodium.Value * Milligrams, "0")} mg";
        }

        return nutrition;
    }

    private static void AddIfKnown(JsonObject place, string name, Grams? grams)
    {
        if (grams is { } known)
        {
            place[name] = Of(known);
        }
    }

    private static void AddIfSaid(JsonObject place, string name, string text)
    {
        if (text.Length > 0)
        {
            place[name] = text;
        }
    }

    private static string Of(Grams grams) => $"{Figure(grams.Value, "0.##")} g";

    private static string Figure(double figure, string format) => figure.ToString(format, CultureInfo.InvariantCulture);

    private static JsonArray Texts(IEnumerable<string> texts) => [.. texts.Select(text => (JsonNode)JsonValue.Create(text))];
}
