using System.CommandLine;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Files;
using SwapSolver.Console.Screens;
using SwapSolver.V1;

namespace SwapSolver.Console.Verbs;

/// <summary><c>variant</c>: a formula solved again to leave something out.</summary>
internal sealed class Variant
{
    private readonly FormulaArgument formula = new();
    private readonly HabitOptions habits = new();

    private readonly Option<string[]> without = new("--without")
    {
        Description = "Allergens, ingredients or groups to leave out, with commas between. May be given again.",
        HelpName = "A,B",
        CustomParser = result => OptionText.Names(result, "--without", "Write what to leave out, as --without tree-nuts,milk."),
    };

    private readonly Option<VaryFormulaRequest.Types.Diet?> diet = new("--diet")
    {
        Description = "A way of eating to meet: vegetarian, vegan or dairy-free.",
        HelpName = "DIET",
        CustomParser = result => OptionText.One(
            result,
            "--diet",
            text => EnumWord.Read<VaryFormulaRequest.Types.Diet>(VaryFormulaRequest.Descriptor.EnumTypes[0], text)),
    };

    /// <summary>The verb.</summary>
    public static Command Create(Errand errand)
    {
        var variant = new Variant();
        var verb = new VerbCommand(
            "variant",
            "A formula solved again without allergens, ingredients or groups, or to meet a diet.",
            "swapsolver variant data/formulas/hazelnut-tin-loaf.json --without tree-nuts")
        {
            variant.formula,
            variant.formula.System,
            variant.without,
            variant.diet,
        };
        variant.habits.AddTo(verb);
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<VaryFormulaResponse>(
                async token => (await variant.formula.ReadAsync(parse, token)).Then(subject => variant.Ask(parse, subject)),
                (screen, response) =>
                {
                    LinesRead.Show(screen, response.LinesRead);
                    AnswersScreen.Show(screen, response.Answers, response.Conflict, response.Nearest);
                },
                response => response.Answers.Count > 0 ? ExitCode.Answer : ExitCode.NoAnswer),
            cancel));
        return verb;
    }

    private ServiceCall<VaryFormulaResponse> Ask(ParseResult parse, FormulaSubject subject)
    {
        var request = new VaryFormulaRequest
        {
            Diet = parse.GetValue(diet) ?? VaryFormulaRequest.Types.Diet.Unspecified,
            Habits = habits.Read(parse),
        };
        request.Without.AddRange(parse.GetValue(without) ?? []);
        subject.PutInto(formula => request.Formula = formula, name => request.Name = name);
        return async (service, options) => await new SubstitutionService.SubstitutionServiceClient(service).VaryFormulaAsync(request, options);
    }
}
