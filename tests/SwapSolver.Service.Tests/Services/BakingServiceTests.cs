using System.Net.Http.Json;
using System.Text.Json;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Services;

[Collection(OpenKitchen.Name)]
public sealed class BakingServiceTests(OpenKitchen kitchen)
{
    [Fact]
    public async Task A_wait_of_minus_nothing_is_none()
    {
        var none = await kitchen.Service.Baking.PredictRiseAsync(new PredictRiseRequest { Formula = Bakes.Hazelnut, WaitMinutes = 0 });
        Assert.Equal(none, await kitchen.Service.Baking.PredictRiseAsync(new PredictRiseRequest { Formula = Bakes.Hazelnut, WaitMinutes = -0.0 }));
    }

    [Fact]
    public async Task One_gram_of_soda_fully_used_up_gives_three_tenths_of_a_litre()
    {
        // 1 g / 84.006 g/mol = 11.9 mmol, at 24.465 L/mol (25 °C, one atmosphere) 0.291 L.
        var response = await Rise(Of(("water", 200), ("baking-soda", 1), ("citric-acid", 0.8)));

        Assert.Equal(291, response.Gas[^1].Millilitres, 1.0);
        Assert.Equal(11.9, response.Freed.InMixingMmol + response.Freed.OnBenchMmol + response.Freed.InOvenMmol, 0.05);
        Assert.Equal(100, response.NeutralisedPercent.Value, 0.1);
        Assert.Equal(0, response.SodaLeftGramsPer100G);
    }

    [Fact]
    public async Task A_quarter_teaspoon_of_soda_with_half_a_teaspoon_of_cream_of_tartar_is_not_balanced()
    {
        // USDA SR 26: 4.6 and 3.0 g a teaspoon; 58 %.
        var formula = new Formula
        {
            Slices = 1,
            Lines =
            {
                new Line { Ingredient = "ingredients/water", Grams = 200 },
                new Line { Ingredient = "ingredients/baking-soda", Amount = 0.25, Unit = "tsp" },
                new Line { Ingredient = "ingredients/cream-of-tartar", Amount = 0.5, Unit = "tsp" },
            },
        };
        var response = await Rise(formula);

        Assert.Equal(58, response.NeutralisedPercent.Value, 0.5);
        Assert.Contains(response.Cautions, caution => caution.Contains("only about 58 %", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Without_acid_half_of_the_gas_comes_by_heat_and_the_answer_says_so()
    {
        var response = await Rise(Of(("almond-meal", 200), ("water", 150), ("baking-soda", 8.4)));

        Assert.Equal(50, response.Freed.ByHeatMmol, 0.2);
        Assert.Contains(response.Cautions, caution => caution.Contains("heat alone frees half of its gas", StringComparison.Ordinal));
        Assert.True(response.PhCrumb.Value > 8);
    }

    [Fact]
    public async Task Soda_in_water_reads_as_handbooks_say()
    {
        // 0.1 M, freshly made: 8.3 (handbooks, memory).
        var response = await Rise(Of(("water", 1000), ("baking-soda", 8.4)));

        Assert.Equal(8.3, response.PhBatter.Value, 0.1);
        Assert.True(response.PhBatter.Low <= response.PhBatter.Value && response.PhBatter.Value <= response.PhBatter.High);
    }

    [Fact]
    public async Task High_up_the_air_is_thinner_and_the_leavening_is_cut()
    {
        // ISO 2533: 795 hPa at 2,000 m; water boils there near 93.4 °C. Extension services cut an eighth to a quarter.
        var response = await kitchen.Service.Baking.PredictRiseAsync(new PredictRiseRequest { Name = "formulas/hazelnut-tin-loaf", AltitudeMetres = 2000 });

        Assert.Equal(795, response.PressureHpa, 1.0);
        Assert.Equal(93.4, response.BoilingPointCelsius, 0.3);
        Assert.InRange(response.LeaveningCutPercent.Value, 12.5, 25);
    }

    [Fact]
    public async Task A_long_wait_loses_gas()
    {
        var soon = await kitchen.Service.Baking.PredictRiseAsync(new PredictRiseRequest { Formula = Bakes.Hazelnut, WaitMinutes = 0 });
        var late = await kitchen.Service.Baking.PredictRiseAsync(new PredictRiseRequest { Formula = Bakes.Hazelnut, WaitMinutes = 30 });

        Assert.True(late.LostOnBenchPercent > soon.LostOnBenchPercent + 10);
        Assert.Contains(late.Gas, point => point is { Stage: GasPoint.Types.Stage.Bench, Minute: > 20 });
    }

    [Fact]
    public async Task Over_http_the_fields_have_the_names_that_scripts_read()
    {
        var response = await kitchen.Service.Http.PostAsJsonAsync("/v1/formulas:rise", new { name = "formulas/cocoa-cake", altitudeMetres = 1500 });
        response.EnsureSuccessStatusCode();
        var rise = await response.Content.ReadFromJsonAsync<JsonElement>();

        Assert.True(rise.GetProperty("phBatter").GetProperty("low").GetDouble() <= rise.GetProperty("phBatter").GetProperty("high").GetDouble());
        Assert.True(rise.GetProperty("phCrumb").GetProperty("value").GetDouble() > 4);
        Assert.True(rise.GetProperty("gas")[0].GetProperty("minute").GetDouble() == 0);
        Assert.True(rise.GetProperty("gas")[1].GetProperty("millilitres").GetDouble() > 0);
        Assert.True(rise.GetProperty("workingWindowMinutes").GetDouble() > 0);
        Assert.True(rise.GetProperty("sodaLeftGramsPer100g").GetDouble() >= 0);
        Assert.True(rise.GetProperty("cautions").GetArrayLength() > 0);
    }

    private static Formula Of(params ReadOnlySpan<(string Id, double Grams)> lines)
    {
        var formula = new Formula { Slices = 10 };
        foreach (var (id, grams) in lines)
        {
            formula.Lines.Add(new Line { Ingredient = $"ingredients/{id}", Grams = grams });
        }

        return formula;
    }

    private Task<PredictRiseResponse> Rise(Formula formula) =>
        kitchen.Service.Baking.PredictRiseAsync(new PredictRiseRequest { Formula = formula }).ResponseAsync;
}
