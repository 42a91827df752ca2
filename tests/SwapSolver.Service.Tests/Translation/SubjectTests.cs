using Grpc.Core;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Translation;

[Collection(StrictKitchen.Name)]
public sealed class SubjectTests(StrictKitchen kitchen)
{
    [Fact]
    public async Task No_question_can_be_asked_about_no_formula()
    {
        (await kitchen.Refuses(service => Bakes.Balance(service, null))).Names("formula", "missing", "give a 'formula'");
        (await kitchen.Refuses(service => Bakes.Vary(service, null))).Names("formula", "missing", "give a 'formula'");
        (await kitchen.Refuses(service => Bakes.Check(service, null))).Names("formula", "missing", "give a 'formula'");
        (await kitchen.Refuses(service => Bakes.Resize(service, null))).Names("formula", "missing", "give a 'formula'");
    }

    [Fact]
    public async Task A_stored_formula_that_is_not_there_brings_the_nearest_names()
    {
        const string Name = "formulas/hazelnut-loaf";
        Assert.All(
            new[]
            {
                await kitchen.Refuses(service => service.Balances.BalanceFormulaAsync(new BalanceFormulaRequest { Name = Name })),
                await kitchen.Refuses(service => service.Substitutions.VaryFormulaAsync(new VaryFormulaRequest { Name = Name, Without = { "egg" } })),
                await kitchen.Refuses(service => service.Balances.CheckSwapAsync(new CheckSwapRequest { Name = Name })),
                await kitchen.Refuses(service => service.Reformulations.ResizeFormulaAsync(new ResizeFormulaRequest { Name = Name, Factor = 2 })),
            },
            refusal =>
            {
                Assert.Equal(StatusCode.NotFound, refusal.Code);
                Assert.Equal(Name, refusal.Info.Metadata["name"]);
                Assert.Contains("formulas/hazelnut-tin-loaf", refusal.Info.Metadata["nearest"], StringComparison.Ordinal);
            });
    }

    [Fact]
    public async Task A_name_of_a_hundred_thousand_letters_is_not_found_and_not_a_fault()
    {
        var refusal = await kitchen.Refuses(service => service.Balances.BalanceFormulaAsync(new BalanceFormulaRequest { Name = new string('q', 100_000) }));
        Assert.Equal(StatusCode.NotFound, refusal.Code);
    }
}
