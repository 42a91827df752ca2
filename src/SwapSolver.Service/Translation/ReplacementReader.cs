using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Service.Faults;
using SwapSolver.Solving;
using SwapSolver.Solving.Questions;
using SwapSolver.Solving.Replacing;
using SwapSolver.V1;
using Domain = SwapSolver.Kitchen.Formulas;
using Ingredient = SwapSolver.Kitchen.Ingredients.Ingredient;

namespace SwapSolver.Service.Translation;

/// <summary>Reads what is to be replaced and what it is to be replaced with.</summary>
internal sealed class ReplacementReader(Bakehouse bakehouse, Subject subject, ProblemList problems)
{
    private const int MostWith = 3;

    private const int MostOfLeavening = 50, MostOfOthers = 3;

    private const double LeastDose = 0.1;

    /// <summary>What the lines of the formula were read as that gave no grams.</summary>
    public IEnumerable<ConvertedLine> LinesRead { get; private set; } = [];

    /// <summary>The question; null where problems were added.</summary>
    public Replacement? Read(ReplaceIngredientRequest request)
    {
        var isBare = request.Formula is null && string.IsNullOrEmpty(request.Name);
        var read = isBare ? null : subject.Read(request.Name, request.Formula, problems);
        var formula = read?.Formula;
        LinesRead = read?.LinesRead ?? [];
        KnownFacts.Require(bakehouse.Balances, formula, problems);
        var names = new LineReader(bakehouse.Pantry, problems);
        var from = names.IngredientOf(request.Ingredient, "ingredient");
        var with = ReadWith(request, names, from);
        if (from is null || (formula is null && !isBare))
        {
            return null;
        }

        KnownFacts.Require(bakehouse.Balances, from, "ingredient", problems);
        var dose = isBare ? ReadDose(request, from) : InFormula(request, from, formula!);
        var stock = ReadStock(request, from, isBare ? dose : null);
        var reader = new HabitsReader(bakehouse, problems);
        var habits = reader.Read(request.Habits, formula ?? new Domain.Formula(string.Empty, [], 1, null, null, null), LeaveningKits.Leavens(from) ? MostOfLeavening : MostOfOthers);
        var limits = reader.ReadLimits(request.Habits);
        KnownFacts.RequireLimits(limits, formula, with, problems);
        return new Replacement(formula, from, dose, stock, with, limits, habits)
        {
            MostOfLeavening = request.Habits?.HasAnswers == true ? habits.Answers : null,
        };
    }

    private Grams ReadDose(ReplaceIngredientRequest request, Ingredient from)
    {
        if (!LeaveningKits.Leavens(from))
        {
            problems.Add("formula", from.Id, "is replaced within a formula only", "give the formula; acids, bases and baking powders do with 'grams' alone");
        }
        else if (!request.HasGrams)
        {
            problems.Add("grams", string.Empty, "neither a formula nor a dose is given", "give the formula, or the grams of what is replaced");
        }
        else if (!(request.Grams is >= LeastDose and <= LineReader.MostGrams))
        {
            problems.Add("grams", request.Grams, "is no dose", $"give {LeastDose} to {LineReader.MostGrams} g");
        }

        return new Grams(request.Grams);
    }

    private Grams InFormula(ReplaceIngredientRequest request, Ingredient from, Domain.Formula formula)
    {
        if (request.HasGrams)
        {
            problems.Add("grams", request.Grams, "stands beside a formula, which says how much there is", "leave it out, or leave the formula out");
        }

        var there = formula.MassOf(from);
        if (there == Grams.None)
        {
            var ids = formula.Lines.Where(line => line.Grams > Grams.None).Select(line => line.Ingredient.Id).Distinct();
            problems.Add("ingredient", request.Ingredient, "is not in the formula", $"name one of its lines: {string.Join(", ", ids)}");
        }

        return there;
    }

    private Grams ReadStock(ReplaceIngredientRequest request, Ingredient from, Grams? dose)
    {
        if (!request.HasStockGrams)
        {
            return Grams.None;
        }

        if (!(request.StockGrams is >= 0 and <= LineReader.MostGrams))
        {
            problems.Add("stockGrams", request.StockGrams, "cannot be weighed", $"give 0 to {LineReader.MostGrams} g");
        }
        else if (!LeaveningKits.Leavens(from))
        {
            problems.Add("stockGrams", request.StockGrams, $"cannot be used up in part for {from.Id}", "leave it out; acids, bases and baking powders are replaced in part");
        }
        else if (dose is { } whole && request.StockGrams >= whole.Value)
        {
            problems.Add("stockGrams", request.StockGrams, "is all that is needed", "nothing needs to be replaced; give less than 'grams'");
        }

        return new Grams(request.StockGrams);
    }

    private ImmutableArray<Ingredient> ReadWith(ReplaceIngredientRequest request, LineReader names, Ingredient? from)
    {
        if (request.With.Count > MostWith)
        {
            problems.Add("with", request.With.Count, "things are too many to come in together", $"give at most {MostWith}");
            return [];
        }

        var with = request.With.Select((name, index) => names.IngredientOf(name, $"with[{index}]")).OfType<Ingredient>().Distinct().ToImmutableArray();
        foreach (var one in with)
        {
            KnownFacts.Require(bakehouse.Balances, one, "with", problems);
        }

        if (from is not null && with.Contains(from))
        {
            problems.Add("with", from.Id, "is what goes out", "name something else");
        }
        else if (from is not null && LeaveningKits.Leavens(from) && !with.IsEmpty && with.Length == request.With.Count && !LeaveningKits.CanStandIn(from, with))
        {
            problems.Add("with", string.Join(", ", with.Select(one => one.Id)), $"cannot stand in for {from.Id}", WayOut(from));
        }

        return with;
    }

    private string WayOut(Ingredient from)
    {
        var roles = from.Role == Role.LeaveningBlend ? new[] { Role.LeaveningBlend, Role.Base, Role.Acid } : [from.Role, Role.LeaveningBlend];
        var ids = bakehouse.Pantry.Offered
            .Where(one => roles.Contains(one.Role) && LeaveningKits.Leavens(one) && !one.Equals(from))
            .Select(one => one.Id);
        var how = from.Role == Role.LeaveningBlend ? "name another powder, or acids with or without a base" : "name one powder, or others of its kind";
        return $"{how}: {string.Join(", ", ids)}";
    }
}
