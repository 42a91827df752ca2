using System.Net.Http.Json;
using System.Text.Json;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;
using Law = SwapSolver.V1.Label.Types.Law;

namespace SwapSolver.Service.Tests.Services;

[Collection(OpenKitchen.Name)]
public sealed class LabelTests(OpenKitchen kitchen)
{
    [Fact]
    public async Task A_label_has_unrounded_figures_beside_printed_ones()
    {
        var response = await Print(new PrintCardRequest { Formula = Bakes.Hazelnut, Label = Law.Us });
        var fat = response.Label.Single(line => line.Nutrient == "fat");

        Assert.Equal(response.Nutrition.PerSlice.FatG, fat.Amount, 1e-9);
        Assert.Equal(fat.PerLoaf, fat.PerSlice * 14, 1e-9);
        Assert.Equal(fat.Amount >= 5 ? Math.Floor(fat.Amount + 0.5) : fat.Amount, double.Parse(fat.Printed, System.Globalization.CultureInfo.InvariantCulture), 0.5);
        Assert.Equal((int)Math.Floor((fat.Amount / 78 * 100) + 0.5), fat.PercentDailyValue);
        Assert.Equal("g", fat.Unit);
        Assert.Equal(Law.Us, response.LabelLaw.Law);
        Assert.Equal("own-figures", response.LabelLaw.EnergyMethod);
    }

    [Fact]
    public async Task What_is_not_known_is_absent_and_said_to_be()
    {
        var response = await Print(new PrintCardRequest { Formula = Bakes.Hazelnut, Label = Law.Us });
        var trans = response.Label.Single(line => line.Nutrient == "transFat");

        Assert.False(trans.HasAmount);
        Assert.False(trans.HasPercentDailyValue);
        Assert.Equal("not known", trans.Printed);
        Assert.Contains(response.LabelLaw.Notes, note => note.Contains("Trans fat", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(Law.Us, "energyKcal", true)]
    [InlineData(Law.Eu, "energyKilojoules", false)]
    [InlineData(Law.Uk, "energyKilojoules", false)]
    [InlineData(Law.AuNz, "energyKilojoules", false)]
    [InlineData(Law.Ca, "energyKcal", true)]
    public async Task Each_place_has_its_first_line_and_its_carbohydrate(Law law, string first, bool holdsFibre)
    {
        var response = await Print(new PrintCardRequest { Formula = Bakes.Hazelnut, Label = law });
        var carbohydrate = response.Label.Single(line => line.Nutrient == "carbohydrate").PerSlice;
        var slice = response.Nutrition.PerSlice;

        Assert.Equal(first, response.Label[0].Nutrient);
        Assert.Equal(holdsFibre, Math.Abs(carbohydrate - slice.CarbohydrateG) < 1e-9);
        Assert.True(holdsFibre || carbohydrate <= slice.CarbohydrateG - slice.FibreG + 1e-9);
        Assert.True(carbohydrate >= slice.NetCarbsG - 1e-9);
    }

    [Fact]
    public async Task Without_a_law_the_label_is_that_of_the_United_States() =>
        Assert.Equal(Law.Us, (await Print(new PrintCardRequest { Formula = Bakes.Hazelnut })).LabelLaw.Law);

    [Fact]
    public async Task The_method_of_counting_energy_is_the_callers_choice_among_those_of_the_law()
    {
        var general = await Print(new PrintCardRequest { Formula = Bakes.Hazelnut, EnergyMethod = "four-four-nine" });
        var slice = general.Nutrition.PerSlice;

        Assert.Equal((4 * slice.ProteinG) + (4 * slice.CarbohydrateG) + (9 * slice.FatG), general.Label[0].Amount, 1e-6);
    }

    [Fact]
    public async Task Everything_that_is_wrong_with_the_wish_is_named_at_once()
    {
        var refusal = await Refusal.Of(() => kitchen.Service.Cards.PrintCardAsync(new PrintCardRequest
        {
            Formula = Bakes.Hazelnut,
            Label = (Law)77,
            ServingSlices = 15,
            EnergyMethod = "bomb",
        }));
        refusal.Names("label", "77", "AU_NZ");
        refusal.Names("servingSlices", "15", "1 to 14");

        refusal = await Refusal.Of(() => kitchen.Service.Cards.PrintCardAsync(new PrintCardRequest { Formula = Bakes.Hazelnut, Label = Law.Eu, EnergyMethod = "bomb" }));
        refusal.Names("energyMethod", "bomb", "eu-general");
    }

    [Fact]
    public async Task The_same_label_comes_over_http()
    {
        using var body = new StringContent("""{ "name": "formulas/hazelnut-tin-loaf", "label": "EU" }""", System.Text.Encoding.UTF8, "application/json");
        using var answer = await kitchen.Service.Http.PostAsync(new Uri("/v1/formulas:card", UriKind.Relative), body);
        var root = await answer.Content.ReadFromJsonAsync<JsonElement>();

        Assert.Equal("energyKilojoules", root.GetProperty("label")[0].GetProperty("nutrient").GetString());
        Assert.NotEmpty(root.GetProperty("allergens").GetProperty("eu").EnumerateArray());
        Assert.NotEmpty(root.GetProperty("cautions").EnumerateArray());
    }

    private async Task<PrintCardResponse> Print(PrintCardRequest request) => await kitchen.Service.Cards.PrintCardAsync(request);
}
