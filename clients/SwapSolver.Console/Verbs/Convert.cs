using System.CommandLine;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Files;
using SwapSolver.Console.Screens;
using SwapSolver.V1;
using MeasureSystem = SwapSolver.V1.Line.Types.System;

namespace SwapSolver.Console.Verbs;

/// <summary><c>convert</c>: lines of text in grams.</summary>
internal sealed class Convert
{
    private readonly Argument<string?> file = new("FILE")
    {
        Description = "A text file of one ingredient a line, or - for standard input.",
        Arity = ArgumentArity.ZeroOrOne,
    };

    private readonly Option<string?> text = new("--text")
    {
        Description = "The lines themselves, in place of a file.",
        HelpName = "LINES",
    };

    private readonly MeasureSystemOption system = new(of: "");

    /// <summary>The verb.</summary>
    public static Command Create(Errand errand)
    {
        var convert = new Convert();
        var verb = new VerbCommand(
            "convert",
            "Lines of text and household measures in grams, with their range and what was assumed.",
            "swapsolver convert --text \"1 1/2 cups (150 g) finely ground almonds\"")
        {
            convert.file,
            convert.text,
            convert.system,
        };
        verb.Validators.Add(result =>
        {
            if (result.GetResult(convert.file) is { Tokens.Count: > 0 } == (result.GetResult(convert.text) is not null))
            {
                result.AddError("give either FILE or --text.");
            }
            else if (result.GetResult(convert.file) is { Tokens: [var word, ..] } && UnknownWord.IsOption(word.Value))
            {
                result.AddError(UnknownWord.Option(word.Value, result));
            }
        });
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<ConvertLinesResponse>(
                async token => (await convert.ReadAsync(parse, token)).Then(lines => Ask(lines, parse.GetValue(convert.system) ?? MeasureSystem.Unspecified)),
                ConvertScreen.Show,
                response => response.Lines.All(line => line.Problem.Length == 0) ? ExitCode.Answer : ExitCode.NoAnswer),
            cancel));
        return verb;
    }

    private Task<Checked<IReadOnlyList<string>>> ReadAsync(ParseResult parse, CancellationToken cancel) =>
        parse.GetValue(text) is { } lines ? Task.FromResult(TextLines.Of(lines)) : TextLines.ReadAsync(parse.GetValue(file)!, cancel);

    private static ServiceCall<ConvertLinesResponse> Ask(IReadOnlyList<string> lines, MeasureSystem system)
    {
        var request = new ConvertLinesRequest { Lines = { lines }, System = system };
        return async (service, options) => await new MeasureService.MeasureServiceClient(service).ConvertLinesAsync(request, options);
    }
}
