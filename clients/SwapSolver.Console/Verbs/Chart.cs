using System.CommandLine;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Files;
using SwapSolver.Console.Screens;
using SwapSolver.V1;

namespace SwapSolver.Console.Verbs;

/// <summary><c>chart</c>: every ingredient of a formula against what could stand in its place.</summary>
internal sealed class Chart
{
    private readonly FormulaArgument formula = new();
    private readonly HabitOptions habits = new(takesRanks: false, takesLimits: false);

    private readonly Option<string[]> ingredients = new("--ingredient")
    {
        Description = "Only this ingredient of the formula. May be given again. Without it: all of them.",
        HelpName = "ID",
    };

    /// <summary>The verb.</summary>
    public static Command Create(Errand errand)
    {
        var chart = new Chart();
        var verb = new VerbCommand(
            "chart",
            "Every ingredient of a formula against everything that could stand in its place, and against nothing at all.",
            "swapsolver chart data/formulas/hazelnut-tin-loaf.json --ingredient butter")
        {
            chart.formula,
            chart.formula.System,
            chart.ingredients,
        };
        chart.habits.AddTo(verb);
        verb.SetAction((parse, cancel) => errand.StreamAsync(
            parse,
            new StreamedQuestion<ChartSwapsResponse>(
                "pair",
                async token => (await chart.formula.ReadAsync(parse, token)).Then(subject => chart.Ask(parse, subject)),
                response => response.Pairs,
                ChartScreen.Show),
            cancel));
        return verb;
    }

    private StreamCall<ChartSwapsResponse> Ask(ParseResult parse, FormulaSubject subject)
    {
        var request = new ChartSwapsRequest { Habits = habits.Read(parse) };
        request.Ingredients.AddRange((parse.GetValue(ingredients) ?? []).Select(IngredientId.ToResourceName));
        subject.PutInto(formula => request.Formula = formula, name => request.Name = name);
        return (service, options) => new SubstitutionService.SubstitutionServiceClient(service).ChartSwaps(request, options);
    }
}
