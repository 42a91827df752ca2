using Grpc.Core;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;
using Verdict = SwapSolver.V1.CheckSwapResponse.Types.Verdict;

namespace SwapSolver.Service.Tests.Services;

[Collection(OpenKitchen.Name)]
public sealed class BalanceServiceTests(OpenKitchen kitchen)
{
    [Fact]
    public async Task A_slice_weighs_the_batter_less_the_bake_loss_by_the_slices()
    {
        var response = await Bakes.Balance(kitchen.Service, Bakes.Hazelnut);
        // 775 g of batter lose 11 % in the oven and are cut into 14: 775 x 0.89 / 14 = 49.268 g.
        Assert.Equal(Bakes.HazelnutBatterGrams * 0.89 / 14, response.Nutrition.PerSlice.MassG, 9);
        Assert.Equal(100, response.Nutrition.Per100G.MassG, 9);
        Assert.Equal(Bakes.HazelnutBatterGrams * 0.89, response.Nutrition.PerLoaf.MassG, 9);
    }

    [Fact]
    public async Task Bakers_percentages_count_on_the_flours()
    {
        var response = await Bakes.Balance(kitchen.Service, Bakes.Hazelnut);
        // Hazelnut flour 180 g and ground flaxseed 60 g are the flours: 240 g. Water: 260 / 240.
        double Percent(string id) => response.BakersPercentages.Single(line => line.Ingredient == $"ingredients/{id}").Percent;
        Assert.Equal(75, Percent("hazelnut-flour"), 9);
        Assert.Equal(25, Percent("flaxseed-ground"), 9);
        Assert.Equal(26000.0 / 240, Percent("water"), 9);
        Assert.Equal(200, response.BakersPercentages.Single(line => line.Ingredient == "ingredients/egg-whole").Grams, 9);
    }

    [Fact]
    public async Task At_once_the_same_values_come_without_their_ranges()
    {
        var (whole, atOnce) = (await Bakes.Balance(kitchen.Service, Bakes.Hazelnut), await kitchen.Service.Balances.BalanceFormulaAsync(new BalanceFormulaRequest { Formula = Bakes.Hazelnut, TypicalOnly = true }));
        Assert.Equal(whole.Readings.Select(reading => (reading.Balance, reading.Value, reading.Band, reading.Standing)), atOnce.Readings.Select(reading => (reading.Balance, reading.Value, reading.Band, reading.Standing)));
        Assert.All(atOnce.Readings, reading => Assert.Equal((reading.Value, reading.Value), (reading.Low, reading.High)));
        Assert.Equal(whole.Nutrition, atOnce.Nutrition);
        Assert.Contains(whole.Readings, reading => reading.Low < reading.Value && reading.Value < reading.High);
    }

    [Fact]
    public async Task Water_poured_on_is_too_much_by_the_bands_of_the_loaf_that_it_was()
    {
        var wetter = Bakes.Hazelnut;
        wetter.Lines.Single(line => line.Ingredient == "ingredients/water").Grams += 80;
        var asked = new BalanceFormulaRequest { Formula = wetter, BandsOf = new BandOrigin { Formula = Bakes.Hazelnut } };
        var (before, after, byItself) = (await Bakes.Balance(kitchen.Service, Bakes.Hazelnut), await kitchen.Service.Balances.BalanceFormulaAsync(asked), await Bakes.Balance(kitchen.Service, wetter));
        Reading Hydration(BalanceFormulaResponse response) => response.Readings.Single(reading => reading.Balance == "hydration");
        Assert.Equal(Hydration(before).Band, Hydration(after).Band);
        Assert.Equal(Reading.Types.Standing.Above, Hydration(after).Standing);
        Assert.Equal(Reading.Types.Standing.Inside, Hydration(byItself).Standing);
        Assert.Equal(Hydration(byItself).Value, Hydration(after).Value);
        // The formula's own bands are kept, so there is nothing to mend.
        Assert.Null(after.Repair);
        asked.TypicalOnly = true;
        Assert.Equal(Reading.Types.Standing.Above, Hydration(await kitchen.Service.Balances.BalanceFormulaAsync(asked)).Standing);
    }

