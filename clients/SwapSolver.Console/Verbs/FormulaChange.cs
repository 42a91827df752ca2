using System.CommandLine;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.V1;
using Client = SwapSolver.V1.FormulaService.FormulaServiceClient;

namespace SwapSolver.Console.Verbs;

/// <summary>The verbs that change where a formula stands, and not what is in it.</summary>
internal static class FormulaChange
{
    /// <summary><c>formula publish</c>.</summary>
    public static Command Publish(Errand errand)
    {
        var revision = new WholeFigureOption("--revision", "Number of the revision. Without it: the newest.");
        var verb = Create(
            errand,
            new VerbCommand("publish", "Lets everybody read a formula, in one of its revisions.", "swapsolver formula publish my-tin-loaf"),
            (parse, name, etag) => async (service, options) => await new Client(service).PublishFormulaAsync(
                new PublishFormulaRequest { Name = name, Etag = etag, Revision = parse.GetValue(revision) ?? 0, RequestId = NewRequest() }, options),
            formula => $"{formula.DisplayName} can be read by everybody, in revision {formula.PublishedRevision}.");
        verb.Add(revision);
        return verb;
    }

    /// <summary><c>formula unpublish</c>.</summary>
    public static Command Unpublish(Errand errand) => Create(
        errand,
        new VerbCommand("unpublish", "Lets nobody outside the kitchen read a formula any more.", "swapsolver formula unpublish my-tin-loaf"),
        (_, name, etag) => async (service, options) => await new Client(service).UnpublishFormulaAsync(
            new UnpublishFormulaRequest { Name = name, Etag = etag, RequestId = NewRequest() }, options),
        formula => $"{formula.DisplayName} can be read in this kitchen only.");

    /// <summary><c>formula remove</c>.</summary>
    public static Command Remove(Errand errand) => Create(
        errand,
        new VerbCommand("remove", "Puts a formula away; it can be taken back, and its revisions stay.", "swapsolver formula remove my-tin-loaf"),
        (_, name, etag) => async (service, options) => await new Client(service).DeleteFormulaAsync(
            new DeleteFormulaRequest { Name = name, Etag = etag, RequestId = NewRequest() }, options),
        formula => $"{formula.DisplayName} is put away. Take it back with: swapsolver formula restore {FormulaName.Id(formula.Name)}");

    /// <summary><c>formula restore</c>.</summary>
    public static Command Restore(Errand errand) => Create(
        errand,
        new VerbCommand("restore", "Takes back a formula that was put away.", "swapsolver formula restore my-tin-loaf"),
        (_, name, etag) => async (service, options) => await new Client(service).UndeleteFormulaAsync(
            new UndeleteFormulaRequest { Name = name, Etag = etag, RequestId = NewRequest() }, options),
        formula => $"{formula.DisplayName} is back.");

    private static string NewRequest() => Guid.NewGuid().ToString();

    private static VerbCommand Create(Errand errand, VerbCommand verb, Func<ParseResult, string, string, ServiceCall<Formula>> ask, Func<Formula, string> say)
    {
        var name = new FormulaName();
        var etag = new Option<string?>("--etag") { Description = "Etag of the state that is meant: where somebody else changed it since, nothing is done.", HelpName = "ETAG" };
        verb.Add(name);
        verb.Add(etag);
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<Formula>(
                _ => Task.FromResult<Checked<ServiceCall<Formula>>>(ask(parse, name.Read(parse), parse.GetValue(etag) ?? string.Empty)),
                (screen, formula) => screen.Sentence(say(formula)),
                _ => ExitCode.Answer),
            cancel));
        return verb;
    }
}
