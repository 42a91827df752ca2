using System.CommandLine;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Files;
using SwapSolver.Console.Screens;
using SwapSolver.V1;

namespace SwapSolver.Console.Verbs;

/// <summary><c>rise</c>: gas against time, working window, pH.</summary>
internal sealed class Rise
{
    private readonly FormulaArgument formula = new();
    private readonly FigureOption altitude = new("--altitude", "M", "Height of the kitchen above the sea, in metres.");
    private readonly FigureOption wait = new("--wait", "MINUTES", "Time from mixing to the oven. Without it: 3 minutes.");

    /// <summary>The verb.</summary>
    public static Command Create(Errand errand)
    {
        var rise = new Rise();
        var verb = new VerbCommand(
            "rise",
            "The gas of soda and powder against time, how long the batter may wait, and the pH of batter and crumb.",
            "swapsolver rise data/formulas/hazelnut-tin-loaf.json --altitude 2000")
        {
            rise.formula,
            rise.formula.System,
            rise.altitude,
            rise.wait,
        };
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<PredictRiseResponse>(
                async token => (await rise.formula.ReadAsync(parse, token)).Then(subject => rise.Ask(parse, subject)),
                RiseScreen.Show,
                _ => ExitCode.Answer),
            cancel));
        return verb;
    }

    private ServiceCall<PredictRiseResponse> Ask(ParseResult parse, FormulaSubject subject)
    {
        var request = new PredictRiseRequest();
        if (parse.GetValue(altitude) is double metres)
        {
            request.AltitudeMetres = metres;
        }

        if (parse.GetValue(wait) is double minutes)
        {
            request.WaitMinutes = minutes;
        }

        subject.PutInto(formula => request.Formula = formula, name => request.Name = name);
        return async (service, options) => await new BakingService.BakingServiceClient(service).PredictRiseAsync(request, options);
    }
}
