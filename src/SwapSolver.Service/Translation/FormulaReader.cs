using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Lines;
using SwapSolver.Service.Faults;
using Domain = SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Service.Translation;

/// <summary>Reads a formula of the contract and names everything that is wrong with it.</summary>
internal sealed class FormulaReader(Pantry pantry, IngredientLines texts, ProblemList problems)
{
    /// <summary>Most slices of a formula.</summary>
    public const int MostSlices = 1000;

    private const int MostLines = 200;

    private const int MostSteps = 50;

    private const int MostStepLetters = 1000;

    private const double LeastBatterGrams = 1;

    private const double MostBakeLossPercent = 60;

    /// <summary>The formula; where problems were added it is not to be used.</summary>
    /// <param name="formula">The formula of the contract.</param>
    /// <param name="path">Its field.</param>
    public ReadFormula Read(V1.Formula formula, string path)
    {
        var lines = ReadLines(formula, path);
        var shape = ShapeReader.Read(formula.Shape, $"{path}.shape", problems);
        var read = new Domain.Formula(
            formula.DisplayName,
            [.. lines.Select(line => line.Line)],
            ReadSlices(formula, shape, path),
            shape,
            ReadOven(formula.Oven, $"{path}.oven"),
            ReadBakeLoss(formula, path))
        {
            Description = formula.Description,
            Steps = ReadSteps(formula, path),
        };
        return new ReadFormula(read, lines);
    }

    private ImmutableArray<ReadLine> ReadLines(V1.Formula formula, string path)
    {
        if (formula.Lines.Count == 0)
        {
            problems.Add($"{path}.lines", string.Empty, "the formula has no lines", "give at least one ingredient with its grams");
            return [];
        }

        if (formula.Lines.Count > MostLines)
        {
            problems.Add($"{path}.lines", formula.Lines.Count, "lines are too many", $"give at most {MostLines}");
            return [];
        }

        var reader = new LineReader(pantry, problems);
        var measures = new MeasureReader(texts, MeasureSystems.Read(formula.System, $"{path}.system", problems), problems);
        var read = formula.Lines.Select((line, index) => reader.Read(line, $"{path}.lines[{index}]", measures)).ToList();
        ImmutableArray<ReadLine> lines = [.. read.SelectMany(line => line)];
        var batter = lines.Sum(line => line.Line.Grams.Value);
        if (read.All(line => line.Length > 0) && batter < LeastBatterGrams)
        {
            problems.Add($"{path}.lines", $"{batter:0.##} g", "is the whole batter", $"give lines of {LeastBatterGrams} g or more in all");
        }

        return lines;
    }

    private ImmutableArray<string> ReadSteps(V1.Formula formula, string path)
    {
        if (formula.Steps.Count > MostSteps)
        {
            problems.Add($"{path}.steps", formula.Steps.Count, "steps are too many", $"give at most {MostSteps}");
        }

        for (var index = 0; index < Math.Min(formula.Steps.Count, MostSteps); index++)
        {
            var letters = formula.Steps[index].Length;
            if (string.IsNullOrWhiteSpace(formula.Steps[index]) || letters > MostStepLetters)
            {
                problems.Add($"{path}.steps[{index}]", formula.Steps[index], $"is a step of {letters} letters", $"give 1 to {MostStepLetters}");
            }
        }

        return [.. formula.Steps];
    }

    private int ReadSlices(V1.Formula formula, Domain.Shape? shape, string path)
    {
        if (!formula.HasSlices && shape is Domain.Pieces pieces)
        {
            return pieces.Count;
        }

        if (!formula.HasSlices)
        {
            problems.Add($"{path}.slices", string.Empty, "the number of slices is missing", "say how many slices or pieces the formula yields, as \"slices\": 12");
        }
        else if (formula.Slices is < 1 or > MostSlices)
        {
            problems.Add($"{path}.slices", formula.Slices, "slices cannot be", $"give 1 to {MostSlices}");
        }

        return formula.Slices;
    }

    private Domain.Oven? ReadOven(V1.Oven? oven, string path)
    {
        if (oven is null)
        {
            return null;
        }

        if (!(oven.Celsius is >= 50 and <= 350))
        {
            problems.Add($"{path}.celsius", oven.Celsius, "is no oven temperature", "give 50 to 350 °C");
        }

        return new Domain.Oven(new Celsius(oven.Celsius), oven.Fan);
    }

    private Percent? ReadBakeLoss(V1.Formula formula, string path)
    {
        if (!formula.HasBakeLossPercent)
        {
            return null;
        }

        if (!(formula.BakeLossPercent is >= 0 and <= MostBakeLossPercent))
        {
            problems.Add($"{path}.bakeLossPercent", formula.BakeLossPercent, "is no bake loss", $"give 0 to {MostBakeLossPercent} percent of the batter");
        }

        return new Percent(formula.BakeLossPercent);
    }
}
