using System.CommandLine;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Files;
using SwapSolver.Console.Screens;
using SwapSolver.V1;

namespace SwapSolver.Console.Verbs;

/// <summary><c>frontier</c>: the best reachable trade-off between two readings.</summary>
internal sealed class Frontier
{
    private readonly FormulaArgument formula = new();
    private readonly HabitOptions habits = new(takesRanks: false);
    private readonly WholeFigureOption points = new("--points", "Most points. Without it: 9.");

    private readonly Option<Trade[]> trade = new("--trade")
    {
        Description = "The two readings, as net-carbohydrate,protein; with :lower or :higher behind one where neither is better by itself.",
        HelpName = "A,B",
        Required = true,
        CustomParser = result => OptionText.Each(result, "--trade", TradeText.Read).FirstOrDefault(),
    };

    /// <summary>The verb.</summary>
    public static Command Create(Errand errand)
    {
        var frontier = new Frontier();
        var verb = new VerbCommand(
            "frontier",
            "The best reachable trade-off between two readings, with the formulas along it.",
            "swapsolver frontier data/formulas/hazelnut-tin-loaf.json --trade net-carbohydrate,protein")
        {
            frontier.formula,
            frontier.formula.System,
            frontier.trade,
            frontier.points,
        };
        frontier.habits.AddTo(verb);
        verb.SetAction((parse, cancel) => errand.StreamAsync(
            parse,
            new StreamedQuestion<TraceFrontierResponse>(
                "point",
                async token => (await frontier.formula.ReadAsync(parse, token)).Then(subject => frontier.Ask(parse, subject)),
                response => response.MostPoints,
                FrontierScreen.Show),
            cancel));
        return verb;
    }

    private StreamCall<TraceFrontierResponse> Ask(ParseResult parse, FormulaSubject subject)
    {
        var request = new TraceFrontierRequest { Habits = habits.Read(parse) };
        request.Trades.AddRange(parse.GetRequiredValue(trade));
        if (parse.GetValue(points) is int most)
        {
            request.MostPoints = most;
        }

        subject.PutInto(formula => request.Formula = formula, name => request.Name = name);
        return (service, options) => new ReformulationService.ReformulationServiceClient(service).TraceFrontier(request, options);
    }
}
