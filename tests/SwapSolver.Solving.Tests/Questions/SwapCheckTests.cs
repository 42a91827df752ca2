using System.Globalization;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Questions;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Tests.Questions;

public sealed class SwapCheckTests
{
    /// <summary>A hazelnut loaf with soda and cream of tartar.</summary>
    private static readonly Formula Hazelnut = Bowl.Of(
        ("hazelnut-flour", 180), ("flaxseed-ground", 55), ("psyllium-husk-powder", 18), ("water", 245), ("butter", 25),
        ("baking-soda", 5.5), ("cream-of-tartar", 12), ("salt", 5)).WithEggs(4);

    /// <summary>The first kitchens tell that a swap is likely; how unlikely it is, all of them do.</summary>
    [Theory]
    [InlineData("butter", "coconut-oil", 25, false)]
    [InlineData("water", "water", 235, false)]
    [InlineData("walnut-meal", "hazelnut-flour", 200, true)]
    [InlineData("walnut-meal", "pecan-meal", 200, true)]
    public void A_yes_says_how_unlikely_it_is_where_all_kitchens_say_so(string from, string to, double grams, bool isUnlikely)
    {
        var measured = Measured(from, to, grams);
        using var all = new FactSamples(measured.Reference, measured.Swapped, Ask.Search.Bags);
        var chance = all.ChanceOfBalance(measured.Holds, measured.Reference, measured.Swapped);
        Assert.Equal(isUnlikely, chance < 0.5);
        var told = string.Create(CultureInfo.InvariantCulture, $"in only {Math.Round(chance * 100)} of 100 kitchens");
        Assert.Equal(isUnlikely, measured.Yes(Ask.Search).Reply.Contains(told, StringComparison.Ordinal));
        Assert.Equal(isUnlikely, measured.Yes(Ask.Search).Reply.Contains("kitchens", StringComparison.Ordinal));

        // Whoever is told no readings hears the same.
        var (ranged, plain) = (measured.Yes(Ask.Search), measured.Yes(Ask.Search, withRanges: false));
        Assert.Equal(ranged.Reply, plain.Reply);
        Assert.Equal(ranged.Cautions.AsEnumerable(), plain.Cautions.AsEnumerable());
        Assert.All(ranged.Readings.Zip(plain.Readings), pair => Assert.Equal(pair.First with { Low = pair.First.Value, High = pair.First.Value }, pair.Second));
        Assert.Contains(ranged.Readings, reading => reading.Low.Value < reading.High.Value);
    }

    /// <summary>A few kitchens tell of a chance as all do, as near as their number allows.</summary>
    [Theory]
    [InlineData("butter", "coconut-oil", 25)]
    [InlineData("water", "water", 235)]
    [InlineData("walnut-meal", "hazelnut-flour", 200)]
    [InlineData("walnut-meal", "pecan-meal", 200)]
    public void A_few_kitchens_are_like_all_of_them(string from, string to, double grams)
    {
        var measured = Measured(from, to, grams);
        using var all = new FactSamples(measured.Reference, measured.Swapped, Ask.Search.Bags);
        using var few = new FactSamples(measured.Reference, measured.Swapped, Ask.Search.Bags, Bags.Few);
        var (inAll, inFew) = (all.ChanceOfBalance(measured.Holds, measured.Reference, measured.Swapped), few.ChanceOfBalance(measured.Holds, measured.Reference, measured.Swapped));
        // Five standard errors of a share that is even.
        Assert.InRange(inFew, inAll - (5 * 0.5 / Math.Sqrt(Bags.Few)), inAll + (5 * 0.5 / Math.Sqrt(Bags.Few)));
        Assert.Equal(0, inFew * Bags.Few % 1, 9);
    }

    [Theory]
    [InlineData("butter", "coconut-oil", 12.5)]
    [InlineData("hazelnut-flour", "almond-flour-blanched", 90)]
    [InlineData("hazelnut-flour", "coconut-flour", 60)]
    public void Of_what_goes_comespart_the_rest_stays_by_the_gram_with_a_repair_too(string from, string to, double grams)
    {
        var verdict = InPart(from, to, grams).Answer(Ask.Search);
        var (goes, comes) = (TestKitchen.Ingredient(from), TestKitchen.Ingredient(to));
        Assert.Equal(Hazelnut.MassOf(goes).Value - grams, verdict.Swapped.MassOf(goes).Value, 9);
        Assert.Equal(grams, verdict.Swapped.MassOf(comes).Value, 9);
        Assert.Contains(FormattableString.Invariant($"the same weight of {comes.Name} in place of {grams} g of the {goes.Name}"), verdict.Reply, StringComparison.Ordinal);
        if (verdict.Repair is { } repair)
        {
            Assert.Equal(verdict.Swapped.MassOf(goes), repair.Formula.MassOf(goes));
            Assert.True(repair.Formula.MassOf(comes) > Grams.None);
        }
    }

