using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Loaves;
using SwapSolver.Solving.Questions;

namespace SwapSolver.Solving.Tests.Questions;

public sealed class MeasurementTests
{
    /// <summary>Ten grams of soda, and vinegar enough for one.</summary>
    private static readonly Formula Soapy = Bowl.Of(
        ("hazelnut-flour", 180), ("flaxseed-ground", 60), ("psyllium-husk-powder", 20), ("water", 250), ("butter", 25),
        ("baking-soda", 10), ("vinegar-distilled", 15), ("salt", 6)).WithEggs(4);

    private static MeasuredFormula Of(Formula formula) =>
        new Measurement(formula).Answer(Ask.Search, Ask.Ample, CancellationToken.None);

    [Fact]
    public void Ten_grams_of_soda_with_a_spoon_of_vinegar_leave_soda_over()
    {
        // Base 10 / 84.006 = 119.0 mmol; acid 15 x 5 % / 60.052 = 12.5 mmol: a ratio of 0.105.
        var reading = Assert.Single(Of(Soapy).Readings, reading => reading.Balance.Id == "leavening");
        Assert.Equal(Kitchen.Balances.Standing.Below, reading.Standing);
        Assert.Equal(0.105, reading.Value.Value, 0.0005);
        Assert.Contains("soda is left over", reading.Meaning, StringComparison.Ordinal);
    }

    [Fact]
    public void The_repair_of_a_soapy_loaf_uses_its_soda_up()
    {
        var repair = Assert.IsType<Solving.Answers.Answer>(Of(Soapy).Repair).Formula;
        Assert.InRange(new Tally(repair).Leavening, 0.90, 1.05);
        Expect.None(Crumb.Faults(Soapy, repair, strictLeavening: true));
    }

    [Fact]
    public void A_balanced_loaf_is_inside_every_band_and_needs_no_repair()
    {
        foreach (var (name, formula) in Loaf.All)
        {
            var own = new Tally(formula).Leavening;
            Assert.True(double.IsNaN(own) || own is >= 0.90 and <= 1.05, $"{name} is not balanced: {own}");
            var standing = Of(formula);
            Assert.All(standing.Readings, reading => Assert.Equal(Kitchen.Balances.Standing.Inside, reading.Standing));
            Assert.Null(standing.Repair);
        }
    }

    [Fact]
    public void A_loaf_raised_by_yeast_has_no_reading_of_acid_by_soda() =>
        Assert.DoesNotContain(Of(Loaf.Yeast).Readings, reading => reading.Balance.Id == "leavening");

    [Fact]
    public void The_readings_are_what_the_grams_say()
    {
        foreach (var (_, formula) in Loaf.All)
        {
            var (readings, tally) = (Of(formula).Readings, new Tally(formula));
            Same("hydration", tally.Hydration);
            Same("gas", tally.Gas);
            Same("setting-protein", tally.SettingProtein);
            Same("gel", tally.Gel);
            Same("richness", tally.Richness);
            Same("net-carbohydrate", tally.NetCarbs);

            // Figures in the pantry carry four digits where a molar mass carries six.
            void Same(string id, double worked) =>
                Assert.Equal(worked, Assert.Single(readings, reading => reading.Balance.Id == id).Value.Value, Math.Abs(worked) * 2e-4);
        }
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.7)]
    [InlineData(7)]
    [InlineData(250)]
    public void A_bowl_of_any_size_stands_where_the_small_one_stands(double factor)
    {
        foreach (var (_, formula) in Loaf.All)
        {
            // Net carbs are counted by the slice, so a bowl of any size is cut into as many slices more.
            var larger = Of(formula.Scaled(factor)).Readings.ToDictionary(reading => reading.Balance.Id);
            foreach (var reading in Of(formula).Readings)
            {
                var times = reading.Balance is NetCarbohydrate ? factor : 1;
                Assert.Equal(reading.Value.Value * times, larger[reading.Balance.Id].Value.Value, Math.Abs(reading.Value.Value * times) * 1e-9);
                Assert.Equal(reading.Standing, larger[reading.Balance.Id].Standing);
            }
        }
    }

    [Fact]
    public void Every_reading_lies_in_its_own_range() =>
        Assert.All(
            Loaf.All.SelectMany(loaf => Of(loaf.Formula).Readings),
            reading => Assert.InRange(reading.Value.Value, reading.Low.Value * (1 - 1e-9), reading.High.Value * (1 + 1e-9)));

    [Fact]
    public void A_loaf_judged_by_itself_is_held_to_the_fixed_band_of_acid_by_soda()
    {
        var holds = Measurement.StrictLeavening(TestKitchen.Bakehouse.Balances, []);
        var hold = Assert.Single(holds);
        Assert.Equal((0.90, 1.05), (hold.Band.Low!.Value.Value, hold.Band.High!.Value.Value));
    }
}
