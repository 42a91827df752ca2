using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.Solving.Questions;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Tests.Questions;

public sealed class SwapChartTests
{
    [Fact]
    public void Every_ingredient_is_set_against_its_kind_and_against_nothing()
    {
        foreach (var (_, loaf) in Loaf.All)
        {
            var pairs = new SwapChart(loaf, [], Habits.Usual).Pairs(TestKitchen.Bakehouse);
            Assert.Equal(loaf.Lines.Select(line => line.Ingredient).Distinct(), pairs.Where(pair => pair.To is null).Select(pair => pair.From));
            Assert.Equal(pairs.Length, pairs.Distinct().Count());
            Assert.All(pairs.Where(pair => pair.To is not null), pair =>
            {
                Assert.Equal(Grams.None, loaf.MassOf(pair.To!));
                Assert.True(pair.To!.Role == pair.From.Role || pair.To.Role is Role.Base or Role.LeaveningBlend, $"{pair}");
            });
        }
    }

    [Theory]
    [InlineData("walnut-meal")]
    [InlineData("baking-soda")]
    [InlineData("butter")]
    [InlineData("egg-whole")]
    public void A_check_of_the_charted_dose_says_the_same(string from)
    {
        var charted = Chart(from);
        Assert.NotEmpty(charted);
        foreach (var pair in charted.Where(one => one.Pair.To is not null))
        {
            var check = Ask.Check(Loaf.Walnut, from, pair.Pair.To!.Id, pair.Dose?.Value);
            if (pair.Verdict == Verdict.Balances)
            {
                Assert.Equal(Verdict.Balances, check.Verdict);
            }
            else if (pair.Verdict == Verdict.BalancesWithRepair)
            {
                Assert.NotEqual(Verdict.DoesNotBalance, check.Verdict);
                Assert.NotEmpty(pair.Changes);
            }
            else
            {
                // No dose does, so gram for gram does not either.
                Assert.Null(pair.Dose);
                Assert.Equal(Verdict.DoesNotBalance, check.Verdict);
            }
        }
    }

    [Fact]
    public void Another_fat_will_do_and_no_soda_will_not()
    {
        // Common practice, no source: ghee stands in for butter gram for gram; a quick bread without its soda does not rise.
        Assert.Equal((Verdict.Balances, 20), (Of("butter", "ghee").Verdict, Of("butter", "ghee").Dose!.Value.Value));
        Assert.Equal(Verdict.DoesNotBalance, Of("baking-soda", null).Verdict);
    }

    [Fact]
    public void Potassium_bicarbonate_is_dosed_by_its_molar_mass()
    {
        // 100.115 g/mol against 84.007 g/mol (IUPAC standard atomic weights, from memory): 5 g of soda are 5.96 g of it. The
        // bands let the dose lie a tenth to either side.
        Assert.InRange(Of("baking-soda", "potassium-bicarbonate").Dose!.Value.Value, 0.9 * 5.96, 1.1 * 5.96);
    }

    [Fact]
    public void An_allergen_that_comes_in_is_told_beside_the_verdict() =>
        Assert.Contains(Of("walnut-meal", "sesame-meal").Cautions, caution => caution.Contains("sesame", StringComparison.Ordinal));

    [Fact]
    public void What_is_dangerous_to_somebody_says_so_in_its_own_row()
    {
        // Common knowledge, no source: xylitol is dangerous to dogs.
        var chart = new SwapChart(Loaf.Muffins, [TestKitchen.Ingredient("erythritol")], Habits.Usual);
        var xylitol = chart.Trace(Ask.Search, chart.Pairs(TestKitchen.Bakehouse), Ask.Ample, CancellationToken.None).Single(one => one.Pair.To?.Id == "xylitol");
        Assert.Contains(xylitol.Cautions, caution => caution.Contains("dog", StringComparison.OrdinalIgnoreCase));
    }

    private static List<ChartedSwap> Chart(string from)
    {
        var chart = new SwapChart(Loaf.Walnut, [TestKitchen.Ingredient(from)], Habits.Usual);
        return [.. chart.Trace(Ask.Search, chart.Pairs(TestKitchen.Bakehouse), Ask.Ample, CancellationToken.None)];
    }

    private static ChartedSwap Of(string from, string? to) => Chart(from).Single(one => one.Pair.To?.Id == to);
}
