using System.CommandLine;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Files;
using SwapSolver.Console.Screens;
using SwapSolver.V1;

namespace SwapSolver.Console.Verbs;

/// <summary><c>card</c>: the printed card of a formula.</summary>
internal sealed class Card
{
    private readonly FormulaArgument formula = new();
    private readonly CardOptions options = new();

    /// <summary>The verb.</summary>
    public static Command Create(Errand errand)
    {
        var card = new Card();
        var verb = new VerbCommand(
            "card",
            "The printed card of a formula: grams, baking, steps, label, allergens, cautions.",
            "swapsolver card data/formulas/hazelnut-tin-loaf.json --format html --label eu --measures metric --out card.html")
        {
            card.formula,
            card.formula.System,
        };
        card.options.AddTo(verb);
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<PrintCardResponse>(
                token => card.PrepareAsync(parse, token),
                (screen, response) => CardScreen.Show(screen, response, card.options.Out(parse)),
                _ => ExitCode.Answer)
            {
                KeepAsync = (response, token) => card.options.Out(parse) is { } file
                    ? FileTarget.WriteAsync(file, CardScreen.Text(response), token)
                    : Task.FromResult<string?>(null),
            },
            cancel));
        return verb;
    }

    private async Task<Checked<ServiceCall<PrintCardResponse>>> PrepareAsync(ParseResult parse, CancellationToken cancel)
    {
        var subject = await formula.ReadAsync(parse, cancel);
        var request = options.Read(parse);
        if (options.VariantOf(parse) is not { } name)
        {
            return subject.Then(read => Ask(request, read));
        }

        var origin = await FormulaSubject.ReadAsync(name, cancel);
        if (!subject.IsGood || !origin.IsGood)
        {
            return Checked<ServiceCall<PrintCardResponse>>.Bad([.. subject.Problems, .. origin.Problems]);
        }

        request.VariantOf = new CardOrigin();
        origin.Value.PutInto(known => request.VariantOf.Formula = known, known => request.VariantOf.Name = known);
        return Ask(request, subject.Value);
    }

    private static ServiceCall<PrintCardResponse> Ask(PrintCardRequest request, FormulaSubject subject)
    {
        subject.PutInto(formula => request.Formula = formula, name => request.Name = name);
        return async (service, options) => await new CardService.CardServiceClient(service).PrintCardAsync(request, options);
    }
}