    [Fact]
    public async Task Bands_of_a_formula_that_cannot_be_read_are_refused_by_its_field()
    {
        var asked = new BalanceFormulaRequest { Formula = Bakes.Hazelnut, BandsOf = new BandOrigin { Formula = Bakes.From("""{ "lines": [{ "ingredient": "ingredients/buter", "grams": 1 }] }""") } };
        var refused = await Assert.ThrowsAsync<RpcException>(async () => await kitchen.Service.Balances.BalanceFormulaAsync(asked));
        Assert.Equal(StatusCode.InvalidArgument, refused.StatusCode);
        Assert.Contains("bandsOf.formula.lines[0]", refused.Status.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_formula_without_flour_has_no_bakers_percentages()
    {
        var custard = Bakes.From("""{ "lines": [{ "ingredient": "ingredients/egg-whole", "count": 2 }, { "ingredient": "ingredients/milk-whole", "grams": 250 }], "slices": 4 }""");
        var response = await Bakes.Balance(kitchen.Service, custard);
        Assert.All(response.BakersPercentages, line => Assert.False(line.HasPercent));
    }

    [Fact]
    public async Task A_loaf_without_soda_or_acid_has_no_leavening_reading()
    {
        var custard = Bakes.From("""{ "lines": [{ "ingredient": "ingredients/egg-whole", "count": 2 }, { "ingredient": "ingredients/water", "grams": 250 }], "slices": 4 }""");
        var response = await Bakes.Balance(kitchen.Service, custard);
        Assert.DoesNotContain(response.Readings, reading => reading.Balance == "leavening");
        Assert.All(response.Readings, reading => Assert.True(double.IsFinite(reading.Value) && double.IsFinite(reading.Low) && double.IsFinite(reading.High), reading.ToString()));
    }

    [Fact]
    public async Task Soda_without_acid_is_below_its_band_and_comes_with_a_repair()
    {
        var loaf = Bakes.Hazelnut;
        loaf.Lines.Remove(loaf.Lines.Single(line => line.Ingredient == "ingredients/cream-of-tartar"));
        var response = await Bakes.Balance(kitchen.Service, loaf);
        var leavening = response.Readings.Single(reading => reading.Balance == "leavening");
        Assert.Equal(Reading.Types.Standing.Below, leavening.Standing);
        Assert.NotEmpty(leavening.Meaning);
        Assert.NotNull(response.Repair);
        Assert.NotEmpty(response.Repair.Changes);
        Assert.Equal(Reading.Types.Standing.Inside, response.Repair.Readings.Single(reading => reading.Balance == "leavening").Standing);
    }

    [Theory]
    [InlineData("5e-324")]
    [InlineData("1e-300")]
    [InlineData("1e-9")]
    public async Task A_speck_of_flour_is_measured_or_refused_but_never_read_as_no_number(string grams)
    {
        var speck = Bakes.From($$"""{ "lines": [{ "ingredient": "ingredients/almond-meal", "grams": {{grams}} }], "slices": 1 }""");
        try
        {
            var response = await Bakes.Balance(kitchen.Service, speck);
            Assert.True(double.IsFinite(response.Nutrition.Per100G.EnergyKcal), response.Nutrition.Per100G.ToString());
            Assert.True(double.IsFinite(response.Nutrition.PerSlice.EnergyKcal), response.Nutrition.PerSlice.ToString());
            Assert.All(response.Readings, reading => Assert.True(double.IsFinite(reading.Value), reading.ToString()));
        }
        catch (RpcException refusal)
        {
            Assert.Equal(StatusCode.InvalidArgument, refusal.StatusCode);
        }
    }

    [Fact]
    public async Task A_swap_of_something_for_itself_balances()
    {
        var request = new CheckSwapRequest { Formula = Bakes.Hazelnut, Swaps = { new Swap { From = "ingredients/butter", To = "ingredients/butter" } } };
        var response = await kitchen.Service.Balances.CheckSwapAsync(request);
        Assert.Equal(Verdict.Balances, response.Verdict);
        Assert.Null(response.Repair);
        Assert.Empty(response.Reasons);
    }

    [Fact]
    public async Task Soda_swapped_gram_for_gram_for_potassium_bicarbonate_leaves_acid_over()
    {
        var response = await Bakes.Check(kitchen.Service, Bakes.Hazelnut);
        // 6 g of soda are 6 / 84.007 = 0.0714 mol of base; 6 g of potassium bicarbonate are 6 / 100.115 = 0.0599 mol
        // (molar masses of NaHCO3 and KHCO3). With the acid unchanged the ratio rises by 0.0714 / 0.0599 = 1.192,
        // from near 0.97 to near 1.15: above 1.05.
        var before = (await Bakes.Balance(kitchen.Service, Bakes.Hazelnut)).Readings.Single(reading => reading.Balance == "leavening").Value;
        var leavening = response.Readings.Single(reading => reading.Balance == "leavening");
        Assert.Equal(before * 100.115 / 84.007, leavening.Value, 2);
        Assert.Equal(Reading.Types.Standing.Above, leavening.Standing);
        Assert.NotEqual(Verdict.Balances, response.Verdict);
        Assert.NotEmpty(response.Reasons);
        Assert.NotEmpty(response.Reply);
        Assert.NotNull(response.Repair);
    }

    [Fact]
    public async Task The_swapped_formula_holds_the_dose_that_was_proposed()
    {
        var request = new CheckSwapRequest
        {
            Formula = Bakes.Hazelnut,
            Swaps = { new Swap { From = "ingredients/butter", To = "ingredients/olive-oil", Grams = 24.5 } },
        };
        var response = await kitchen.Service.Balances.CheckSwapAsync(request);
        Assert.DoesNotContain(response.Swapped.Lines, line => line.Ingredient == "ingredients/butter");
        Assert.Equal(24.5, response.Swapped.Lines.Single(line => line.Ingredient == "ingredients/olive-oil").Grams);
    }

    [Fact]
    public async Task A_cap_on_net_carbs_holds_for_a_swap_and_its_repair_too()
    {
        // The contract: a check takes habits, and their limits are limits on readings beside the default bands.
        var request = Bakes.SodaSwap(Bakes.Hazelnut);
        request.Habits = new Habits { Limits = { new ReadingLimit { Balance = "net-carbohydrate", High = 0.1 } } };
        var response = await kitchen.Service.Balances.CheckSwapAsync(request);
        Assert.Equal(0.1, response.Readings.Single(reading => reading.Balance == "net-carbohydrate").Band?.High);
    }
}
