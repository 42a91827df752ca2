using System.CommandLine;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Screens;
using SwapSolver.V1;

namespace SwapSolver.Console.Verbs;

/// <summary><c>formula save</c>: saves a formula file, as a new formula or as a new revision.</summary>
internal sealed class FormulaSave
{
    private readonly FormulaArgument formula = new();

    private readonly Option<string?> id = new("--as")
    {
        Description = "Id to save it under. Without it: the name in the file, or else one made of its display name.",
        HelpName = "ID",
    };

    private readonly Option<string?> note = new("--note") { Description = "Words to this revision.", HelpName = "WORDS" };

    private readonly Option<string[]> goals = new("--goal")
    {
        Description = "What this revision is to reach, as softer, less-salt, slices=16 or net-carbohydrate=..2.5. May be given again.",
        HelpName = "GOAL",
    };

    private readonly Option<string?> etag = new("--etag")
    {
        Description = "Etag of the state that the file was made from: where somebody else changed the formula since, nothing is written.",
        HelpName = "ETAG",
    };

    /// <summary>The verb.</summary>
    public static Command Create(Errand errand)
    {
        var save = new FormulaSave();
        var verb = new VerbCommand(
            "save",
            "Saves a formula. Where one of this name is there, it becomes its next revision; nothing is lost.",
            "swapsolver formula save data/formulas/hazelnut-tin-loaf.json --as my-tin-loaf --note \"first try\"")
        {
            save.formula, save.formula.System, save.id, save.note, save.goals, save.etag,
        };
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<Formula>(token => save.PrepareAsync(parse, token), SavedScreen.Show, _ => ExitCode.Answer),
            cancel));
        return verb;
    }

    private async Task<Checked<ServiceCall<Formula>>> PrepareAsync(ParseResult parse, CancellationToken cancel)
    {
        var subject = await formula.ReadAsync(parse, cancel);
        return subject.IsGood ? Ask(parse, subject.Value) : Checked<ServiceCall<Formula>>.Bad(subject.Problems);
    }

    private Checked<ServiceCall<Formula>> Ask(ParseResult parse, Files.FormulaSubject subject)
    {
        if (subject.Formula is not { } given)
        {
            return Checked<ServiceCall<Formula>>.Bad("this formula is stored already. Give a formula file, or copy it: swapsolver formula copy NAME NEW-ID");
        }

        var saved = new Formula(given) { Name = FormulaName.ToResourceName(parse.GetValue(id) ?? given.Name) };
        if (parse.GetValue(etag) is { } tag)
        {
            saved.Etag = tag;
        }

        var request = new UpdateFormulaRequest { Formula = saved, AllowMissing = true, Note = parse.GetValue(note) ?? string.Empty, RequestId = Guid.NewGuid().ToString() };
        request.Goals.AddRange(parse.GetValue(goals) ?? []);
        ServiceCall<Formula> call = async (service, options) => await new FormulaService.FormulaServiceClient(service).UpdateFormulaAsync(request, options);
        return call;
    }
}
