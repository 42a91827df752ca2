using System.CommandLine;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Files;
using SwapSolver.Console.Screens;
using SwapSolver.V1;

namespace SwapSolver.Console.Verbs;

/// <summary><c>replace</c>: what can stand in for one ingredient.</summary>
internal sealed class Replace
{
    /// <summary>Ways that are printed where nobody says how many; the rest are named in one line.</summary>
    private const int UsualRanked = 5;

    private readonly FormulaArgument formula = new(mayBeMissing: true);
    private readonly HabitOptions habits = new();
    private readonly FigureOption grams = new("--grams", "G", "Dose of an acid, base or baking powder, in place of a formula.");
    private readonly FigureOption stock = new("--stock", "G", "What is left of it and stays in use; only the rest is replaced.");

    private readonly Option<string?> ingredient = new("--ingredient")
    {
        Description = "What is to be replaced.",
        HelpName = "X",
        Required = true,
    };

    private readonly Option<string[]> with = new("--with")
    {
        Description = "What is to come in, together, with commas between. Without it: whatever can, ranked.",
        HelpName = "Y,Z",
        CustomParser = result => OptionText.Names(result, "--with", "Write what is to come in, as --with citric-acid."),
    };

    /// <summary>The verb.</summary>
    public static Command Create(Errand errand)
    {
        var replace = new Replace();
        var verb = new VerbCommand(
            "replace",
            "Ranked replacements for one ingredient; for an acid, a base or a baking powder also by dose alone.",
            "swapsolver replace data/formulas/hazelnut-tin-loaf.json --ingredient cream-of-tartar --with citric-acid")
        {
            replace.formula,
            replace.formula.System,
            replace.ingredient,
            replace.with,
            replace.grams,
            replace.stock,
        };
        replace.habits.AddTo(verb);
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<ReplaceIngredientResponse>(
                async token => (await replace.formula.ReadIfGivenAsync(parse, token)).Then(subject => replace.Ask(parse, subject)),
                (screen, response) => ReplaceScreen.Show(screen, response, replace.habits.Read(parse) is { HasAnswers: true } asked ? asked.Answers : UsualRanked),
                response => response.Answers.Count > 0 ? ExitCode.Answer : ExitCode.NoAnswer),
            cancel));
        return verb;
    }

    private ServiceCall<ReplaceIngredientResponse> Ask(ParseResult parse, FormulaSubject? subject)
    {
        var request = new ReplaceIngredientRequest
        {
            Ingredient = IngredientId.ToResourceName(parse.GetRequiredValue(ingredient) ?? string.Empty),
            Habits = habits.Read(parse),
        };
        request.With.AddRange((parse.GetValue(with) ?? []).Select(IngredientId.ToResourceName));
        if (parse.GetValue(grams) is double dose)
        {
            request.Grams = dose;
        }

        if (parse.GetValue(stock) is double left)
        {
            request.StockGrams = left;
        }

        subject?.PutInto(formula => request.Formula = formula, name => request.Name = name);
        return async (service, options) => await new SubstitutionService.SubstitutionServiceClient(service).ReplaceIngredientAsync(request, options);
    }
}
