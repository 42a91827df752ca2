using System.Collections.Immutable;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Service.Faults;
using SwapSolver.Solving;
using SwapSolver.Solving.Questions;
using SwapSolver.V1;

namespace SwapSolver.Service.Translation;

/// <summary>Reads which swaps of a formula are to be charted.</summary>
internal sealed class ChartReader(Bakehouse bakehouse, Subject subject, ProblemList problems)
{
    private const int MostCharted = 200;

    /// <summary>What the lines of the formula were read as that gave no grams.</summary>
    public IEnumerable<ConvertedLine> LinesRead { get; private set; } = [];

    /// <summary>The question; null where problems were added.</summary>
    public SwapChart? Read(ChartSwapsRequest request)
    {
        var read = subject.ReadAsGiven(request.Name, request.Formula, problems);
        var formula = read?.Formula;
        LinesRead = read?.LinesRead ?? [];
        KnownFacts.Require(bakehouse.Balances, formula, problems);
        var reader = new HabitsReader(bakehouse, problems);
        var habits = formula is null ? null : reader.Read(request.Habits, formula);
        reader.RefuseLimits(request.Habits);
        reader.RefuseRanking(request.Habits);
        var only = formula is null ? [] : ReadIngredients(request, formula);
        return formula is null || habits is null ? null : new SwapChart(formula, only, habits);
    }

    private ImmutableHashSet<Kitchen.Ingredients.Ingredient> ReadIngredients(ChartSwapsRequest request, Kitchen.Formulas.Formula formula)
    {
        if (request.Ingredients.Count > MostCharted)
        {
            problems.Add("ingredients", request.Ingredients.Count, "ingredients are too many", $"give at most {MostCharted}");
            return [];
        }

        var names = new LineReader(bakehouse.Pantry, problems);
        var read = request.Ingredients.Select((name, index) => (Name: name, Path: $"ingredients[{index}]", Ingredient: names.IngredientOf(name, $"ingredients[{index}]"))).ToList();
        foreach (var (name, path, ingredient) in read)
        {
            if (ingredient is not null && formula.MassOf(ingredient) == Grams.None)
            {
                problems.Add(path, name, "is not in the formula", $"name one of its lines: {string.Join(", ", formula.Lines.Select(line => line.Ingredient.Id).Distinct())}");
            }
        }

        return [.. read.Select(one => one.Ingredient).OfType<Kitchen.Ingredients.Ingredient>()];
    }
}
