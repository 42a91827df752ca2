using System.CommandLine;
using System.CommandLine.Parsing;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Files;
using SwapSolver.Console.Screens;
using SwapSolver.V1;

namespace SwapSolver.Console.Verbs;

/// <summary><c>resize</c>: a larger or smaller loaf.</summary>
internal sealed class Resize
{
    private readonly FormulaArgument formula = new();
    private readonly HabitOptions habits = new();
    private readonly FigureOption mass = new("--mass", "G", "Batter mass wanted, in grams.");
    private readonly FigureOption factor = new("--factor", "K", "So many times the formula, as 1.5.");
    private readonly WholeFigureOption slices = new("--slices", "Slices wanted; alone, it sets the size of the loaf.");

    private readonly FigureOption baked = new("--baked", "MINUTES", "How long the formula as it stands bakes in this kitchen; the new time then follows from it.");
    private readonly FigureOption core = new("--core", "C", "Core temperature that it is baked to. Without it: four degrees below boiling.");
    private readonly FigureOption altitude = new("--altitude", "M", "Height of the kitchen above the sea, in metres.");

    private readonly Option<Tin?> tin = new("--tin")
    {
        Description = "Tin to fill, inner length, width and height in millimetres.",
        HelpName = "LxWxH",
        CustomParser = result => OptionText.Each(result, "--tin", TinText.Read).FirstOrDefault(),
    };

    /// <summary>The verb.</summary>
    public static Command Create(Errand errand)
    {
        var resize = new Resize();
        var verb = new VerbCommand(
            "resize",
            "A larger or smaller loaf, in whole eggs and within limits a slice.",
            "swapsolver resize data/formulas/hazelnut-tin-loaf.json --tin 300x110x65 --max-net-carbs 3")
        {
            resize.formula,
            resize.formula.System,
            resize.mass,
            resize.factor,
            resize.tin,
            resize.slices,
            resize.baked,
            resize.core,
            resize.altitude,
        };
        resize.habits.AddTo(verb);
        verb.Validators.Add(resize.CheckThatOneSizeIsGiven);
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<ResizeFormulaResponse>(
                async token => (await resize.formula.ReadAsync(parse, token)).Then(subject => resize.Ask(parse, subject)),
                ResizeScreen.Show,
                response => response.Answers.Count > 0 ? ExitCode.Answer : ExitCode.NoAnswer),
            cancel));
        return verb;
    }

    private ServiceCall<ResizeFormulaResponse> Ask(ParseResult parse, FormulaSubject subject)
    {
        var request = new ResizeFormulaRequest { Habits = habits.Read(parse) };
        SetSize(parse, request);
        SetBake(parse, request);
        subject.PutInto(formula => request.Formula = formula, name => request.Name = name);
        return async (service, options) => await new ReformulationService.ReformulationServiceClient(service).ResizeFormulaAsync(request, options);
    }

    private void SetSize(ParseResult parse, ResizeFormulaRequest request)
    {
        if (parse.GetValue(mass) is double grams)
        {
            request.MassGrams = grams;
        }

        if (parse.GetValue(factor) is double times)
        {
            request.Factor = times;
        }

        if (parse.GetValue(tin) is { } measures)
        {
            request.Tin = measures;
        }

        if (parse.GetValue(slices) is int count)
        {
            request.Slices = count;
        }
    }

    private void SetBake(ParseResult parse, ResizeFormulaRequest request)
    {
        if (parse.GetValue(baked) is double minutes)
        {
            request.KnownMinutes = minutes;
        }

        if (parse.GetValue(core) is double celsius)
        {
            request.CoreCelsius = celsius;
        }

        if (parse.GetValue(altitude) is double metres)
        {
            request.AltitudeMetres = metres;
        }
    }

    private void CheckThatOneSizeIsGiven(CommandResult result)
    {
        Option[] sizes = [mass, factor, tin];
        var given = sizes.Where(size => result.GetResult(size) is not null).Select(size => size.Name).ToList();
        if (given.Count > 1)
        {
            var names = string.Join(" and ", given);
            result.AddError($"{names} exclude each other. Give one of --mass, --factor or --tin; --slices may stand beside it.");
        }
        else if (given.Count == 0 && result.GetResult(slices) is null)
        {
            result.AddError("resize needs a size: --mass G, --factor K, --tin LxWxH or --slices N.");
        }
    }
}
