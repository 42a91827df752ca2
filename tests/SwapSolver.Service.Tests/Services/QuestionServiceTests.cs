using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;
using Kind = SwapSolver.V1.AskedFor.Types.Kind;
using Verdict = SwapSolver.V1.AnswerQuestionResponse.Types.Verdict;

namespace SwapSolver.Service.Tests.Services;

[Collection(OpenKitchen.Name)]
public sealed class QuestionServiceTests(OpenKitchen kitchen)
{
    [Fact]
    public async Task Leaving_the_nuts_out_changes_the_loaf_and_the_reply_carries_every_caution()
    {
        var answer = await Ask("Can I make this without nuts, please?");
        Assert.Equal((Kind.Variant, Verdict.YesWithChanges), (answer.UnderstoodAs.Kind, answer.Verdict));
        Assert.Equal(["tree-nuts"], answer.UnderstoodAs.Without);
        Assert.DoesNotContain(answer.Formula.Lines, line => line.Ingredient == "ingredients/hazelnut-flour");
        Assert.Contains(answer.Changes, change => change is { Ingredient: "ingredients/hazelnut-flour", BeforeGrams: 180, AfterGrams: 0 });
        Assert.NotEmpty(answer.Cautions);
        Assert.All(answer.Cautions, caution => Assert.Contains(caution, answer.Reply, StringComparison.Ordinal));
        Assert.Empty(answer.Problem);
    }

