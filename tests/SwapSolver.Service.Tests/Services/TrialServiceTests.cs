using Grpc.Core;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Services;

public sealed class TrialServiceTests
{
    private const string Name = "formulas/my-loaf";

    private const string Coconut = "ingredients/coconut-flour";

    private static async Task<RunningService> Kitchen()
    {
        var service = await RunningService.Start();
        await service.Formulas.CopyFormulaAsync(new CopyFormulaRequest { Name = "formulas/hazelnut-tin-loaf", FormulaId = "my-loaf" });
        return service;
    }

    private static async Task<Trial> Baked(RunningService service, Trial trial) => await service.Trials.AddTrialAsync(new AddTrialRequest { Parent = Name, Trial = trial });

    private static async Task<BakeFormulaResponse> Foretold(RunningService service, string name = Name) =>
        await service.Baking.BakeFormulaAsync(new BakeFormulaRequest { Name = name, CoreCelsius = 96 });

    private static async Task<LearnedFact?> Learned(RunningService service, string id) =>
        (await service.Trials.ListLearnedFactsAsync(new ListLearnedFactsRequest())).Facts.FirstOrDefault(fact => fact.Name == $"learnedFacts/{id}");

    [Fact]
    public async Task A_trial_comes_back_as_it_was_written_down_and_each_has_its_number()
    {
        await using var service = await Kitchen();
        var first = await Baked(service, new Trial { Minutes = 66, CoreCelsius = 96, Crumb = new Crumb { Moistness = 4 }, Note = "a little moist" });
        var second = await Baked(service, new Trial { BatterMassG = 770, BakedMassG = 690 });

        Assert.Equal(($"{Name}/trials/1", $"{Name}/trials/2", 1), (first.Name, second.Name, first.Revision));
        Assert.Equal(first, await service.Trials.GetTrialAsync(new GetTrialRequest { Name = first.Name }));
        var page = await service.Trials.ListTrialsAsync(new ListTrialsRequest { Parent = Name, PageSize = 1 });
        Assert.Equal([second], page.Trials);
        Assert.Equal([first], (await service.Trials.ListTrialsAsync(new ListTrialsRequest { Parent = Name, PageSize = 1, PageToken = page.NextPageToken })).Trials);
        Assert.Equal(StatusCode.NotFound, (await Refusal.Of(() => service.Trials.GetTrialAsync(new GetTrialRequest { Name = $"{Name}/trials/9" }))).Code);
    }

    [Fact]
    public async Task What_no_oven_does_is_not_written_down_and_is_named()
    {
        await using var service = await Kitchen();
        var refusal = await Refusal.Of(() => service.Trials.AddTrialAsync(new AddTrialRequest
        {
            Parent = Name,
            Trial = new Trial
            {
                BatterMassG = 775,
                BakedMassG = 800,
                CooledMassG = 100,
                Minutes = -3,
                CoreCelsius = 140,
                HeightMm = 0,
                BatterCelsius = 90,
                Crumb = new Crumb { Moistness = 6 },
                Soaks = { new SoakedBag { Ingredient = "ingredients/salt", DryG = 10, DrainedG = 20 }, new SoakedBag { Ingredient = Coconut, DryG = 10, DrainedG = 8 } },
            },
        }));
        refusal.Names("trial.bakedMassG", "800", "an oven takes water away");
        refusal.Names("trial.cooledMassG", "100", "measure again");
        refusal.Names("trial.minutes", "-3", "more than 0");
        refusal.Names("trial.heightMm", "0", "mm");
        refusal.Names("trial.batterCelsius", "90", "60");
        refusal.Names("trial.crumb.moistness", "6", "1 (dry)");
        refusal.Names("trial.soaks[0].ingredient", "salt", "test a flour");
        refusal.Names("trial.soaks[1].drainedG", "8", "nothing gets lighter");
        (await Refusal.Of(() => service.Trials.AddTrialAsync(new AddTrialRequest { Parent = Name, Trial = new Trial { CoreCelsius = 140 } }))).Names("trial.coreCelsius", "140", "has boiled off");
        (await Refusal.Of(() => service.Trials.AddTrialAsync(new AddTrialRequest { Parent = Name }))).Names("trial", "", "at least one");
        Assert.Empty((await service.Trials.ListTrialsAsync(new ListTrialsRequest { Parent = Name })).Trials);
        Assert.Equal("SHIPPED", (await Refusal.Of(() => service.Trials.AddTrialAsync(new AddTrialRequest { Parent = "formulas/almond-rolls", Trial = new Trial { Minutes = 30 } }))).Info.Reason);
    }