    [Fact]
    public void Half_of_a_flour_for_one_that_binds_more_water_asks_for_less_than_all_of_it_does()
    {
        // Each reads as sums of grams: half a swap moves a sum half as far.
        var (half, all) = (InPart("hazelnut-flour", "coconut-flour", 90).Measure(Ask.Search), InPart("hazelnut-flour", "coconut-flour", 180).Measure(Ask.Search));
        double Bound(Formula formula) => formula.Lines.Sum(line => line.Grams.Value * line.Ingredient.RangeOf(Kitchen.Ingredients.Fact.WaterBound)!.Value.Typical);
        var before = Bound(half.Reference);
        Assert.Equal((Bound(all.Swapped) - before) / 2, Bound(half.Swapped) - before, 9);
    }

    private static SwapCheck InPart(string from, string to, double grams) => new(
        Hazelnut, [new Swap(TestKitchen.Ingredient(from), TestKitchen.Ingredient(to), null) { Goes = new Grams(grams) }], [], Habits.Usual);

    [Fact]
    public void What_does_not_balance_is_no_yes()
    {
        var measured = Measured("walnut-meal", "almond-meal", 90);
        Assert.False(measured.Balances);
        Assert.Throws<InvalidOperationException>(() => measured.Yes(Ask.Search));
    }

    [Fact]
    public void Baking_powder_gram_for_gram_for_soda_does_not_balance()
    {
        // 5 g of soda are 5 / 84.006 = 59.5 mmol of base. 5 g of a powder at 3.666 mmol/g are 18.3: under a third of the
        // gas, and the cream of tartar (11 / 188.177 = 58.5 mmol) finds no soda.
        var verdict = Ask.Check(Loaf.Walnut, "baking-soda", "baking-powder-double-acting");
        Assert.Equal(Verdict.DoesNotBalance, verdict.Verdict);
        Assert.Contains(verdict.Reasons, reason => reason.StartsWith("acid by soda reads ", StringComparison.Ordinal));
        Assert.Contains(verdict.Reasons, reason => reason.StartsWith("gas reads ", StringComparison.Ordinal));
        Assert.StartsWith("No: the same weight of ", verdict.Reply, StringComparison.Ordinal);
        AssertMends(Loaf.Walnut, verdict, without: "baking-soda", with: "baking-powder-double-acting");
    }

    [Fact]
    public void The_reason_gives_the_reading_that_a_baker_can_work_out()
    {
        // Acid 58.46 + 5 x 3.666 = 76.79 mmol by base 18.33 mmol: 4.19.
        var verdict = Ask.Check(Loaf.Walnut, "baking-soda", "baking-powder-double-acting");
        Assert.Contains(verdict.Reasons, reason => reason.StartsWith("acid by soda reads 4.19, and must be at most 1.05", StringComparison.Ordinal));
    }

    [Fact]
    public void Leaving_the_dry_acid_goesleaves_soda_over()
    {
        var verdict = Ask.Check(Loaf.Walnut, "cream-of-tartar", null);
        Assert.Equal(Verdict.DoesNotBalance, verdict.Verdict);
        Assert.Contains(verdict.Reasons, reason => reason.Contains("soda is left over", StringComparison.Ordinal));
        Assert.Equal(0, new Tally(verdict.Swapped).Acid);
        AssertMends(Loaf.Walnut, verdict, without: "cream-of-tartar", with: null);
        Assert.InRange(new Tally(verdict.Repair!.Formula).Leavening, 0.90, 1.05);
    }

    [Fact]
    public void Citric_acid_for_cream_of_tartar_at_the_dose_of_equal_acid_balances()
    {
        // 11 g of cream of tartar are 58.46 mmol of acid; at 3 x 1000 / 192.123 = 15.615 mmol/g that is 3.74 g.
        var verdict = Ask.Check(Loaf.Walnut, "cream-of-tartar", "citric-acid", 3.7);
        Assert.Equal(Verdict.Balances, verdict.Verdict);
        Assert.Null(verdict.Repair);
        Assert.Empty(verdict.Reasons);
        Expect.None(Crumb.Faults(Loaf.Walnut, verdict.Swapped, strictLeavening: true));
    }

    [Fact]
    public void Citric_acid_gram_for_gram_for_cream_of_tartar_is_three_times_the_acid()
    {
        // 15.615 / 5.314 = 2.94.
        var verdict = Ask.Check(Loaf.Walnut, "cream-of-tartar", "citric-acid");
        Assert.NotEqual(Verdict.Balances, verdict.Verdict);
        Assert.Equal(2.94, new Tally(verdict.Swapped).Acid / new Tally(Loaf.Walnut).Acid, 0.005);
    }