    [Fact]
    public async Task Whoever_gets_the_reply_sees_what_of_the_question_was_not_read()
    {
        var answer = await Ask("no sesame please, for the village regatta");
        Assert.Equal(Verdict.Yes, answer.Verdict);
        Assert.Contains("regatta", answer.Problem, StringComparison.Ordinal);
        Assert.Contains(answer.Problem, answer.Reply, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_the_loaf_never_had_changes_nothing()
    {
        var answer = await Ask("no sesame please");
        Assert.Equal(Verdict.Yes, answer.Verdict);
        Assert.Empty(answer.Changes);
    }

    [Fact]
    public async Task A_question_in_words_and_the_same_in_fields_are_answered_alike()
    {
        var words = await Ask("swap butter for ghee");
        var fields = await Ask(new AnswerQuestionRequest { Formula = Bakes.Hazelnut, Fields = new AskedFor { Kind = Kind.Replace, From = "butter", To = "ghee" } });
        Assert.Equal(Kind.Replace, words.UnderstoodAs.Kind);
        Assert.Equal(words.Changes, fields.Changes);
        Assert.Contains(words.Changes, change => change.Ingredient == "ingredients/ghee");
    }

    [Fact]
    public async Task Baking_powder_for_soda_and_cream_of_tartar_is_one_check_of_both_and_the_repair_doses_it()
    {
        var answer = await Ask("baking powder instead of baking soda and cream of tartar?");
        Assert.Equal((Kind.Check, "baking-soda", "cream-of-tartar"), (answer.UnderstoodAs.Kind, answer.UnderstoodAs.From, answer.UnderstoodAs.AlsoFrom));
        Assert.DoesNotContain(answer.Formula.Lines, line => line.Ingredient is "ingredients/baking-soda" or "ingredients/cream-of-tartar");
        Assert.Contains(answer.Changes, change => change.Ingredient == $"ingredients/{answer.UnderstoodAs.To}" && change.AfterGrams > 0);
    }

    [Fact]
    public async Task Half_the_flour_for_another_is_a_check_and_half_of_it_stays_in_the_bowl()
    {
        var has = Bakes.Hazelnut.Lines.Single(line => line.Ingredient == "ingredients/hazelnut-flour").Grams;
        var answer = await Ask("can I use almond flour for half of the hazelnut flour?");
        Assert.Equal((Kind.Check, "hazelnut-flour", "almond-flour-blanched", has / 2), (answer.UnderstoodAs.Kind, answer.UnderstoodAs.From, answer.UnderstoodAs.To, answer.UnderstoodAs.FromGrams));
        Assert.Equal(has / 2, answer.Formula.Lines.Single(line => line.Ingredient == "ingredients/hazelnut-flour").Grams);
        Assert.Contains(answer.Formula.Lines, line => line.Ingredient == "ingredients/almond-flour-blanched");
        var fields = await Ask(new AnswerQuestionRequest { Formula = Bakes.Hazelnut, Fields = new AskedFor { Kind = Kind.Check, From = "hazelnut-flour", FromGrams = has / 2, To = "almond-flour-blanched" } });
        Assert.Equal(answer.Changes, fields.Changes);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-5)]
    [InlineData(100000)]
    [InlineData(double.NaN)]
    public async Task More_than_there_is_or_nothing_cannot_go_out_in_part(double grams)
    {
        var fault = await Assert.ThrowsAsync<Grpc.Core.RpcException>(() =>
            Ask(new AnswerQuestionRequest { Formula = Bakes.Hazelnut, Fields = new AskedFor { Kind = Kind.Check, From = "butter", FromGrams = grams, To = "coconut-oil" } }));
        Assert.Equal(Grpc.Core.StatusCode.InvalidArgument, fault.StatusCode);
        Assert.Contains("from_grams", fault.Status.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_part_beside_another_size_is_refused_by_its_field()
    {
        var fault = await Assert.ThrowsAsync<Grpc.Core.RpcException>(() =>
            Ask(new AnswerQuestionRequest { Formula = Bakes.Hazelnut, Fields = new AskedFor { From = "butter", FromGrams = 10, To = "coconut-oil", Factor = 2 } }));
        Assert.Equal(Grpc.Core.StatusCode.InvalidArgument, fault.StatusCode);
        Assert.Contains("fields.from_grams", fault.Status.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_a_slice_has_of_the_loaf_cut_in_twice_as_many_is_half_of_it()
    {
        var slices = Bakes.Hazelnut.Slices;
        var cut = await Ask($"how many net carbs a slice if I cut it into {2 * slices}?");
        Assert.Equal((Kind.Figures, 2 * slices), (cut.UnderstoodAs.Kind, cut.Formula.Slices));
        var whole = await Ask(new AnswerQuestionRequest { Formula = Bakes.Hazelnut, Fields = new AskedFor { Kind = Kind.Figures } });
        Assert.Equal(whole.Formula.Lines, cut.Formula.Lines);
        Assert.NotEqual(whole.Reply, cut.Reply);
        var same = await Ask(new AnswerQuestionRequest { Formula = cut.Formula, Fields = new AskedFor { Kind = Kind.Figures } });
        Assert.StartsWith(same.Reply[..100], cut.Reply, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Buns_of_a_free_form_loaf_are_done_sooner_than_the_loaf()
    {
        var buns = await Ask(new AnswerQuestionRequest { Formula = Bakes.Seeded, Question = "how long do 8 buns bake?" });
        Assert.Equal((Kind.Bake, 0.125), (buns.UnderstoodAs.Kind, buns.UnderstoodAs.Factor));
        Assert.InRange(buns.Formula.Lines.Sum(line => line.Grams), 0.95 / 8 * Bakes.Seeded.Lines.Sum(Grams), 1.05 / 8 * Bakes.Seeded.Lines.Sum(Grams));
        var whole = await Ask(new AnswerQuestionRequest { Formula = Bakes.Seeded, Question = "how long does it bake?" });
        Assert.True(Minutes(buns) < Minutes(whole));

        static double Grams(Line line) => line.HasCount ? line.Count * (line.Ingredient == "ingredients/egg-white" ? 33 : 50) : line.Grams;
        static int Minutes(AnswerQuestionResponse answer) => int.Parse(System.Text.RegularExpressions.Regex.Match(answer.Reply, @"about (\d+) minutes").Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture);
    }

    [Fact]
    public async Task What_goes_out_besides_without_what_comes_in_is_refused_by_its_field()
    {
        var fault = await Assert.ThrowsAsync<Grpc.Core.RpcException>(() =>
            Ask(new AnswerQuestionRequest { Formula = Bakes.Hazelnut, Fields = new AskedFor { From = "baking-soda", AlsoFrom = "cream-of-tartar" } }));
        Assert.Equal(Grpc.Core.StatusCode.InvalidArgument, fault.StatusCode);
        Assert.Contains("fields.also_from", fault.Status.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Twice_the_loaf_without_butter_is_twice_as_heavy_and_has_no_butter()
    {
        var answer = await Ask("double it but leave the butter out");
        Assert.Equal(Verdict.YesWithChanges, answer.Verdict);
        Assert.DoesNotContain(answer.Formula.Lines, line => line.Ingredient == "ingredients/butter");
        // Whole eggs and the mass band of five percent leave it a little room.
        Assert.InRange(answer.Formula.Lines.Sum(line => line.Grams), 1.9 * Bakes.HazelnutBatterGrams, 2.1 * Bakes.HazelnutBatterGrams);
    }

    [Fact]
    public async Task A_cup_is_weighed_and_a_bake_is_timed()
    {
        var cup = await Ask("how many grams is a cup of coconut flour");
        // 112 g by our estimate.
        Assert.Equal((Kind.Convert, Verdict.Yes), (cup.UnderstoodAs.Kind, cup.Verdict));
        Assert.Contains("112 g", cup.Reply, StringComparison.Ordinal);
        var bake = await Ask("how long at 160 C");
        Assert.Equal((Kind.Bake, 160), (bake.UnderstoodAs.Kind, bake.UnderstoodAs.OvenCelsius));
        Assert.Contains("The oven is set to 160 °C without fan.", bake.Reply, StringComparison.Ordinal);
    }

    [Fact]
    public async Task How_long_a_loaf_bakes_is_told_with_the_oven_that_it_holds_for()
    {
        var own = new V1.Formula(Bakes.Hazelnut) { Oven = new Oven { Celsius = 155, Fan = true } };
        var baked = await Ask(new AnswerQuestionRequest { Formula = own, Question = "what oven temperature and how long?" });
        Assert.Contains("The oven is set to 155 °C with fan.", baked.Reply, StringComparison.Ordinal);

        own.Oven = null;
        var unsaid = await Ask(new AnswerQuestionRequest { Formula = own, Question = "what oven temperature and how long?" });
        Assert.DoesNotContain("The oven is set", unsaid.Reply, StringComparison.Ordinal);
        Assert.Contains(unsaid.Cautions, caution => caution.Contains("states no oven", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Whether_a_loaf_rises_is_told_by_its_gas_and_how_long_its_batter_waits()
    {
        var rise = await Ask("will it rise without yeast?");
        var foretold = await kitchen.Service.Baking.PredictRiseAsync(new PredictRiseRequest { Formula = Bakes.Hazelnut });

        Assert.Equal((Kind.Rise, Verdict.Yes), (rise.UnderstoodAs.Kind, rise.Verdict));
        Assert.Contains($"about {foretold.VolumeAtSettingMillilitres:0} mL of gas", rise.Reply, StringComparison.Ordinal);
        Assert.Contains($"within about {foretold.WorkingWindow.Value:0} minutes", rise.Reply, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_swaps_in_one_question_are_checked_together()
    {
        var answer = await Ask("almond flour instead of hazelnut and olive oil instead of butter");
        var together = await kitchen.Service.Balances.CheckSwapAsync(new CheckSwapRequest
        {
            Formula = Bakes.Hazelnut,
            Swaps =
            {
                new Swap { From = "ingredients/hazelnut-flour", To = "ingredients/almond-flour-blanched" },
                new Swap { From = "ingredients/butter", To = "ingredients/olive-oil" },
            },
        });

        Assert.Equal(Kind.Check, answer.UnderstoodAs.Kind);
        Assert.Equal(("butter", "olive-oil"), (Assert.Single(answer.UnderstoodAs.AlsoSwaps).From, answer.UnderstoodAs.AlsoSwaps[0].To));
        Assert.StartsWith(together.Reply, answer.Reply, StringComparison.Ordinal);
        Assert.Equal(together.Verdict == CheckSwapResponse.Types.Verdict.Balances ? together.Swapped : together.Repair?.Formula, answer.Formula);
    }

    [Fact]
    public async Task Soda_and_cream_of_tartar_for_the_powder_are_dosed_together()
    {
        var formula = new Formula(Bakes.Hazelnut);
        formula.Lines.Remove(formula.Lines.Single(line => line.Ingredient == "ingredients/baking-soda"));
        formula.Lines.Remove(formula.Lines.Single(line => line.Ingredient == "ingredients/cream-of-tartar"));
        formula.Lines.Add(new Line { Ingredient = "ingredients/baking-powder-phosphate", Grams = 16 });
        var answer = await Ask(new AnswerQuestionRequest { Formula = formula, Question = "baking soda and cream of tartar instead of baking powder?" });

        Assert.Equal((Kind.Replace, "baking-soda", "cream-of-tartar"), (answer.UnderstoodAs.Kind, answer.UnderstoodAs.To, answer.UnderstoodAs.AlsoTo));
        Assert.All(["ingredients/baking-soda", "ingredients/cream-of-tartar"], id => Assert.Contains(answer.Formula.Lines, line => line.Ingredient == id && line.Grams > 0));
        Assert.DoesNotContain(answer.Formula.Lines, line => line.Ingredient == "ingredients/baking-powder-phosphate");
    }

    [Fact]
    public async Task Two_swaps_in_fields_take_no_size()
    {
        var fields = new AskedFor { From = "hazelnut-flour", To = "almond-flour-blanched", AlsoSwaps = { new AskedSwap { From = "butter", To = "olive-oil" } }, Slices = 20 };
        var fault = await Assert.ThrowsAsync<Grpc.Core.RpcException>(() => Ask(new AnswerQuestionRequest { Formula = Bakes.Hazelnut, Fields = fields }));
        Assert.Contains("fields.also_swaps", fault.Status.Detail, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ "kind": "FIGURES", "mass_grams": 500 }""", "fields.kind")]
    [InlineData("""{ "kind": "BAKE", "targets": [{ "name": "ingredients/salt", "high": 4 }] }""", "fields.targets")]
    [InlineData("""{ "kind": "REPLACE", "from": "butter", "to": "ghee", "alsoSwaps": [{ "from": "hazelnut-flour", "to": "almond-meal" }] }""", "fields.also_swaps")]
    [InlineData("""{ "kind": "CHECK", "from": "butter", "to": "ghee", "alsoTo": "coconut-oil" }""", "fields.also_to")]
    public async Task Fields_that_do_not_go_together_are_refused_by_name(string json, string field)
    {
        var fault = await Assert.ThrowsAsync<Grpc.Core.RpcException>(() =>
            Ask(new AnswerQuestionRequest { Formula = Bakes.Hazelnut, Fields = Google.Protobuf.JsonParser.Default.Parse<AskedFor>(json) }));
        Assert.Equal(Grpc.Core.StatusCode.InvalidArgument, fault.StatusCode);
        Assert.Contains(field, fault.Status.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_a_slice_has_is_told_as_the_balance_tells_it_and_says_that_it_is_no_label()
    {
        var slice = await Ask("how many carbs are in a slice?");
        var measured = (await kitchen.Service.Balances.BalanceFormulaAsync(new BalanceFormulaRequest { Formula = Bakes.Hazelnut })).Nutrition.PerSlice;

        Assert.Equal((Kind.Figures, Verdict.Yes), (slice.UnderstoodAs.Kind, slice.Verdict));
        Assert.Contains(FormattableString.Invariant($"{measured.NetCarbsG:0.0} g net carbs, {measured.CarbohydrateG:0.0} g carbohydrate, {measured.EnergyKcal:0} kcal"), slice.Reply, StringComparison.Ordinal);
        var whole = (await kitchen.Service.Balances.BalanceFormulaAsync(new BalanceFormulaRequest { Formula = Bakes.Hazelnut })).Nutrition.PerLoaf;
        Assert.Contains(FormattableString.Invariant($"the whole {whole.NetCarbsG:0.0} g net carbs and {whole.EnergyKcal:0} kcal"), slice.Reply, StringComparison.Ordinal);
        Assert.Contains("this is no label", slice.Reply, StringComparison.Ordinal);
        Assert.Empty(slice.Changes);
    }

    [Fact]
    public async Task A_batter_without_soda_or_powder_frees_no_gas()
    {
        var flat = new Formula(Bakes.Hazelnut);
        flat.Lines.Remove(flat.Lines.Single(line => line.Ingredient == "ingredients/baking-soda"));

        var rise = await kitchen.Service.Questions.AnswerQuestionAsync(new AnswerQuestionRequest { Formula = flat, Question = "will it rise?" });

        Assert.Equal((Kind.Rise, Verdict.No), (rise.UnderstoodAs.Kind, rise.Verdict));
        Assert.StartsWith("No soda or powder frees gas in it", rise.Reply, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Somebody_ill_is_answered_with_whom_to_ask()
    {
        var answer = await Ask("my husband is diabetic, no nuts please");

        Assert.Equal((Kind.Variant, Verdict.YesWithChanges), (answer.UnderstoodAs.Kind, answer.Verdict));
        Assert.Contains("What is right for somebody's health is for the people who treat them to say.", answer.Reply, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_not_understood_costs_no_solve_and_says_what_can_be_asked()
    {
        var before = kitchen.Solver.Solves;
        var answer = await Ask("I don't want to leave out the eggs");
        Assert.Equal((Kind.NotUnderstood, Verdict.NotUnderstood), (answer.UnderstoodAs.Kind, answer.Verdict));
        Assert.Contains("You can ask", answer.Problem, StringComparison.Ordinal);
        Assert.Equal(before, kitchen.Solver.Solves);
    }

    [Fact]
    public async Task A_formula_that_cannot_be_read_and_nothing_asked_are_refused()
    {
        (await Refusal.Of(() => kitchen.Service.Questions.AnswerQuestionAsync(new AnswerQuestionRequest { Question = "no eggs" }))).Names("formula", string.Empty, "give a 'formula'");
        (await Refusal.Of(() => kitchen.Service.Questions.AnswerQuestionAsync(new AnswerQuestionRequest { Formula = Bakes.Hazelnut }))).Names("question", string.Empty, "in words");
    }

    /// <summary>A reader is told what a baker is told who checks the swap, but for the readings.</summary>
    [Fact]
    public async Task A_check_in_fields_says_what_the_check_says()
    {
        var asked = await Ask(new AnswerQuestionRequest { Formula = Bakes.Hazelnut, Fields = new AskedFor { Kind = Kind.Check, From = "butter", To = "coconut-oil" } });
        var check = await kitchen.Service.Balances.CheckSwapAsync(new CheckSwapRequest { Formula = Bakes.Hazelnut, Swaps = { new Swap { From = "ingredients/butter", To = "ingredients/coconut-oil" } } });
        Assert.Equal(CheckSwapResponse.Types.Verdict.Balances, check.Verdict);
        Assert.Equal(Verdict.Yes, asked.Verdict);
        Assert.StartsWith(check.Reply, asked.Reply, StringComparison.Ordinal);
        Assert.Equal(check.Cautions, asked.Cautions);
        Assert.Equal(check.Swapped, asked.Formula);
        Assert.Contains(check.Readings, reading => reading.Low < reading.High);
    }

    private Task<AnswerQuestionResponse> Ask(string question) => Ask(new AnswerQuestionRequest { Formula = Bakes.Hazelnut, Question = question });

    private async Task<AnswerQuestionResponse> Ask(AnswerQuestionRequest request) => await kitchen.Service.Questions.AnswerQuestionAsync(request);
}
