using System.CommandLine;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Screens;
using SwapSolver.V1;
using Client = SwapSolver.V1.TrialService.TrialServiceClient;

namespace SwapSolver.Console.Verbs;

/// <summary><c>trial add</c>: writes down what was done and measured in one bake.</summary>
internal sealed class TrialAdd
{
    private readonly FormulaName name = new();

    private readonly WholeFigureOption revision = new("--revision", "Number of the revision that was baked. Without it: the newest.");

    private readonly (FigureOption Option, Action<Trial, double> Put)[] figures =
    [
        (new("--batter", "GRAMS", "Mass of the batter in its tin."), (trial, figure) => trial.BatterMassG = figure),
        (new("--batter-temperature", "C", "Temperature of the batter."), (trial, figure) => trial.BatterCelsius = figure),
        (new("--minutes", "MIN", "Minutes in the oven."), (trial, figure) => trial.Minutes = figure),
        (new("--core", "C", "Core temperature when it came out."), (trial, figure) => trial.CoreCelsius = figure),
        (new("--baked", "GRAMS", "Mass when it came out."), (trial, figure) => trial.BakedMassG = figure),
        (new("--cooled", "GRAMS", "Mass when it had cooled."), (trial, figure) => trial.CooledMassG = figure),
        (new("--height", "MM", "Greatest height of the loaf."), (trial, figure) => trial.HeightMm = figure),
        (new("--width", "MM", "Greatest width of the loaf."), (trial, figure) => trial.WidthMm = figure),
        (new("--altitude", "M", "Height of the kitchen above the sea."), (trial, figure) => trial.AltitudeMetres = figure),
    ];

    private readonly (WholeFigureOption Option, Action<Crumb, int> Put)[] crumb =
    [
        (new("--moistness", "The crumb, from 1 (dry) through 3 (right) to 5 (gummy)."), (crumb, figure) => crumb.Moistness = figure),
        (new("--openness", "The crumb, from 1 (dense) through 3 (right) to 5 (with caves)."), (crumb, figure) => crumb.Openness = figure),
        (new("--firmness", "The crumb, from 1 (falls apart) through 3 (right) to 5 (rubbery)."), (crumb, figure) => crumb.Firmness = figure),
    ];

    private readonly FigureOption oven = new("--oven", "C", "What the oven's dial said. Without it: what the formula says.");

    private readonly Option<bool> fan = new("--fan") { Description = "The fan ran. It goes with --oven." };

    private readonly Option<bool> coldStart = new("--cold-start") { Description = "It went into a cold oven." };

    private readonly Option<SoakedBag[]> soaks = new("--soak")
    {
        Description = "A soaking test that was done beside it: the food, its weight before, and after soak and drain. May be given again.",
        HelpName = "FOOD=DRY:DRAINED",
        CustomParser = result => OptionText.Each(result, "--soak", SoakText.Read),
    };

    private readonly Option<string?> note = new("--note") { Description = "Words to it.", HelpName = "WORDS" };

    private readonly Option<string?> photo = new("--photo") { Description = "Where a photo of it is. It is never opened.", HelpName = "WHERE" };

    /// <summary>The verb.</summary>
    public static Command Create(Errand errand)
    {
        var add = new TrialAdd();
        var verb = new VerbCommand(
            "add",
            "Writes down what was done and measured in one bake; later forecasts go by it.",
            "swapsolver trial add my-tin-loaf --batter 775 --minutes 66 --core 96 --baked 692 --height 78")
        {
            add.name, add.revision, add.oven, add.fan, add.coldStart, add.soaks, add.note, add.photo,
        };
        foreach (var option in add.figures.Select(figure => (Option)figure.Option).Concat(add.crumb.Select(figure => figure.Option)))
        {
            verb.Add(option);
        }

        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<Trial>(_ => Task.FromResult<Checked<ServiceCall<Trial>>>(add.Ask(parse)), TrialScreen.Show, _ => ExitCode.Answer),
            cancel));
        return verb;
    }

    private ServiceCall<Trial> Ask(ParseResult parse)
    {
        var trial = new Trial { Revision = parse.GetValue(revision) ?? 0, Note = parse.GetValue(note) ?? "", Photo = parse.GetValue(photo) ?? "", ColdStart = parse.GetValue(coldStart) };
        foreach (var (option, put) in figures)
        {
            if (parse.GetValue(option) is { } figure)
            {
                put(trial, figure);
            }
        }

        foreach (var (option, put) in crumb)
        {
            if (parse.GetValue(option) is { } figure)
            {
                put(trial.Crumb ??= new Crumb(), figure);
            }
        }

        if (parse.GetValue(oven) is { } dial)
        {
            trial.Oven = new Oven { Celsius = dial, Fan = parse.GetValue(fan) };
        }

        trial.Soaks.AddRange(parse.GetValue(soaks) ?? []);
        var request = new AddTrialRequest { Parent = name.Read(parse), Trial = trial, RequestId = Guid.NewGuid().ToString() };
        return async (service, options) => await new Client(service).AddTrialAsync(request, options);
    }
}
