using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Questions;
using SwapSolver.Solving.Replacing;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Tests.Replacing;

public sealed class LeaveningReplacementTests
{
    private static readonly ReferenceTable Doses = ReferenceTable.Read("Replacing/Reference/six-grams-of-cream-of-tartar.csv");

    public static TheoryData<string> Rows => [.. Doses.Names];

    public static TheoryData<string> Loaves => [.. Loaf.All.Where(loaf => loaf.Name != nameof(Loaf.Yeast)).Select(loaf => loaf.Name)];

    [Theory]
    [MemberData(nameof(Rows))]
    public void Six_grams_of_cream_of_tartar_are_answered_with_dose_water_and_timing(string name)
    {
        var row = Doses[name];
        var answer = ReplacedDoses.Of("cream-of-tartar", 6).Answers.Single(one => one.Grams(row["with"]) > 0);
        var replaced = answer.Replaced!;

        Assert.True(row.Agrees(answer.Grams(row["with"])), row.Against(answer.Grams(row["with"])));
        Assert.Equal(row.Number("mmol"), replaced.Acid.Value, 0.05);
        Assert.Equal(row.Number("water"), replaced.WaterMore.Value, 0.5);
        Assert.Equal(row["timing"], replaced.Timing.ToString());
        Assert.Contains(replaced.TimingWords, answer.Notes);
        Assert.Contains("% while mixing", replaced.TimingWords, StringComparison.Ordinal);
    }

    public static TheoryData<string> AcidsAndBases =>
        [.. TestKitchen.Bakehouse.Pantry.Ingredients.Where(one => one.Role is Role.Acid or Role.Base && LeaveningKits.Leavens(one)).Select(one => one.Id)];

    [Fact]
    public void A_liquid_acid_without_a_formula_says_how_much_water_to_take_out() =>
        Assert.Contains(
            "It brings 36 g of water: take as much out of the water or another liquid.",
            ReplacedDoses.Of("cream-of-tartar", 6, "vinegar-distilled").Answers[0].Notes);

    [Fact]
    public void In_a_loaf_the_water_of_the_vinegar_is_taken_out_and_every_band_is_kept()
    {
        var answer = ReplacedDoses.In(Loaf.Walnut, "cream-of-tartar", "vinegar-distilled").Answers[0];
        var before = Loaf.Walnut.Merged();

        // 11 g are 58.5 mmol: 70 g of 5 % vinegar, of which 66.6 g is water.
        Assert.Equal(70, answer.Grams("vinegar-distilled"), 0.5);
        Assert.Equal(220 - 66.6, answer.Grams("water"), 1.0);
        Assert.Equal(before.Sum(Fact.Water), answer.Formula.Sum(Fact.Water), 1.0);
        Assert.All(answer.Readings, reading => Assert.Equal(Standing.Inside, reading.Standing));
        Assert.Equal(["cream-of-tartar", "vinegar-distilled", "water"], answer.Changes.Select(change => change.Ingredient.Id));
    }

    [Theory]
    [MemberData(nameof(Loaves))]
    public void Whatever_stands_in_keeps_acid_soda_and_every_band(string name)
    {
        var loaf = Loaf.All.Single(one => one.Name == name).Formula.Merged();
        foreach (var from in loaf.Lines.Select(line => line.Ingredient).Where(LeaveningKits.Leavens))
        {
            var outcomes = ReplacedDoses.In(loaf, from.Id);

            Assert.NotEqual(outcomes.Answers.IsEmpty, outcomes.Conflict.IsEmpty);
            Assert.All(outcomes.Answers, answer =>
            {
                Assert.Equal(0, answer.Grams(from.Id));
                Assert.All(answer.Readings, reading => Assert.Equal(Standing.Inside, reading.Standing));
                Assert.All(answer.Formula.Lines, line => Assert.True(line.Grams.Value > 0));
            });
        }
    }

    [Fact]
    public void Equivalents_are_kept_to_the_last_digits()
    {
        // Millimoles of all acids, and of all bases, against those of what went out.
        foreach (var (from, outcomes) in Everything())
        {
            Assert.All(outcomes.Answers.Where(answer => answer.Replaced!.Doses.All(dose => dose.Ingredient.Role != Role.LeaveningBlend)), answer =>
            {
                Assert.Equal(7 * from.Typical[Fact.Acid], answer.Replaced!.Acid.Value, 1e-9);
                Assert.Equal(7 * from.Typical[Fact.Base], answer.Replaced!.Base.Value, 1e-9);
            });
            Assert.All(outcomes.Answers.Where(answer => answer.Replaced!.Doses.Any(dose => dose.Ingredient.Role == Role.LeaveningBlend)), answer =>
                Assert.Equal(7 * Math.Max(from.Typical[Fact.Base], 0), answer.Replaced!.Base.Value, 1e-9));
        }
    }