    [Fact]
    public async Task A_measured_bake_moves_the_next_forecast_to_this_kitchens_time_and_narrows_it()
    {
        await using var service = await Kitchen();
        var before = await Foretold(service);
        // An oven that takes a fifth longer than handbooks expect.
        var slow = before.TimeToCoreMinutes.Value * 1.2;
        for (var bake = 0; bake < 3; bake++)
        {
            await Baked(service, new Trial { Minutes = slow, CoreCelsius = 96, BatterMassG = 775, BakedMassG = 775 * 0.87 });
        }

        var after = await Foretold(service);
        Assert.StartsWith(Name, after.AnchorTrial, StringComparison.Ordinal);
        Assert.InRange(after.TimeToCoreMinutes.Value, slow * 0.96, slow * 1.02);
        Assert.True(Width(after) < Width(before), $"{Width(after)} is not narrower than {Width(before)}");
        Assert.True(after.LossWeighed);
        var own = await service.Reformulations.ResizeFormulaAsync(new ResizeFormulaRequest { Name = Name, Factor = 1.5, CoreCelsius = 96 });
        Assert.StartsWith(Name, own.AnchorTrial, StringComparison.Ordinal);
        Assert.Equal(string.Empty, (await service.Baking.BakeFormulaAsync(new BakeFormulaRequest { Name = Name, CoreCelsius = 96, WithoutTrials = true })).AnchorTrial);
        // Another loaf in the same oven goes by it too; one with a fan does not.
        var other = Bakes.Hazelnut;
        other.Lines[0].Grams += 20;
        Assert.NotEqual(string.Empty, (await service.Baking.BakeFormulaAsync(new BakeFormulaRequest { Formula = other, CoreCelsius = 96 })).AnchorTrial);
        other.Oven.Fan = true;
        Assert.Equal(string.Empty, (await service.Baking.BakeFormulaAsync(new BakeFormulaRequest { Formula = other, CoreCelsius = 96 })).AnchorTrial);

        static double Width(BakeFormulaResponse forecast) => (forecast.TimeToCoreMinutes.High - forecast.TimeToCoreMinutes.Low) / forecast.TimeToCoreMinutes.Value;
    }

    [Fact]
    public async Task A_learned_fact_shows_prior_evidence_and_range_and_can_be_turned_off_and_forgotten()
    {
        await using var service = await Kitchen();
        var before = await Foretold(service);
        var trial = await Baked(service, new Trial { Minutes = before.TimeToCoreMinutes.Value * 1.2, CoreCelsius = 96 });
        var learned = (await Learned(service, "oven-factor"))!;
        Assert.Equal(1, learned.Prior.Value);
        Assert.Equal((trial.Name, 1.2), (learned.Evidence[0].Trial, Math.Round(learned.Evidence[0].Value, 6)));
        Assert.InRange(learned.Now.Value, 1.05, 1.2);
        Assert.True(learned.Now.High - learned.Now.Low < learned.Prior.High - learned.Prior.Low);

        var off = await service.Trials.ChooseLearnedFactAsync(new ChooseLearnedFactRequest { Name = learned.Name, Choice = ChooseLearnedFactRequest.Types.Choice.TurnOff });
        Assert.False(off.Used);
        Assert.Equal(before.TimeToCoreMinutes, (await Foretold(service)).TimeToCoreMinutes);
        await service.Trials.ChooseLearnedFactAsync(new ChooseLearnedFactRequest { Name = learned.Name, Choice = ChooseLearnedFactRequest.Types.Choice.Use });
        Assert.NotEqual(before.TimeToCoreMinutes, (await Foretold(service)).TimeToCoreMinutes);
        var forgotten = await service.Trials.ChooseLearnedFactAsync(new ChooseLearnedFactRequest { Name = learned.Name, Choice = ChooseLearnedFactRequest.Types.Choice.Forget });
        Assert.Empty(forgotten.Evidence);
        Assert.Equal(before.TimeToCoreMinutes, (await Foretold(service)).TimeToCoreMinutes);
        Assert.Null(await Learned(service, "oven-factor"));
        Assert.Equal(StatusCode.NotFound, (await Refusal.Of(() => service.Trials.ChooseLearnedFactAsync(new ChooseLearnedFactRequest { Name = "crust", Choice = ChooseLearnedFactRequest.Types.Choice.Use }))).Code);
        (await Refusal.Of(() => service.Trials.ChooseLearnedFactAsync(new ChooseLearnedFactRequest { Name = "oven-factor" }))).Names("choice", "", "TURN_OFF");
    }

