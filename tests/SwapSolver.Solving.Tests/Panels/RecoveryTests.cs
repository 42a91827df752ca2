using System.Globalization;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Panels;
using SwapSolver.Loaves;
using SwapSolver.Solving.Panels;

namespace SwapSolver.Solving.Tests.Panels;

/// <summary>Panels made by rounding known compositions: the ranges that come back must hold the truth in at least 99 of
/// 100 cases, every fact of a case counting, and must not be wide for want of trying.</summary>
public sealed class RecoveryTests
{
    private const double LeastShare = 0.99;

    /// <summary>Five decimals are kept of every end.</summary>
    private const double Kept = 1e-4;

    [Fact]
    public void Bags_of_the_table_are_found_again_with_nothing_but_the_panel()
    {
        var chance = new Random(20260801);
        var cases = new List<(string Name, string? Missed)>();
        foreach (var food in KnownFoods.Table.SelectMany(food => Enumerable.Repeat(food, 4)))
        {
            var isUs = chance.Next(2) == 0;
            // The table counts energy by each food's own factors; a European label by the general ones.
            var printed = isUs && chance.Next(2) == 0
                ? food
                : food with { Truth = food.Truth.SetItem(Fact.Energy, Math.Min(902, food.GeneralEnergy)) };
            cases.Add(Case(printed, isUs, like: null, chance));
        }

        AssertFound(400, cases);
    }

    [Fact]
    public void Bags_within_the_ranges_of_the_pantry_are_found_again_after_what_they_are_like()
    {
        var chance = new Random(20260802);
        var cases = new List<(string Name, string? Missed)>();
        foreach (var ingredient in TestKitchen.Bakehouse.Pantry.Ingredients.SelectMany(ingredient => Enumerable.Repeat(ingredient, 4)))
        {
            if (KnownFoods.Draw(ingredient, chance) is { } food)
            {
                cases.Add(Case(food, chance.Next(2) == 0, ingredient.Id, chance));
            }
        }

        AssertFound(400, cases);
    }

    private static void AssertFound(int least, List<(string Name, string? Missed)> cases)
    {
        var missed = cases.Where(one => one.Missed is not null).ToList();
        Assert.True(cases.Count >= least, $"only {cases.Count} cases");
        Assert.True(
            missed.Count <= (1 - LeastShare) * cases.Count,
            $"{missed.Count} of {cases.Count} missed:{Environment.NewLine}{string.Join(Environment.NewLine, missed.Select(one => $"{one.Name}: {one.Missed}"))}");
    }

    private static (string Name, string? Missed) Case(KnownFood food, bool isUs, string? like, Random chance)
    {
        var basis = isUs ? PanelBasis.UnitedStates : PanelBasis.EuropeanUnion;
        var serving = !isUs && chance.Next(2) == 0 ? 100 : 5 + (125 * chance.NextDouble());
        var panel = food.Print(basis, serving, chance);
        var answer = Packet.Read(panel, like);
        var name = string.Create(CultureInfo.InvariantCulture, $"{food.Name}, {basis}, {serving:0.##} g: {string.Join(", ", panel.Figures.OrderBy(pair => pair.Key).Select(pair => $"{pair.Key} {pair.Value}"))}");
        if (answer.Clash is { } clash)
        {
            return (name, clash.Words);
        }

        AssertNotWide(name, panel, answer);
        AssertOneComposition(name, answer);
        var outside = answer.Figures.Where(pair => food.Truth.TryGetValue(pair.Key, out var truth)
            && (truth < pair.Value.Range.Low - Kept || truth > pair.Value.Range.High + Kept));
        return (name, outside.Any() ? string.Join("; ", outside.Select(pair => $"{pair.Key} {food.Truth[pair.Key]} in {pair.Value.Range}")) : null);
    }

    /// <summary>No printed mass is less sure than its own rounding and that of the serving make it.</summary>
    private static void AssertNotWide(string name, NutritionPanel panel, PanelAnswer answer)
    {
        var serving = TestPanels.Rules.ServingOf(panel);
        foreach (var line in new[] { PanelLine.Fat, PanelLine.Protein, PanelLine.SaturatedFat, PanelLine.Sugars })
        {
            if (!panel.Figures.TryGetValue(line, out var figure))
            {
                continue;
            }

            var interval = TestPanels.Rules.IntervalOf(panel.Basis, line, figure);
            var range = answer.Figures[PanelFacts.FactOf(line)].Range;
            Assert.True(range.Low >= Math.Min(100, interval.Low * 100 / serving.High) - Kept, $"{name}: {line} {range}");
            Assert.True(range.High <= Math.Min(100, interval.High * 100 / serving.Low) + Kept, $"{name}: {line} {range}");
        }
    }

    /// <summary>The typical values are one composition that the pantry's own check would let in.</summary>
    private static void AssertOneComposition(string name, PanelAnswer answer)
    {
        double Typical(Fact fact) => answer.Figures.TryGetValue(fact, out var figure) ? figure.Range.Typical : 0;
        Assert.All(answer.Figures, pair => Assert.True(pair.Value.Range is { IsInOrder: true, Low: >= 0 } range && range.High <= pair.Key.Most, $"{name}: {pair}"));
        if (answer.Figures.ContainsKey(Fact.Water) && answer.Figures.ContainsKey(Fact.Carbohydrate) && answer.Figures.ContainsKey(Fact.Ash))
        {
            var sum = new[] { Fact.Water, Fact.Protein, Fact.Fat, Fact.Carbohydrate, Fact.Ash, Fact.Alcohol, Fact.Other }.Sum(Typical);
            Assert.True(Math.Abs(sum - 100) <= 1.5 + Kept, $"{name}: the whole is {sum} g");
        }

        var parts = new[] { Fact.Fibre, Fact.Sugars, Fact.Starch, Fact.Polyols, Fact.Allulose, Fact.OrganicAcid }.Sum(Typical);
        Assert.True(!answer.Figures.ContainsKey(Fact.Carbohydrate) || parts <= Typical(Fact.Carbohydrate) + (1.5 + Kept), $"{name}: parts of the carbohydrate {parts} g");
        Assert.True(Typical(Fact.SaturatedFat) <= Typical(Fact.Fat) + Kept, $"{name}: saturated fat above fat");
    }
}