    [Theory]
    [InlineData("almond-meal")]
    [InlineData("almond-flour-blanched")]
    public void Almond_gram_for_gram_for_hazelnut_balances(string almond)
    {
        var verdict = Ask.Check(Hazelnut, "hazelnut-flour", almond);
        Assert.Equal(Verdict.Balances, verdict.Verdict);
        Assert.StartsWith("Yes: ", verdict.Reply, StringComparison.Ordinal);
        Expect.None(Crumb.Faults(Hazelnut, verdict.Swapped));
    }

    [Fact]
    public void Coconut_flour_gram_for_gram_for_walnut_drinks_the_loaf_dry()
    {
        var verdict = Ask.Check(Loaf.Walnut, "walnut-meal", "coconut-flour");
        Assert.NotEqual(Verdict.Balances, verdict.Verdict);
        Assert.Contains(verdict.Reasons, reason => reason.StartsWith("hydration reads ", StringComparison.Ordinal));
        Assert.True(new Tally(verdict.Swapped).Hydration < 0.94 * new Tally(Loaf.Walnut).Hydration, "the loaf is as wet as before");
    }

    [Theory]
    [InlineData("baking-soda", 20)]
    [InlineData("cream-of-tartar", 5)]
    [InlineData("walnut-meal", 100)]
    public void A_swap_for_itself_at_a_wrong_dose_does_not_balance(string id, double grams)
    {
        var verdict = Ask.Check(Loaf.Walnut, id, id, grams);
        Assert.Equal(Verdict.DoesNotBalance, verdict.Verdict);
        Assert.NotEmpty(verdict.Reasons);
        Assert.Equal(grams, verdict.Swapped.MassOf(TestKitchen.Ingredient(id)).Value);
    }

    [Theory]
    [InlineData("baking-soda")]
    [InlineData("walnut-meal")]
    [InlineData("water")]
    public void A_swap_for_itself_gram_for_gram_balances(string id)
    {
        var verdict = Ask.Check(Loaf.Walnut, id, id);
        Assert.Equal(Verdict.Balances, verdict.Verdict);
        Assert.Equal(Ask.Weights(Loaf.Walnut), Ask.Weights(verdict.Swapped));
    }

    [Fact]
    public void Every_repair_is_inside_every_band_when_recomputed_from_its_grams()
    {
        (string From, string? To, double? Grams)[] proposals =
        [
            ("baking-soda", "baking-powder-double-acting", null), ("baking-soda", "potassium-bicarbonate", null),
            ("cream-of-tartar", null, null), ("cream-of-tartar", "vinegar-distilled", 30), ("cream-of-tartar", "lemon-juice", null),
            ("walnut-meal", "coconut-flour", 60), ("walnut-meal", "sunflower-seed-flour", null), ("water", "milk-whole", null),
            ("psyllium-husk-powder", "psyllium-husk", null), ("psyllium-husk-powder", "xanthan-gum", 4), ("butter", "olive-oil", null),
            ("flaxseed-ground", "chia-ground", null), ("egg-whole", "egg-white", 200),
        ];
        var repaired = 0;
        foreach (var (from, to, grams) in proposals)
        {
            var verdict = Ask.Check(Loaf.Walnut, from, to, grams);
            Assert.Equal(verdict.Verdict == Verdict.Balances, verdict.Reasons.IsEmpty);
            if (verdict.Repair is { } repair)
            {
                repaired++;
                var leavens = verdict.Swapped.Lines.Any(line => Loaf.Walnut.MassOf(line.Ingredient) != line.Grams && (from is "baking-soda" or "cream-of-tartar"));
                Expect.None(Crumb.Faults(Loaf.Walnut, repair.Formula, strictLeavening: leavens).Select(fault => $"{from} -> {to}: {fault}"));
            }

            if (verdict.Verdict == Verdict.BalancesWithRepair && to is not null)
            {
                var dose = TestKitchen.Ingredient(to);
                Assert.Equal(verdict.Swapped.MassOf(dose), verdict.Repair!.Formula.MassOf(dose));
            }
        }

        Assert.True(repaired >= 5, $"only {repaired} of the proposals were repaired");
    }

    private static void AssertMends(Formula before, SwapVerdict verdict, string without, string? with)
    {
        var repair = Assert.IsType<Solving.Answers.Answer>(verdict.Repair).Formula;
        Expect.None(Crumb.Faults(before, repair, strictLeavening: true));
        Assert.Equal(0, repair.MassOf(TestKitchen.Ingredient(without)).Value);
        if (with is not null)
        {
            Assert.True(repair.MassOf(TestKitchen.Ingredient(with)).Value > 0, $"the repair does without {with}");
        }
    }

    private static MeasuredSwap Measured(string from, string to, double grams) => new SwapCheck(
        Loaf.Walnut, [new Swap(TestKitchen.Ingredient(from), TestKitchen.Ingredient(to), new Grams(grams))], [], Habits.Usual).Measure(Ask.Search);
}
