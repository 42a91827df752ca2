using System.CommandLine;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Files;
using SwapSolver.Console.Screens;
using SwapSolver.V1;

namespace SwapSolver.Console.Verbs;

/// <summary><c>balance</c>: where a formula stands.</summary>
internal static class Balance
{
    /// <summary>The verb.</summary>
    public static Command Create(Errand errand)
    {
        var formula = new FormulaArgument();
        var verb = new VerbCommand(
            "balance",
            "All readings, nutrition, allergens and cautions of a formula.",
            "swapsolver balance data/formulas/hazelnut-tin-loaf.json")
        {
            formula,
            formula.System,
        };
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<BalanceFormulaResponse>(
                async token => (await formula.ReadAsync(parse, token)).Then(Ask),
                BalanceScreen.Show,
                _ => ExitCode.Answer),
            cancel));
        return verb;
    }

    private static ServiceCall<BalanceFormulaResponse> Ask(FormulaSubject subject)
    {
        var request = new BalanceFormulaRequest();
        subject.PutInto(formula => request.Formula = formula, name => request.Name = name);
        return async (service, options) => await new BalanceService.BalanceServiceClient(service).BalanceFormulaAsync(request, options);
    }
}
