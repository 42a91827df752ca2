using Google.Protobuf;
using Grpc.Core;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Running;

/// <summary>Formulas as a client writes them, and the four questions that take one.</summary>
internal static class Bakes
{
    /// <summary>Lines of the demo loaf in grams: 180 + 60 + 20 + 4 eggs of 50 + 260 + 30 + 6 + 13 + 6 = 775.</summary>
    public const double HazelnutBatterGrams = 775;

    public static Formula Hazelnut => Stored("hazelnut-tin-loaf");

    public static Formula Seeded => Stored("seeded-free-form-loaf");

    public static Formula Rolls => Stored("almond-rolls");

    /// <summary>A formula from its JSON, as a script sends it.</summary>
    public static Formula From(string json) => JsonParser.Default.Parse<Formula>(json);

    /// <summary>A demo formula of the shipped data.</summary>
    public static Formula Stored(string id) => From(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "data", "formulas", $"{id}.json")));

    public static AsyncUnaryCall<BalanceFormulaResponse> Balance(RunningService service, Formula? formula, CallOptions options = default) =>
        service.Balances.BalanceFormulaAsync(new BalanceFormulaRequest { Formula = formula }, options);

    public static AsyncUnaryCall<VaryFormulaResponse> Vary(RunningService service, Formula? formula, CallOptions options = default) =>
        service.Substitutions.VaryFormulaAsync(WithoutTreeNuts(formula), options);

    public static AsyncUnaryCall<CheckSwapResponse> Check(RunningService service, Formula? formula, CallOptions options = default) =>
        service.Balances.CheckSwapAsync(SodaSwap(formula), options);

    public static AsyncUnaryCall<ResizeFormulaResponse> Resize(RunningService service, Formula? formula, CallOptions options = default) =>
        service.Reformulations.ResizeFormulaAsync(new ResizeFormulaRequest { Formula = formula, Factor = 1.5 }, options);

    public static VaryFormulaRequest WithoutTreeNuts(Formula? formula) => new() { Formula = formula, Without = { "tree-nuts" } };

    public static CheckSwapRequest SodaSwap(Formula? formula) => new()
    {
        Formula = formula,
        Swaps = { new Swap { From = "ingredients/baking-soda", To = "ingredients/potassium-bicarbonate" } },
    };
}
