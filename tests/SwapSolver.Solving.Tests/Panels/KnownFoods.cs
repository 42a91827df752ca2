using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Panels;
using SwapSolver.Loaves;

namespace SwapSolver.Solving.Tests.Panels;

/// <summary>Compositions that are known: rows of the USDA table, and draws within the ranges of the pantry.</summary>
internal static class KnownFoods
{
    private static readonly ImmutableArray<Fact> Parts =
        [Fact.Fibre, Fact.Sugars, Fact.Starch, Fact.Polyols, Fact.Allulose, Fact.OrganicAcid];

    private static readonly ImmutableArray<Fact> Others =
        [Fact.Water, Fact.Protein, Fact.Fat, Fact.Ash, Fact.Alcohol, Fact.Other];

    /// <summary>The rows of the table, with the table's own energy.</summary>
    public static ImmutableArray<KnownFood> Table { get; } =
    [
        .. ReferenceTable.Read("Panels/Reference/usda-baking-foods.csv").Rows.Select(row => new KnownFood(
            $"{row["food"]} {row["name"]}",
            PanelFacts.Composition.Where(fact => row.Cells.GetValueOrDefault(fact.Id) is { Length: > 0 })
                .ToImmutableDictionary(fact => fact, fact => row.Number(fact.Id)))),
    ];

    /// <summary>A bag of an ingredient, somewhere within its ranges: a composition that can be, or null where the draw was none.</summary>
    public static KnownFood? Draw(Ingredient ingredient, Random chance)
    {
        for (var tries = 0; tries < 200; tries++)
        {
            var reach = chance.NextDouble();
            var truth = PanelFacts.Composition
                .Where(fact => ingredient.RangeOf(fact) is not null)
                .ToDictionary(fact => fact, fact => ingredient.RangeOf(fact)!.Value.At(0.5 + ((chance.NextDouble() - 0.5) * reach)));
            double Of(Fact fact) => truth.GetValueOrDefault(fact);
            var carbohydrate = ingredient.RangeOf(Fact.Carbohydrate)!.Value;
            var left = 100 - Others.Sum(Of);
            truth[Fact.Carbohydrate] = carbohydrate.High > 0 ? left : 0;
            var fits = Math.Abs(left - Of(Fact.Carbohydrate)) < 0.2
                && Of(Fact.Carbohydrate) >= carbohydrate.Low
                && Of(Fact.Carbohydrate) <= carbohydrate.High
                && Parts.Sum(Of) <= Of(Fact.Carbohydrate) + 0.3
                && Of(Fact.Fibre) <= Of(Fact.Carbohydrate)
                && Of(Fact.SaturatedFat) <= Of(Fact.Fat)
                && Of(Fact.Erythritol) <= Of(Fact.Polyols);
            if (fits)
            {
                var food = new KnownFood(ingredient.Id, truth.ToImmutableDictionary());
                return food with { Truth = food.Truth.SetItem(Fact.Energy, Energy(ingredient, food, chance)) };
            }
        }

        return null;
    }

    /// <summary>By the general factors, or as the ingredient's own energy stands to them.</summary>
    private static double Energy(Ingredient ingredient, KnownFood food, Random chance)
    {
        var middle = new KnownFood(
            ingredient.Id, PanelFacts.Composition.Where(fact => ingredient.RangeOf(fact) is not null).ToImmutableDictionary(fact => fact, fact => ingredient.RangeOf(fact)!.Value.Typical));
        return chance.Next(2) == 0 || middle.GeneralEnergy <= 0
            ? food.GeneralEnergy
            : Math.Min(902, food.GeneralEnergy * middle.Truth[Fact.Energy] / middle.GeneralEnergy);
    }
}
