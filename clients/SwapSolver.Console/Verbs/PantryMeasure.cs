using System.CommandLine;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Screens;
using SwapSolver.V1;

namespace SwapSolver.Console.Verbs;

/// <summary><c>pantry measure</c>: what this kitchen measured of an ingredient, or pays for it.</summary>
internal sealed class PantryMeasure
{
    private readonly Argument<string> id = new("ID") { Description = "The ingredient, as coconut-flour." };

    private readonly FigureOption dry = new("--dry", "GRAMS", "The soaking test: weight before the soak.");

    private readonly FigureOption drained = new("--drained", "GRAMS", "The soaking test: weight after soak and drain.");

    private readonly FigureOption acidity = new("--acidity", "PERCENT", "The acidity that a vinegar's label states.");

    private readonly FigureOption price = new("--price", "PER-KG", "What a kilogram costs, in the kitchen's own money.");

    /// <summary>The verb.</summary>
    public static Command Create(Errand errand)
    {
        var measure = new PantryMeasure();
        var verb = new VerbCommand(
            "measure",
            "Writes down what this kitchen measured of an ingredient; it goes before the shipped figure, here only. Without a figure it prints how the test is done.",
            "swapsolver pantry measure coconut-flour --dry 10 --drained 48")
        {
            measure.id, measure.dry, measure.drained, measure.acidity, measure.price,
        };
        verb.Validators.Add(result =>
        {
            if (result.GetResult(measure.dry) is null != result.GetResult(measure.drained) is null)
            {
                result.AddError("--dry and --drained go together: weigh, soak, drain, weigh.");
            }
        });
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<MeasureIngredientResponse>(
                _ => Task.FromResult<Checked<ServiceCall<MeasureIngredientResponse>>>(measure.Ask(parse)),
                MeasuredScreen.Show,
                _ => ExitCode.Answer),
            cancel));
        return verb;
    }

    private ServiceCall<MeasureIngredientResponse> Ask(ParseResult parse)
    {
        var request = new MeasureIngredientRequest { Name = IngredientId.ToResourceName(parse.GetRequiredValue(id)) };
        if (parse.GetValue(dry) is { } before && parse.GetValue(drained) is { } after)
        {
            request.Soak = new SoakTest { DryG = before, DrainedG = after };
        }

        if (parse.GetValue(acidity) is { } percent)
        {
            request.AcidityPercent = percent;
        }

        if (parse.GetValue(price) is { } perKg)
        {
            request.PricePerKg = perKg;
        }

        return async (service, options) => await new IngredientService.IngredientServiceClient(service).MeasureIngredientAsync(request, options);
    }
}
