using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Solving.Models;

/// <summary>The columns that stand for lines: what may be in the bowl, between which grams, in which steps, and what
/// a change of it counts.</summary>
internal sealed class LineColumns(FormulaProblem problem, ModelBuilder builder, bool wholeSteps)
{
    private readonly Room room = new(problem);

    /// <summary>Adds the lines of the start that are not left out, then the fixed and the new ones.</summary>
    public ImmutableArray<LineColumn> Add()
    {
        var lines = ImmutableArray.CreateBuilder<LineColumn>();
        // In the order of ids: which of two equal formulas is found must not hang on the order of the lines.
        var inOrder = problem.Start.Lines.OrderBy(line => line.Ingredient.Id, StringComparer.Ordinal);
        foreach (var line in inOrder.Where(line => !problem.IsLeftOut(line.Ingredient)))
        {
            lines.Add(problem.Fixed.TryGetValue(line.Ingredient, out var grams)
                ? AddFixed(line.Ingredient, grams, isNew: false)
                : room.StaysAsItIs(line) ? AddFixed(line.Ingredient, line.Grams, isNew: false)
                : AddKept(line));
        }

        foreach (var (ingredient, grams) in problem.Fixed.OrderBy(pair => pair.Key.Id, StringComparer.Ordinal))
        {
            if (problem.Start.MassOf(ingredient) == Grams.None)
            {
                lines.Add(AddFixed(ingredient, grams, isNew: true));
            }
        }

        AddNew(lines);
        return lines.ToImmutable();
    }

    private LineColumn AddFixed(Ingredient ingredient, Grams grams, bool isNew)
    {
        var column = builder.Column($"x_{ingredient.Id}", grams.Value, grams.Value);
        return new LineColumn(ingredient, column, 1, null, isNew) { Start = grams.Value, Low = grams.Value, High = grams.Value };
    }

    /// <summary>A line of the start: <c>x = before + more - less</c>, and more or less only if it counts as changed.</summary>
    private LineColumn AddKept(Line line)
    {
        var before = line.Grams.Value;
        var (low, high) = room.OfKept(line);
        var grams = AddGrams(line.Ingredient, line.Size, low, high, isNew: false);
        var changed = builder.Choice($"changed_{line.Ingredient.Id}", Weights.ChangedLine);
        var moved = Weights.BatterMoved / problem.Reference.BatterMass.Value;
        var growth = Math.Max(0, high - before);
        var more = builder.Column($"more_{line.Ingredient.Id}", 0, growth, moved);
        var less = builder.Column($"less_{line.Ingredient.Id}", 0, before, moved);
        builder.Row($"move_{line.Ingredient.Id}", [new(grams.Column, grams.GramsPerUnit), new(more, -1), new(less, 1)], before, before);
        builder.Row($"more_{line.Ingredient.Id}", [new(more, 1), new(changed, -growth)], double.NegativeInfinity, 0);
        builder.Row($"less_{line.Ingredient.Id}", [new(less, 1), new(changed, -before)], double.NegativeInfinity, 0);
        var least = Math.Min(line.Ingredient.Usage.SensibleMinimum.Value, before);
        if (low == 0 && least > 0)
        {
            // The line may go, but not dwindle: nothing, or the least that is worth weighing.
            var used = builder.Choice($"used_{line.Ingredient.Id}");
            builder.Row($"least_{line.Ingredient.Id}", [new(grams.Column, grams.GramsPerUnit), new(used, -least)], 0, double.PositiveInfinity);
            builder.Row($"most_{line.Ingredient.Id}", [new(grams.Column, grams.GramsPerUnit), new(used, -high)], double.NegativeInfinity, 0);
        }

        return grams with { Choice = changed, Start = before / grams.GramsPerUnit };
    }

    private void AddNew(ImmutableArray<LineColumn>.Builder lines)
    {
        var choices = new Dictionary<Ingredient, int>();
        var present = problem.Start.Lines.SelectMany(line => line.Ingredient.Allergens.OnEitherList).ToHashSet();
        foreach (var ingredient in problem.Candidates)
        {
            var (least, most) = room.OfNew(ingredient);
            if (most < least || problem.Fixed.ContainsKey(ingredient) || problem.IsLeftOut(ingredient) || !problem.CanBeHeld(ingredient))
            {
                continue;
            }

            // What nobody stated is not known to be none.
            var mayBringAllergen = !ingredient.Allergens.AreKnown || ingredient.Allergens.OnEitherList.Any(allergen => !present.Contains(allergen));
            var isWater = ingredient.Typical[Fact.Water] >= problem.Practice.PlainWater.Share;
            var cost = (isWater ? Weights.NewWater : Weights.NewIngredient) + (mayBringAllergen ? Weights.NewAllergen : 0);
            var grams = AddGrams(ingredient, null, 0, most, isNew: true);
            var used = problem.Required.Contains(ingredient)
                ? builder.Column($"used_{ingredient.Id}", 1, 1, cost, whole: true)
                : builder.Choice($"used_{ingredient.Id}", cost);
            builder.Row($"least_{ingredient.Id}", [new(grams.Column, grams.GramsPerUnit), new(used, -least)], 0, double.PositiveInfinity);
            builder.Row($"most_{ingredient.Id}", [new(grams.Column, grams.GramsPerUnit), new(used, -most)], double.NegativeInfinity, 0);
            choices.Add(ingredient, used);
            lines.Add(grams with { Choice = used });
        }

        builder.Row("new_ingredients", choices.Values.Select(choice => new Term(choice, 1)), 0, Math.Max(0, problem.Habits.NewIngredients - FixedNew));
        foreach (var found in problem.Found)
        {
            // At least one of the earlier answer's new ingredients must be missing now.
            builder.Row("found", found.Where(choices.ContainsKey).Select(ingredient => new Term(choices[ingredient], 1)), 0, found.Length - 1);
        }
    }

    private int FixedNew => problem.Fixed.Count(pair => problem.Start.MassOf(pair.Key) == Grams.None);

    private LineColumn AddGrams(Ingredient ingredient, EggSize? counted, double low, double high, bool isNew)
    {
        var size = problem.Habits.WeighedEgg || ingredient.CountedUnits.IsEmpty ? (EggSize?)null : counted ?? problem.Habits.EggSize;
        var unit = size is { } known && Line.UnitOf(ingredient, known) is { } one ? one.Value
            : wholeSteps ? problem.Habits.StepOf(ingredient).Value
            : 1;
        var isWhole = size is not null || wholeSteps;
        var (least, most) = isWhole ? (Math.Ceiling((low / unit) - 1e-9), Math.Floor((high / unit) + 1e-9)) : (low, high);
        var column = builder.Column($"{(isWhole ? "n" : "x")}_{ingredient.Id}", least, most, whole: isWhole);
        return new LineColumn(ingredient, column, unit, size, isNew) { Low = least, High = most };
    }
}
