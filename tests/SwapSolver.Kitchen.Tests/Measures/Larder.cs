using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Kitchen.Tests.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Measures;

/// <summary>Invented foods with household weights in round figures, weighed by the shipped measures.</summary>
internal static class Larder
{
    private static MeasureTables Tables => TestCards.Room.Measures;

    /// <summary>A food with what its spoons, cups and pieces weigh [g].</summary>
    public static Ingredient Of(Role role, params ReadOnlySpan<(string Measure, double Grams)> weights)
    {
        var rows = ImmutableArray.CreateBuilder<HouseholdMeasure>();
        foreach (var (measure, grams) in weights)
        {
            rows.Add(new HouseholdMeasure(1, measure, new Grams(grams), "invented", Mark.Practice));
        }

        return With(role, rows.ToImmutable());
    }

    /// <summary>A food whose teaspoon is only guessed: so many grams, from so many to so many.</summary>
    public static Ingredient Guessed(Role role, double low, double typical, double high) =>
        With(role, [new HouseholdMeasure(1, "tsp", new Grams(typical), "invented", Mark.Memory, new GramRange(new Grams(low), new Grams(typical), new Grams(high)))]);

    /// <summary>What a measure of it weighs.</summary>
    /// <param name="food">The food.</param>
    /// <param name="count">How many.</param>
    /// <param name="unit">Id of the unit; null for what is counted.</param>
    /// <param name="kitchen">Whose measures stand in this kitchen.</param>
    /// <param name="system">Whose measures the line says.</param>
    /// <param name="filling">How it says that they were filled.</param>
    /// <param name="words">Its other words.</param>
    public static Weighed Weigh(
        Ingredient food, double count, string? unit, MeasureSystem? kitchen = MeasureSystem.UsCustomary, MeasureSystem? system = null, string? filling = null, string words = "") =>
        new Weighing(Tables, kitchen).Weigh(
            new Measured(
                Amount.Of(count),
                unit is null ? null : Tables.Units.Single(one => one.Id == unit),
                system,
                filling is null ? null : Tables.Fillings.Named.Single(one => one.Id == filling),
                [.. words.Split(' ', StringSplitOptions.RemoveEmptyEntries)]),
            food);

    private static Ingredient With(Role role, ImmutableArray<HouseholdMeasure> rows)
    {
        var food = Invented.Of("thing", role, (Fact.Fat, 10));
        return food.With(food.Figures, rows);
    }
}