    [Theory]
    [MemberData(nameof(AcidsAndBases))]
    public void There_and_back_again_is_the_first_dose_within_the_step_of_the_scale(string from)
    {
        // 120 g of what is wet, as half a cup of buttermilk, and 6 g of what is dry: amounts of the trade.
        var one = TestKitchen.Ingredient(from);
        var dose = one.Typical[Fact.Water] > 0.5 ? 120 : 6;
        foreach (var to in TestKitchen.Bakehouse.Pantry.Ingredients.Where(other => other.Role == one.Role && LeaveningKits.Leavens(other) && other.Id != from))
        {
            var there = ReplacedDoses.Of(from, dose, to.Id).Answers[0].Grams(to.Id);
            var back = ReplacedDoses.Of(to.Id, there, from).Answers[0].Grams(from);

            Assert.True(Math.Abs(back - dose) <= one.Usage.ScaleStep.Value + 1e-9, $"{dose} g of {from} is {there} g of {to.Id} is {back} g");
        }
    }

    [Fact]
    public void A_dose_for_a_finer_scale_says_so()
    {
        // 120 g of buttermilk at 0.85 % lactic acid are 11.3 mmol (90.08 g/mol), a third as many of citric acid: 0.73 g.
        var answer = ReplacedDoses.Of("buttermilk", 120, "citric-acid").Answers[0];

        Assert.Equal(120 * 0.0085 / 90.08 / 3 * 192.12, answer.Grams("citric-acid"), 0.03);
        Assert.Contains(answer.Notes, note => note.EndsWith("wants a scale that shows 0.01 g.", StringComparison.Ordinal));
        Assert.DoesNotContain(ReplacedDoses.Of("cream-of-tartar", 6, "citric-acid").Answers[0].Notes, note => note.Contains("scale", StringComparison.Ordinal));
        Assert.DoesNotContain(
            ReplacedDoses.Of("baking-powder-double-acting", 12, "baking-soda", "cream-of-tartar").Answers[0].Notes, note => note.Contains("scale", StringComparison.Ordinal));
    }

    [Fact]
    public void Salt_is_spoken_of_only_where_it_is_tasted()
    {
        // Sodium acid pyrophosphate is 20.7 % sodium: 3.7 g bring 0.77 g, as 2 g of salt do. Citric acid brings none.
        bool SpeaksOfSalt(Answer answer) => answer.Notes.Any(note => note.StartsWith("Sodium ", StringComparison.Ordinal));

        Assert.True(SpeaksOfSalt(ReplacedDoses.Of("cream-of-tartar", 6, "sodium-acid-pyrophosphate").Answers[0]));
        Assert.False(SpeaksOfSalt(ReplacedDoses.Of("cream-of-tartar", 6, "citric-acid").Answers[0]));
        Assert.False(SpeaksOfSalt(ReplacedDoses.Of("cream-of-tartar", 6, "sodium-aluminium-phosphate").Answers[0]));
        Assert.True(SpeaksOfSalt(ReplacedDoses.In(Loaf.Walnut, "baking-soda", "potassium-bicarbonate").Answers[0]));
    }

    [Fact]
    public void Of_a_loaf_the_best_five_are_told_and_the_rest_are_named()
    {
        var usual = ReplacedDoses.In(Loaf.Walnut, "cream-of-tartar");
        var all = (new Replacement(Loaf.Walnut, TestKitchen.Ingredient("cream-of-tartar"), Grams.None, Grams.None, [], [], Habits.Usual) { MostOfLeavening = 50 })
            .Answer(Ask.Search, Ask.Ample, CancellationToken.None);

        Assert.Equal(5, usual.Answers.Length);
        Assert.Empty(all.Further);
        Assert.Equal(
            all.Answers.Select(answer => answer.Replaced!.Doses[0].Ingredient),
            usual.Answers.Select(answer => answer.Replaced!).Concat(usual.Further).Select(replaced => replaced.Doses[0].Ingredient));
    }

    [Fact]
    public void A_powder_is_soda_and_cream_of_tartar_and_back()
    {
        // 10 g of phosphate powder: 28.8 % soda by its sodium (USDA SR 26, 18370).
        var there = ReplacedDoses.Of("baking-powder-phosphate", 10, "cream-of-tartar").Answers[0];
        Assert.Equal(2.9, there.Grams("baking-soda"), 0.1);
        Assert.Equal(10 * TestKitchen.Ingredient("baking-powder-phosphate").Typical[Fact.Acid] / 5.314, there.Grams("cream-of-tartar"), 0.06);
        Assert.Contains(there.Notes, note => note.Contains("only 58 % of the soda", StringComparison.Ordinal));

        var loaf = Bowl.Of(("almond-flour-blanched", 240), ("water", 120), ("baking-soda", 2.9), ("cream-of-tartar", 6.5)).WithEggs(4);
        var back = ReplacedDoses.In(loaf, "baking-soda", "baking-powder-phosphate").Answers[0];
        Assert.Equal(10, back.Grams("baking-powder-phosphate"), 0.15);
        Assert.Equal(0, back.Grams("cream-of-tartar"));
    }

