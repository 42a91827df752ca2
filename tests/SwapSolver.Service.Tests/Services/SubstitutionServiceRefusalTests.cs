using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Services;

[Collection(StrictKitchen.Name)]
public sealed class SubstitutionServiceRefusalTests(StrictKitchen kitchen)
{
    [Theory]
    [InlineData("tree-nutz", "tree-nuts")]
    [InlineData("ingredients/hazelnut-flower", "hazelnut-flour")]
    [InlineData("glutenn", "gluten")]
    [InlineData("", "did you mean")]
    public async Task Nothing_that_is_not_known_can_be_left_out(string wish, string wayOut)
    {
        var request = new VaryFormulaRequest { Formula = Bakes.Hazelnut, Without = { "egg", wish } };
        (await kitchen.Refuses(service => service.Substitutions.VaryFormulaAsync(request))).Names("without[1]", wish, wayOut);
    }

    [Fact]
    public async Task No_limit_is_on_an_ingredient_that_is_not_known()
    {
        var request = new VaryFormulaRequest { Formula = Bakes.Hazelnut, Without = { "egg" }, Habits = new Habits { Limits = { new ReadingLimit { Balance = "ingredients/flaxseed-grund", High = 40 } } } };
        (await kitchen.Refuses(service => service.Substitutions.VaryFormulaAsync(request))).Names("habits.limits[0].balance", "ingredients/flaxseed-grund", "flaxseed-ground");
    }

    [Fact]
    public async Task A_variant_without_a_wish_is_refused()
    {
        var request = new VaryFormulaRequest { Formula = Bakes.Hazelnut };
        (await kitchen.Refuses(service => service.Substitutions.VaryFormulaAsync(request))).Names("without", "no wish", "name what to leave out");
    }

    [Fact]
    public async Task More_than_fifty_wishes_are_refused()
    {
        var request = new VaryFormulaRequest { Formula = Bakes.Hazelnut, Without = { Enumerable.Repeat("egg", 51) } };
        (await kitchen.Refuses(service => service.Substitutions.VaryFormulaAsync(request))).Names("without", "'51'", "at most 50");
    }

    [Fact]
    public async Task A_way_of_eating_that_is_not_known_is_refused()
    {
        var request = new VaryFormulaRequest { Formula = Bakes.Hazelnut, Diet = (VaryFormulaRequest.Types.Diet)99 };
        (await kitchen.Refuses(service => service.Substitutions.VaryFormulaAsync(request))).Names("diet", "'99'", "VEGAN");
    }

    [Fact]
    public async Task A_wish_of_a_million_letters_is_refused_and_not_a_fault()
    {
        var wish = new string('q', 1_000_000);
        var request = new VaryFormulaRequest { Formula = Bakes.Hazelnut, Without = { wish } };
        (await kitchen.Refuses(service => service.Substitutions.VaryFormulaAsync(request))).Names("without[0]", wish[..97], "did you mean");
    }
}
