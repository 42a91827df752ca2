using System.CommandLine;
using Grpc.Core;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Files;
using SwapSolver.Console.Screens;
using SwapSolver.V1;
using Format = SwapSolver.V1.ImportIngredientsRequest.Types.Format;

namespace SwapSolver.Console.Verbs;

/// <summary><c>pantry import</c>: takes a table of foods, or of household weights, into this kitchen's pantry.</summary>
internal sealed class PantryImport
{
    private readonly Argument<string> file = new("FILE") { Description = "The table, or - for standard input." };

    private readonly Option<Format?> format = new("--format")
    {
        Description = "How it is written: USDA_ABBREVIATED, CSV or HOUSEHOLD_WEIGHTS. Without it: told from its first line.",
        HelpName = "FORMAT",
        CustomParser = result => OptionText.One(result, "--format", text => EnumWord.Read<Format>(ImportIngredientsRequest.Descriptor.EnumTypes[0], text)),
    };

    private readonly Option<bool> dryRun = new("--dry-run") { Description = "Only answer; write nothing down." };

    /// <summary>The verb.</summary>
    public static Command Create(Errand errand)
    {
        var import = new PantryImport();
        var verb = new VerbCommand(
            "import",
            "Takes foods from a table: the abbreviated file of the USDA Standard Reference, or comma-separated values under a line of column names; household weights likewise. Rows that cannot be true are reported by line and left out. Importing twice changes nothing.",
            "swapsolver pantry import foods.csv")
        {
            import.file, import.format, import.dryRun,
        };
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<ImportIngredientsResponse>(
                async token => (await TableText.ReadAsync(parse.GetRequiredValue(import.file), token)).Then(table => import.Ask(parse, table)),
                (screen, response) => ImportedScreen.Show(screen, response, isWritten: !parse.GetValue(import.dryRun)),
                response => response.Added + response.Changed + response.Same > 0 ? ExitCode.Answer : ExitCode.NoAnswer),
            cancel));
        return verb;
    }

    private ServiceCall<ImportIngredientsResponse> Ask(ParseResult parse, string table)
    {
        var first = new ImportIngredientsRequest { Format = parse.GetValue(format) ?? Format.Unspecified, ValidateOnly = parse.GetValue(dryRun) };
        return (service, options) => Send(new IngredientService.IngredientServiceClient(service), options, first, table);
    }

    private static async Task<ImportIngredientsResponse> Send(
        IngredientService.IngredientServiceClient client, CallOptions options, ImportIngredientsRequest request, string table)
    {
        var whole = new ImportIngredientsResponse();
        foreach (var piece in TablePieces.Of(table))
        {
            request.Text = piece.Text;
            request.FirstLine = piece.FirstLine;
            var part = await client.ImportIngredientsAsync(request, options);
            // The pieces behind the first are read as the first was.
            request.Format = part.Format;
            request.Header = part.Format == Format.UsdaAbbreviated ? string.Empty : TablePieces.HeaderOf(table);
            request.EarlierRows.AddRange(part.Rows);
            Add(whole, part);
        }

        return whole;
    }

    private static void Add(ImportIngredientsResponse whole, ImportIngredientsResponse part)
    {
        whole.Format = part.Format;
        whole.Added += part.Added;
        whole.Changed += part.Changed;
        whole.Same += part.Same;
        whole.LeftOut += part.LeftOut;
        whole.Problems.AddRange(part.Problems);
        whole.Cautions.AddRange(part.Cautions.Except(whole.Cautions));
    }
}