    [Fact]
    public async Task A_bag_that_holds_more_than_published_dries_the_dough_that_is_foretold()
    {
        await using var service = await Kitchen();
        var formula = Bakes.Hazelnut;
        formula.Lines[0].Ingredient = Coconut;
        var before = Hydration(await Bakes.Balance(service, formula));
        var shipped = await service.Ingredients.GetIngredientAsync(new GetIngredientRequest { Name = Coconut });
        var published = shipped.Facts.Single(fact => fact.Fact_ == "waterBoundCentrifugeGPerG");
        var held = published.High;
        await Baked(service, new Trial { Soaks = { new SoakedBag { Ingredient = Coconut, DryG = 10, DrainedG = 10 * (1 + held) }, new SoakedBag { Ingredient = Coconut, DryG = 10, DrainedG = 10 * (1 + held) } } });

        var learned = (await Learned(service, "water-bound.coconut-flour"))!;
        Assert.InRange(learned.Now.Value, published.Value, held);
        var now = (await service.Ingredients.GetIngredientAsync(new GetIngredientRequest { Name = Coconut })).Facts.Single(fact => fact.Fact_ == "waterBoundCentrifugeGPerG");
        Assert.Equal(learned.Now.Value, now.Value, 9);
        Assert.True(Hydration(await Bakes.Balance(service, formula)) < before);
        // What was measured outright goes before what was learned.
        await service.Ingredients.MeasureIngredientAsync(new MeasureIngredientRequest { Name = Coconut, Soak = new SoakTest { DryG = 10, DrainedG = 60 } });
        Assert.Equal(5, (await service.Ingredients.GetIngredientAsync(new GetIngredientRequest { Name = Coconut })).Facts.Single(fact => fact.Fact_ == "waterBoundCentrifugeGPerG").Value, 9);

        static double Hydration(BalanceFormulaResponse answer) => answer.Readings.Single(reading => reading.Balance == "hydration").Value;
    }

    [Fact]
    public async Task The_next_test_is_of_what_is_least_known_and_no_longer_of_what_was_tested_often()
    {
        await using var service = await Kitchen();
        var request = new SuggestTrialsRequest { Name = Name };
        var first = await service.Trials.SuggestTrialsAsync(request);
        Assert.InRange(first.Suggestions.Count, 2, 3);
        Assert.All(first.Suggestions, test => Assert.True(test.SpreadAfterPercent < test.SpreadPercent));
        Assert.Contains(first.Suggestions, test => test.Fact == "learnedFacts/gas-kept");
        for (var bake = 0; bake < 12; bake++)
        {
            await Baked(service, new Trial { BatterMassG = 775, HeightMm = 60 });
        }

        var kept = (await Learned(service, "gas-kept"))!;
        Assert.InRange(kept.Now.Low, 0, 1);
        Assert.InRange(kept.Now.High, 0, 1);
        var next = await service.Trials.SuggestTrialsAsync(request);
        Assert.NotEqual("learnedFacts/gas-kept", next.Suggestions[0].Fact);
    }
}
