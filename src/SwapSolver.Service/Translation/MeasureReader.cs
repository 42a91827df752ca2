using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Lines;
using SwapSolver.Service.Faults;
using Domain = SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Service.Translation;

/// <summary>Reads lines of a formula that give a household measure or words in place of grams.</summary>
internal sealed class MeasureReader(IngredientLines lines, ProblemList problems)
{
    private const double MostGrams = 100_000;

    /// <summary>The lines that a text says, more than one where a plus joins; none where there is a problem.</summary>
    public ImmutableArray<Domain.Line> ReadText(V1.Line line, string path)
    {
        if (line.HasGrams || line.HasCount || line.HasAmount || line.HasUnit || !string.IsNullOrEmpty(line.Ingredient))
        {
            problems.Add($"{path}.text", line.Text, "stands beside other amounts or an ingredient", "give the text alone");
            return [];
        }

        var readings = lines.Read(line.Text, null);
        foreach (var reading in readings.Where(reading => reading.Problem is not null))
        {
            problems.Add($"{path}.text", line.Text, $"is not read: {reading.Problem}", WayOut(reading));
        }

        return readings.All(reading => reading.Problem is null)
            ? [.. readings.Select(reading => new Domain.Line(reading.Ingredient!, reading.Grams!.Value.Typical, reading.Egg))]
            : [];
    }

    /// <summary>The line of an amount and a unit; none where there is a problem.</summary>
    public ImmutableArray<Domain.Line> ReadAmount(V1.Line line, Ingredient ingredient, string path)
    {
        if (line.HasGrams || line.HasCount)
        {
            problems.Add($"{path}.amount", line.Amount, "stands beside grams or a count", "give one of them");
            return [];
        }

        if (!line.HasAmount || !(line.Amount is > 0 and <= MostGrams))
        {
            problems.Add($"{path}.amount", line.Amount, "is no amount", $"give more than 0, at most {MostGrams}");
            return [];
        }

        var weighed = lines.Weigh(Amount.Of(line.Amount), line.Unit, ingredient, null);
        if (weighed.Grams is not { } grams)
        {
            return Refuse(line, path, weighed.Problem!);
        }

        return grams.Typical.Value <= MostGrams
            ? [new Domain.Line(ingredient, grams.Typical, weighed.Egg)]
            : Refuse(line, path, $"it is more than {MostGrams} g");
    }

    private ImmutableArray<Domain.Line> Refuse(V1.Line line, string path, string problem)
    {
        problems.Add($"{path}.unit", line.Unit, $"cannot be weighed: {problem}", "or weigh it and give 'grams'");
        return [];
    }

    private static string WayOut(LineReading reading) => reading.Candidates.IsEmpty
        ? "weigh it and give 'ingredient' and 'grams'"
        : $"did you mean {string.Join(", ", reading.Candidates.Select(candidate => candidate.Ingredient.Id))}?";
}
