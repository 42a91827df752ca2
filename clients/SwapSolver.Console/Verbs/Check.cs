using System.CommandLine;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Files;
using SwapSolver.Console.Screens;
using SwapSolver.V1;

namespace SwapSolver.Console.Verbs;

/// <summary><c>check</c>: whether a proposed swap balances.</summary>
internal sealed class Check
{
    private readonly FormulaArgument formula = new();
    private readonly HabitOptions habits = new();

    private readonly Option<Swap[]> swaps = new("--swap")
    {
        Description = "A proposed swap: GRAMS of Y in place of X, gram for gram without GRAMS; X:GRAMS=Y where only so much of X goes; X=nothing leaves X out. May be given again.",
        HelpName = "X[:GRAMS]=Y[:GRAMS]",
        Required = true,
        CustomParser = result => OptionText.Each(result, "--swap", SwapText.Read),
    };

    /// <summary>The verb.</summary>
    public static Command Create(Errand errand)
    {
        var check = new Check();
        var verb = new VerbCommand(
            "check",
            "Whether a proposed swap balances, and the smallest repair if it does not.",
            "swapsolver check data/formulas/hazelnut-tin-loaf.json --swap hazelnut-flour=sunflower-seed-flour:170")
        {
            check.formula,
            check.formula.System,
            check.swaps,
        };
        check.habits.AddTo(verb);
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<CheckSwapResponse>(
                async token => (await check.formula.ReadAsync(parse, token)).Then(subject => check.Ask(parse, subject)),
                CheckScreen.Show,
                response => response.Verdict == CheckSwapResponse.Types.Verdict.DoesNotBalance ? ExitCode.NoAnswer : ExitCode.Answer),
            cancel));
        return verb;
    }

    private ServiceCall<CheckSwapResponse> Ask(ParseResult parse, FormulaSubject subject)
    {
        var request = new CheckSwapRequest { Habits = habits.Read(parse) };
        request.Swaps.AddRange(parse.GetRequiredValue(swaps));
        subject.PutInto(formula => request.Formula = formula, name => request.Name = name);
        return async (service, options) => await new BalanceService.BalanceServiceClient(service).CheckSwapAsync(request, options);
    }
}