    [Fact]
    public void Soda_gives_way_to_potassium_bicarbonate_and_the_sodium_falls()
    {
        // 100.114 / 84.006 g for a gram, IUPAC atomic masses; soda is 27.4 % sodium (USDA SR 26, 18372).
        var answer = ReplacedDoses.In(Loaf.Walnut, "baking-soda", "potassium-bicarbonate").Answers[0];

        Assert.Equal(5 * 1.1917, answer.Grams("potassium-bicarbonate"), 0.06);
        Assert.Equal(-5 * 0.2736, answer.Replaced!.SodiumMore.Value, 0.005);
        Assert.True(answer.Replaced.PotassiumMore.Value > 2);
        Assert.Equal(GasTiming.AsFast, answer.Replaced.Timing);
        Assert.Contains(answer.Cautions, caution => caution.Contains("kidney", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_left_in_the_jar_stays_and_only_the_rest_is_replaced()
    {
        var answer = ReplacedDoses.Of(Loaf.Walnut, "cream-of-tartar", 0, 3, "citric-acid").Answers[0];

        Assert.Equal(3, answer.Grams("cream-of-tartar"));
        // (11 - 3) g / 188.18 x 192.12 / 3.
        Assert.Equal(8 / 188.18 * 192.12 / 3, answer.Grams("citric-acid"), 0.06);
    }

    [Fact]
    public void A_full_jar_asks_for_nothing()
    {
        var answer = Assert.Single(ReplacedDoses.Of(Loaf.Walnut, "cream-of-tartar", 0, 50).Answers);

        Assert.Empty(answer.Changes);
        Assert.Contains(answer.Notes, note => note.StartsWith("There is enough", StringComparison.Ordinal));
    }

    [Fact]
    public void A_fast_and_a_slow_acid_together_give_the_gas_when_one_between_them_did()
    {
        // Cream of tartar frees 70 % while mixing, citric acid 95, sodium acid pyrophosphate 30 (trade table, memory): 62 : 38.
        var answer = ReplacedDoses.Of("cream-of-tartar", 6, "citric-acid", "sodium-acid-pyrophosphate").Answers[0];

        Assert.Equal(GasTiming.AsFast, answer.Replaced!.Timing);
        Assert.Equal(40.0 / 65, answer.Replaced.Doses[0].Equivalents.Value / answer.Replaced.Acid.Value, 0.01);
    }

    [Fact]
    public void Buttermilk_in_place_of_a_dry_acid_drowns_a_loaf_and_the_answer_is_no()
    {
        var outcomes = ReplacedDoses.In(Loaf.Walnut, "cream-of-tartar", "buttermilk");

        Assert.Empty(outcomes.Answers);
        Assert.Contains(outcomes.Conflict, conflict => conflict.Wish == "hydration");
        Assert.Contains(outcomes.Nearest!.Cautions, caution => caution.Contains("milk", StringComparison.Ordinal));
    }

    [Fact]
    public void Bakers_ammonia_stands_in_only_where_it_is_asked_for()
    {
        Assert.DoesNotContain(ReplacedDoses.In(Loaf.Walnut, "baking-soda").Answers, answer => answer.Grams("ammonium-bicarbonate") > 0);
        Assert.Contains(
            ReplacedDoses.Of("baking-soda", 5, "ammonium-bicarbonate").Answers[0].Cautions,
            caution => caution.Contains("thin, dry goods", StringComparison.Ordinal));
    }

    [Fact]
    public void A_vegan_gluten_free_loaf_is_offered_nothing_from_milk()
    {
        var loaf = Bowl.Of(("almond-meal", 200), ("psyllium-husk-powder", 15), ("water", 220), ("baking-soda", 3), ("cream-of-tartar", 6.7));

        Assert.All(ReplacedDoses.In(loaf, "cream-of-tartar").Answers, answer => Assert.All(answer.Formula.Lines, line => Assert.True(line.Ingredient.Suits.Vegan)));
    }

    private static IEnumerable<(Ingredient From, Outcomes Outcomes)> Everything() =>
        TestKitchen.Bakehouse.Pantry.Ingredients.Where(LeaveningKits.Leavens).Select(from => (from, ReplacedDoses.Of(from.Id, 7)));
}
