using System.CommandLine;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Files;
using SwapSolver.Console.Screens;
using SwapSolver.V1;

namespace SwapSolver.Console.Verbs;

/// <summary><c>bake</c>: bake and cooling time, and the core against time.</summary>
internal sealed class Bake
{
    private readonly FormulaArgument formula = new();
    private readonly FigureOption core = new("--core", "C", "Core temperature to bake to. Without it: four degrees below boiling.");
    private readonly FigureOption altitude = new("--altitude", "M", "Height of the kitchen above the sea, in metres.");

    private readonly Option<AnchorText?> anchor = new("--anchor")
    {
        Description = "A bake of this kitchen that is known: its formula, its minutes and the core temperature it was baked to.",
        HelpName = "FORMULA:MINUTES:CELSIUS",
        CustomParser = result => OptionText.Each(result, "--anchor", AnchorText.Read).FirstOrDefault(),
    };

    private readonly Option<bool> coldStart = new("--cold-start")
    {
        Description = "The loaf goes into a cold oven.",
    };

    /// <summary>The verb.</summary>
    public static Command Create(Errand errand)
    {
        var bake = new Bake();
        var verb = new VerbCommand(
            "bake",
            "How long a formula bakes and cools, from when to probe it, and its core minute by minute.",
            "swapsolver bake data/formulas/hazelnut-tin-loaf.json --anchor formulas/hazelnut-tin-loaf:68:96")
        {
            bake.formula,
            bake.formula.System,
            bake.core,
            bake.altitude,
            bake.anchor,
            bake.coldStart,
        };
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<BakeFormulaResponse>(
                token => bake.PrepareAsync(parse, token),
                BakeScreen.Show,
                response => response.TimeToCoreMinutes is null ? ExitCode.NoAnswer : ExitCode.Answer),
            cancel));
        return verb;
    }

    private async Task<Checked<ServiceCall<BakeFormulaResponse>>> PrepareAsync(ParseResult parse, CancellationToken cancel)
    {
        var subject = await formula.ReadAsync(parse, cancel);
        if (parse.GetValue(anchor) is not { } known)
        {
            return subject.Then(read => Ask(parse, read, null));
        }

        var anchored = await FormulaSubject.ReadAsync(known.Formula, cancel);
        return subject.IsGood && anchored.IsGood
            ? Ask(parse, subject.Value, Write(known, anchored.Value))
            : Checked<ServiceCall<BakeFormulaResponse>>.Bad([.. subject.Problems, .. anchored.Problems]);
    }

    private static KnownBake Write(AnchorText known, FormulaSubject subject)
    {
        var bake = new KnownBake { Minutes = known.Minutes, CoreCelsius = known.Celsius };
        subject.PutInto(formula => bake.Formula = formula, name => bake.Name = name);
        return bake;
    }

    private ServiceCall<BakeFormulaResponse> Ask(ParseResult parse, FormulaSubject subject, KnownBake? known)
    {
        var request = new BakeFormulaRequest { Anchor = known, ColdStart = parse.GetValue(coldStart) };
        if (parse.GetValue(core) is double celsius)
        {
            request.CoreCelsius = celsius;
        }

        if (parse.GetValue(altitude) is double metres)
        {
            request.AltitudeMetres = metres;
        }

        subject.PutInto(formula => request.Formula = formula, name => request.Name = name);
        return async (service, options) => await new BakingService.BakingServiceClient(service).BakeFormulaAsync(request, options);
    }
}
