using System.CommandLine;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Files;
using SwapSolver.Console.Screens;
using SwapSolver.V1;

namespace SwapSolver.Console.Verbs;

/// <summary><c>reformulate</c>: a formula changed least so that its readings lie where they are wanted.</summary>
internal sealed class Reformulate
{
    private readonly FormulaArgument formula = new();
    private readonly HabitOptions habits = new();

    private readonly Option<Target[]> targets = new("--target")
    {
        Description = "Where a reading is wanted, either side may be left empty; or a word by itself: softer, firmer, moister, drier, higher, fewer-net-carbs, less-sugar, less-sweet, sweeter, less-salt, saltier, less-energy, less-fat, more-protein, more-fibre, cheaper or fewer-eggs; or a line of the formula in grams, as ingredients/butter=..60. May be given again.",
        HelpName = "NAME=LOW..HIGH",
        Required = true,
        CustomParser = result => OptionText.Each(result, "--target", TargetText.Read),
    };

    /// <summary>The verb.</summary>
    public static Command Create(Errand errand)
    {
        var reformulate = new Reformulate();
        var verb = new VerbCommand(
            "reformulate",
            "A formula changed least so that its readings lie where they are wanted.",
            "swapsolver reformulate data/formulas/hazelnut-tin-loaf.json --target less-salt --target net-carbohydrate=..1.1")
        {
            reformulate.formula,
            reformulate.formula.System,
            reformulate.targets,
        };
        reformulate.habits.AddTo(verb);
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<ReformulateFormulaResponse>(
                async token => (await reformulate.formula.ReadAsync(parse, token)).Then(subject => reformulate.Ask(parse, subject)),
                ReformulateScreen.Show,
                response => response.Answers.Count > 0 ? ExitCode.Answer : ExitCode.NoAnswer),
            cancel));
        return verb;
    }

    private ServiceCall<ReformulateFormulaResponse> Ask(ParseResult parse, FormulaSubject subject)
    {
        var request = new ReformulateFormulaRequest { Habits = habits.Read(parse) };
        request.Targets.AddRange(parse.GetRequiredValue(targets));
        subject.PutInto(formula => request.Formula = formula, name => request.Name = name);
        return async (service, options) => await new ReformulationService.ReformulationServiceClient(service).ReformulateFormulaAsync(request, options);
    }
}
