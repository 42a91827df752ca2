using System.CommandLine;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Screens;
using SwapSolver.V1;

namespace SwapSolver.Console.Verbs;

/// <summary><c>formula copy</c>: a stored formula under a new id.</summary>
internal static class FormulaCopy
{
    /// <summary>The verb.</summary>
    public static Command Create(Errand errand)
    {
        var name = new FormulaName();
        var id = new Argument<string>("NEW-ID") { Description = "Id of the copy: small letters, digits and hyphens." };
        var called = new Option<string?>("--called") { Description = "What the copy is called. Without it: as the original.", HelpName = "WORDS" };
        var verb = new VerbCommand("copy", "Saves a stored formula under a new id; a shipped one too.", "swapsolver formula copy hazelnut-tin-loaf my-tin-loaf") { name, id, called };
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<Formula>(
                _ => Task.FromResult<Checked<ServiceCall<Formula>>>(Ask(new CopyFormulaRequest
                {
                    Name = name.Read(parse),
                    FormulaId = FormulaName.Id(parse.GetRequiredValue(id)),
                    DisplayName = parse.GetValue(called) ?? string.Empty,
                    RequestId = Guid.NewGuid().ToString(),
                })),
                SavedScreen.Show,
                _ => ExitCode.Answer),
            cancel));
        return verb;
    }

    private static ServiceCall<Formula> Ask(CopyFormulaRequest request) =>
        async (service, options) => await new FormulaService.FormulaServiceClient(service).CopyFormulaAsync(request, options);
}
