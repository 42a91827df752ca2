using System.Collections.Immutable;
using SwapSolver.Data.Files;
using SwapSolver.Data.Foods;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Kitchen.Tests.Foods;

/// <summary>Invented bags on a shelf, made into ingredients by the shipped rules.</summary>
internal static class Shelf
{
    private static readonly SourceKeys Sources = SourceKeys.Read(TestKitchen.Folder);

    public static FoodRules Rules { get; } = FoodRulesFile.Read(TestKitchen.Folder, Sources);

    public static TableRules TableRules { get; } = TableRulesFile.Read(TestKitchen.Folder, Sources);

    private static FoodIngredient Maker { get; } =
        new(Rules, TestKitchen.Bakehouse.Pantry.Allergens, new FoodWords(TestKitchen.Bakehouse.Phrases));

    /// <summary>Figures by the shipped spreads.</summary>
    public static ImmutableDictionary<Fact, Figure> Figures(params ReadOnlySpan<(Fact Fact, double Figure)> stated)
    {
        var figures = ImmutableDictionary.CreateBuilder<Fact, Figure>();
        foreach (var (fact, figure) in stated)
        {
            figures[fact] = Rules.Spreads[fact].Of(fact, figure, Rules.TableSource);
        }

        return figures.ToImmutable();
    }

    /// <summary>Figures without a range.</summary>
    public static ImmutableDictionary<Fact, Figure> Exact(params ReadOnlySpan<(Fact Fact, double Figure)> stated)
    {
        var figures = ImmutableDictionary.CreateBuilder<Fact, Figure>();
        foreach (var (fact, figure) in stated)
        {
            figures[fact] = new Figure(new Range(figure, figure, figure), "invented", Mark.Practice, null);
        }

        return figures.ToImmutable();
    }

    /// <summary>A dry flour whose parts make 100 g.</summary>
    public static ImmutableDictionary<Fact, Figure> Flour => Figures(
        (Fact.Water, 6), (Fact.Protein, 20), (Fact.Fat, 10), (Fact.Ash, 3), (Fact.Carbohydrate, 61), (Fact.Fibre, 30), (Fact.Sugars, 5), (Fact.Energy, 414));

    public static StatedFood Bag(
        ImmutableDictionary<Fact, Figure> figures, StatedAllergens? allergens = null, Suits? suits = null, string? number = null, Role? role = null) => new()
        {
            Id = "larkfield-bag",
            Name = "Larkfield bag",
            Origin = FoodOrigin.Packet,
            UsdaFoodNumber = number,
            Role = role,
            Figures = figures,
            Allergens = allergens,
            Suits = suits,
        };

    public static Ingredient Of(StatedFood food, string? like = null) => Maker.Of(food, like is null ? null : TestKitchen.Ingredient(like));
}
