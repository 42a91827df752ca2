using System.CommandLine;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Files;
using SwapSolver.Console.Screens;
using SwapSolver.V1;
using Client = SwapSolver.V1.TrialService.TrialServiceClient;

namespace SwapSolver.Console.Verbs;

/// <summary><c>trial</c>: what was baked and measured, and what the kitchen learned from it.</summary>
internal static class Trials
{
    /// <summary>The verb with its own verbs.</summary>
    public static Command Create(Errand errand) =>
        new("trial", "What was baked and measured, and what the kitchen learned from it.")
        {
            TrialAdd.Create(errand),
            List(errand),
            Learned(errand),
            Choose(errand),
            Next(errand),
        };

    private static VerbCommand List(Errand errand)
    {
        var name = new FormulaName();
        var verb = new VerbCommand("list", "The trials of a formula, newest first.", "swapsolver trial list my-tin-loaf") { name };
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<ListTrialsResponse>(_ => Ready(All(name.Read(parse))), TrialScreen.ShowAll, _ => ExitCode.Answer),
            cancel));
        return verb;
    }

    private static VerbCommand Learned(Errand errand)
    {
        var verb = new VerbCommand("learned", "What this kitchen learned, each fact with its prior, its evidence and its new range.", "swapsolver trial learned");
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<ListLearnedFactsResponse>(_ => Ready(AskLearned()), LearnedScreen.ShowAll, _ => ExitCode.Answer),
            cancel));
        return verb;
    }

    private static VerbCommand Choose(Errand errand)
    {
        var fact = new Argument<string>("FACT") { Description = "The fact, as trial learned names it: oven-factor." };
        var choice = new Argument<ChooseLearnedFactRequest.Types.Choice>("CHOICE")
        {
            Description = "use: answers go by it; turn-off: they go by the published range again; forget: what was measured up to now counts no more.",
            CustomParser = result => OptionText.Each(
                result, "CHOICE", text => EnumWord.Read<ChooseLearnedFactRequest.Types.Choice>(ChooseLearnedFactRequest.Descriptor.EnumTypes[0], text)).FirstOrDefault(),
        };
        var verb = new VerbCommand("choose", "Turns a learned fact off or on, or forgets it.", "swapsolver trial choose oven-factor turn-off") { fact, choice };
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<LearnedFact>(
                _ => Ready(AskChoice(new ChooseLearnedFactRequest { Name = parse.GetRequiredValue(fact), Choice = parse.GetValue(choice) })), LearnedScreen.Show, _ => ExitCode.Answer),
            cancel));
        return verb;
    }

    private static VerbCommand Next(Errand errand)
    {
        var formula = new FormulaArgument();
        var verb = new VerbCommand("next", "The two or three kitchen tests that would sharpen the answers about a formula most.", "swapsolver trial next formulas/hazelnut-tin-loaf") { formula, formula.System };
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<SuggestTrialsResponse>(async token => (await formula.ReadAsync(parse, token)).Then(AskNext), LearnedScreen.ShowNext, _ => ExitCode.Answer),
            cancel));
        return verb;
    }

    private static Task<Checked<ServiceCall<T>>> Ready<T>(ServiceCall<T> call) => Task.FromResult<Checked<ServiceCall<T>>>(call);

    private static ServiceCall<ListTrialsResponse> All(string name) => (service, options) => AllPages.OfAsync(
        token => new Client(service).ListTrialsAsync(new ListTrialsRequest { Parent = name, PageSize = AllPages.Size, PageToken = token }, options));

    private static ServiceCall<ListLearnedFactsResponse> AskLearned() => (service, options) => AllPages.OfAsync(
        token => new Client(service).ListLearnedFactsAsync(new ListLearnedFactsRequest { PageSize = AllPages.Size, PageToken = token }, options));

    private static ServiceCall<LearnedFact> AskChoice(ChooseLearnedFactRequest request) => async (service, options) => await new Client(service).ChooseLearnedFactAsync(request, options);

    private static ServiceCall<SuggestTrialsResponse> AskNext(FormulaSubject subject)
    {
        var request = new SuggestTrialsRequest();
        subject.PutInto(formula => request.Formula = formula, name => request.Name = name);
        return async (service, options) => await new Client(service).SuggestTrialsAsync(request, options);
    }
}
