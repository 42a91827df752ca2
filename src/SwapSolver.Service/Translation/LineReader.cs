using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Service.Faults;
using Domain = SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Service.Translation;

/// <summary>Reads one line of a formula.</summary>
internal sealed class LineReader(Pantry pantry, ProblemList problems)
{
    /// <summary>Most grams of a line.</summary>
    public const double MostGrams = 100_000;

    private const double MostCount = 1000;

    /// <summary>How far grams may miss count times unit where a line gives both [g]: both were printed to a gram.</summary>
    private const double AgreementGrams = 0.51;

    /// <summary>The lines that a line of the contract stands for: one, or several where its text joins them with a plus;
    /// none where it cannot be read.</summary>
    /// <param name="line">The line of the contract.</param>
    /// <param name="path">Its field.</param>
    /// <param name="measures">Reads household measures and words.</param>
    public ImmutableArray<ReadLine> Read(V1.Line line, string path, MeasureReader measures)
    {
        if (!string.IsNullOrEmpty(line.Text))
        {
            return measures.ReadText(line, path);
        }

        if (IngredientOf(line.Ingredient, $"{path}.ingredient") is not { } ingredient)
        {
            return [];
        }

        if (line.HasAmount || line.HasUnit)
        {
            return measures.ReadAmount(line, ingredient, path);
        }

        if (!line.HasCount)
        {
            return ReadWeighed(line, ingredient, path) is { } weighed ? [new ReadLine(weighed)] : [];
        }

        return ReadCounted(line, ingredient, path, measures) is { } counted ? [counted] : [];
    }

    /// <summary>The ingredient of a name, or null with a problem that offers the nearest names.</summary>
    public Ingredient? IngredientOf(string name, string path)
    {
        var id = ResourceName.IngredientId(name);
        if (pantry.TryGet(id, out var ingredient))
        {
            return ingredient;
        }

        if (string.IsNullOrEmpty(id))
        {
            problems.Add(path, string.Empty, "the ingredient is missing", "name it, as ingredients/almond-meal");
        }
        else
        {
            problems.Add(path, name, "is not an ingredient that is known", () => NearestNames.WayOut(id, pantry.Ids));
        }

        return null;
    }

    private Domain.Line? ReadWeighed(V1.Line line, Ingredient ingredient, string path)
    {
        if (!line.HasGrams)
        {
            problems.Add($"{path}.grams", string.Empty, $"the line of {ingredient.Id} gives no amount", "give 'grams', or 'count' and 'size' for eggs");
            return null;
        }

        return GramsOf(line.Grams, path) is { } grams ? new Domain.Line(ingredient, grams) : null;
    }

    private Grams? GramsOf(double grams, string path)
    {
        if (grams is >= 0 and <= MostGrams)
        {
            return new Grams(grams);
        }

        problems.Add($"{path}.grams", grams, "cannot be weighed", $"give 0 to {MostGrams} g");
        return null;
    }

    private ReadLine? ReadCounted(V1.Line line, Ingredient ingredient, string path, MeasureReader measures)
    {
        if (ingredient.CountedUnits.IsEmpty)
        {
            problems.Add($"{path}.count", line.Count, $"cannot count {ingredient.Id}", "give 'grams'");
            return null;
        }

        if (!(line.Count is > 0 and <= MostCount))
        {
            problems.Add($"{path}.count", line.Count, "is no number of eggs", $"give more than 0, at most {MostCount}");
            return null;
        }

        if (line.Size == V1.Line.Types.Size.Unspecified && !line.HasGrams)
        {
            return measures.ReadCount(line.Count, ingredient, path);
        }

        var size = EggSizes.Read(line.Size, $"{path}.size", problems) ?? EggSize.LargeUs;
        if (Domain.Line.UnitOf(ingredient, size) is not { } unit)
        {
            problems.Add($"{path}.size", line.Size.ToString(), $"is no size of {ingredient.Id}", "give LARGE_US or another size of the contract");
            return null;
        }

        var grams = unit * line.Count;
        if (line.HasGrams && !(Math.Abs(line.Grams - grams.Value) <= AgreementGrams))
        {
            problems.Add($"{path}.grams", line.Grams, $"is not what {line.Count:0.##} of that size weigh ({grams.Value:0.##} g)", "give one of the two");
            return null;
        }

        return new ReadLine(new Domain.Line(ingredient, grams, size));
    }
}
