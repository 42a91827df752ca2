using System.Collections.Immutable;
using System.Globalization;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Lines;
using SwapSolver.Service.Faults;
using Domain = SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Service.Translation;

/// <summary>Reads lines of a formula that give a household measure or words in place of grams.</summary>
/// <param name="lines">Reads lines of text.</param>
/// <param name="system">Whose cups stand in the formula's kitchen; null where that is not said.</param>
/// <param name="problems">What is wrong.</param>
internal sealed class MeasureReader(IngredientLines lines, MeasureSystem? system, ProblemList problems)
{
    private const double MostGrams = 100_000;

    /// <summary>The lines that a text says, more than one where a plus joins; none where there is a problem.</summary>
    public ImmutableArray<ReadLine> ReadText(V1.Line line, string path)
    {
        if (line.HasGrams || line.HasCount || line.HasAmount || line.HasUnit || !string.IsNullOrEmpty(line.Ingredient))
        {
            problems.Add($"{path}.text", line.Text, "stands beside other amounts or an ingredient", "give the text alone");
            return [];
        }

        var readings = lines.Read(line.Text, system);
        foreach (var reading in readings.Where(reading => reading.Problem is not null))
        {
            problems.Add($"{path}.text", line.Text, $"is not read: {reading.Problem}", WayOut(reading));
        }

        return readings.All(reading => reading.Problem is null) ? [.. readings.Select(reading => Told(line.Text, reading))] : [];
    }

    /// <summary>The line of an amount and a unit; none where there is a problem.</summary>
    public ImmutableArray<ReadLine> ReadAmount(V1.Line line, Ingredient ingredient, string path)
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

        var weighed = lines.Weigh(Amount.Of(line.Amount), line.Unit, ingredient, system);
        if (weighed.Grams is not { } grams)
        {
            return Refuse(line, path, weighed.Problem!);
        }

        return grams.Typical.Value <= MostGrams
            ? [Told(Words(line.Amount, line.Unit, ingredient), weighed, ingredient)]
            : Refuse(line, path, $"it is more than {MostGrams} g");
    }

    /// <summary>The line of so many eggs whose size is not said; null where there is a problem.</summary>
    public ReadLine? ReadCount(double count, Ingredient ingredient, string path)
    {
        var weighed = lines.Count(Amount.Of(count), ingredient, system);
        if (weighed.Problem is null)
        {
            return Told(Words(count, string.Empty, ingredient), weighed, ingredient);
        }

        problems.Add($"{path}.count", count, $"cannot be weighed: {weighed.Problem}", "say the 'size', or give 'grams'");
        return null;
    }

    private static string Words(double amount, string unit, Ingredient ingredient) =>
        string.Join(' ', new[] { amount.ToString(CultureInfo.InvariantCulture), unit, ingredient.Name }.Where(word => word.Length > 0));

    private static ReadLine Told(string words, Weighed weighed, Ingredient ingredient) =>
        Told(words, new LineReading(ingredient, weighed.Grams, weighed.Egg, weighed.Assumed, [], null));

    private static ReadLine Told(string words, LineReading reading) => new(
        new Domain.Line(reading.Ingredient!, reading.Grams!.Value.Typical, reading.Egg), ConvertedLineWriter.Write(words, reading), reading.Grams);

    private ImmutableArray<ReadLine> Refuse(V1.Line line, string path, string problem)
    {
        problems.Add($"{path}.unit", line.Unit, $"cannot be weighed: {problem}", "or weigh it and give 'grams'");
        return [];
    }

    private static string WayOut(LineReading reading) => reading.Candidates.IsEmpty
        ? "weigh it and give 'ingredient' and 'grams'"
        : $"did you mean {string.Join(", ", reading.Candidates.Select(candidate => candidate.Ingredient.Id))}?";
}
