using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Records;

/// <summary>A stated food as it is written down.</summary>
internal sealed record FoodDocument(
    string Name,
    FoodOrigin Origin,
    string? UsdaFoodNumber,
    string? Like,
    Role? Role,
    ImmutableSortedDictionary<string, FigureDocument> Figures,
    string[]? Contains,
    string[]? MayContain,
    Suits? Suits,
    MeasureDocument[]? Measures)
{
    private static readonly ImmutableDictionary<string, Fact> Facts = Fact.All.ToImmutableDictionary(fact => fact.Id, StringComparer.Ordinal);

    /// <summary>Writes a food down.</summary>
    public static string Write(StatedFood food) => JsonSerializer.Serialize(
        new FoodDocument(
            food.Name,
            food.Origin,
            food.UsdaFoodNumber,
            food.Like,
            food.Role,
            food.Figures.ToImmutableSortedDictionary(
                pair => pair.Key.Id,
                pair => new FigureDocument(pair.Value.Range.Low, pair.Value.Range.Typical, pair.Value.Range.High, pair.Value.Source, pair.Value.Mark, pair.Value.RangeSource),
                StringComparer.Ordinal),
            food.Allergens is { } allergens ? [.. allergens.Contains] : null,
            food.Allergens is { } stated ? [.. stated.MayContain] : null,
            food.Suits,
            [.. food.HouseholdMeasures.Select(measure => new MeasureDocument(measure.Amount, measure.Measure, measure.Grams.Value, measure.Source, measure.Mark))]),
        FoodDocumentContext.Default.FoodDocument);

    /// <summary>Reads a food that was written down.</summary>
    public static StatedFood Read(string id, string text)
    {
        var document = JsonSerializer.Deserialize(text, FoodDocumentContext.Default.FoodDocument)!;
        return new StatedFood
        {
            Id = id,
            Name = document.Name,
            Origin = document.Origin,
            UsdaFoodNumber = document.UsdaFoodNumber,
            Like = document.Like,
            Role = document.Role,
            Figures = document.Figures.ToImmutableDictionary(
                pair => Facts[pair.Key],
                pair => new Figure(new Range(pair.Value.Low, pair.Value.Typical, pair.Value.High), pair.Value.Source, pair.Value.Mark, pair.Value.RangeSource)),
            Allergens = document.Contains is { } contains ? new StatedAllergens([.. contains], [.. document.MayContain ?? []]) : null,
            Suits = document.Suits,
            HouseholdMeasures =
            [
                .. (document.Measures ?? []).Select(measure =>
                    new HouseholdMeasure(measure.Amount, measure.Measure, new Grams(measure.Grams), measure.Source, measure.Mark)),
            ],
        };
    }
}

/// <summary>A figure as it is written down, in its fact's unit.</summary>
internal sealed record FigureDocument(double Low, double Typical, double High, string Source, Mark Mark, string? RangeSource);

/// <summary>A household measure as it is written down.</summary>
internal sealed record MeasureDocument(decimal Amount, string Measure, double Grams, string Source, Mark Mark);

/// <summary>Writes and reads without reflection: thousands of foods are read at a start.</summary>
[JsonSourceGenerationOptions(UseStringEnumConverter = true, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(FoodDocument))]
internal sealed partial class FoodDocumentContext : JsonSerializerContext;
