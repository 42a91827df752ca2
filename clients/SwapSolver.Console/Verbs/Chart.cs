using System.CommandLine;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Files;
using SwapSolver.Console.Screens;
using SwapSolver.V1;
using Format = SwapSolver.V1.PrintCardRequest.Types.Format;

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

    private readonly FormatOption format = new(
        "Print a table for readers with only the swaps that balance: markdown or html.", Format.Markdown, Format.Html);

    private readonly Option<string?> locale = new("--locale")
    {
        Description = "How the numbers of the table are written, as de-DE.",
        HelpName = "LOCALE",
    };

    private readonly Option<string?> outFile = new("--out")
    {
        Description = "Write the table to this file.",
        HelpName = "FILE",
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
            chart.format,
            chart.locale,
            chart.outFile,
        };
        chart.habits.AddTo(verb);
        verb.Validators.Add(result =>
        {
            if (result.GetResult(chart.format) is null && (result.GetResult(chart.locale) is not null || result.GetResult(chart.outFile) is not null))
            {
                result.AddError("--locale and --out go with a table: give --format markdown or --format html too.");
            }
        });
        verb.SetAction((parse, cancel) => parse.GetValue(chart.format) is { } asTable
            ? errand.RunAsync(parse, chart.Table(parse, asTable), cancel)
            : errand.StreamAsync(
            parse,
            new StreamedQuestion<ChartSwapsResponse>(
                "pair",
                async token => (await chart.formula.ReadAsync(parse, token)).Then(subject => chart.Ask(parse, subject)),
                response => response.Pairs,
                ChartScreen.Show),
            cancel));
        return verb;
    }

    private Question<PrintSwapTableResponse> Table(ParseResult parse, Format asTable) => new(
        async token => (await formula.ReadAsync(parse, token)).Then(subject => AskTable(parse, subject, asTable)),
        (screen, response) => SwapTableScreen.Show(screen, response, parse.GetValue(outFile)),
        response => response.Swaps.Count == 0 ? ExitCode.NoAnswer : ExitCode.Answer)
    {
        KeepAsync = (response, token) => parse.GetValue(outFile) is { } file
            ? FileTarget.WriteAsync(file, SwapTableScreen.Text(response), token)
            : Task.FromResult<string?>(null),
        IsLong = true,
    };

    private ServiceCall<PrintSwapTableResponse> AskTable(ParseResult parse, FormulaSubject subject, Format asTable)
    {
        var request = new PrintSwapTableRequest { Habits = habits.Read(parse), Format = asTable, Locale = parse.GetValue(locale) ?? string.Empty };
        request.Ingredients.AddRange((parse.GetValue(ingredients) ?? []).Select(IngredientId.ToResourceName));
        subject.PutInto(formula => request.Formula = formula, name => request.Name = name);
        return async (service, options) => await new CardService.CardServiceClient(service).PrintSwapTableAsync(request, options);
    }

    private StreamCall<ChartSwapsResponse> Ask(ParseResult parse, FormulaSubject subject)
    {
        var request = new ChartSwapsRequest { Habits = habits.Read(parse) };
        request.Ingredients.AddRange((parse.GetValue(ingredients) ?? []).Select(IngredientId.ToResourceName));
        subject.PutInto(formula => request.Formula = formula, name => request.Name = name);
        return (service, options) => new SubstitutionService.SubstitutionServiceClient(service).ChartSwaps(request, options);
    }
}
