using SwapSolver.Lines;
using SwapSolver.V1;

namespace SwapSolver.Service.Translation;

/// <summary>Writes what a line says into the contract.</summary>
internal static class ConvertedLineWriter
{
    /// <summary>Decimals of grams that are written: finer than any kitchen scale.</summary>
    private const int Decimals = 2;

    /// <summary>One ingredient of a line.</summary>
    /// <param name="text">The line as it was given.</param>
    /// <param name="reading">What it says.</param>
    public static ConvertedLine Write(string text, LineReading reading)
    {
        var line = new ConvertedLine
        {
            Text = text,
            Ingredient = reading.Ingredient is { } ingredient ? ResourceName.Of(ingredient) : string.Empty,
            Problem = reading.Problem ?? string.Empty,
        };
        if (reading.Grams is { } grams)
        {
            line.Grams = Math.Round(grams.Typical.Value, Decimals);
            line.LowGrams = Math.Round(grams.Low.Value, Decimals);
            line.HighGrams = Math.Round(grams.High.Value, Decimals);
        }

        line.Assumed.AddRange(reading.Assumed);
        line.Candidates.AddRange(reading.Candidates.Select(candidate => new NameCandidate
        {
            Ingredient = ResourceName.Of(candidate.Ingredient),
            Score = Math.Round(candidate.Score, Decimals),
        }));
        return line;
    }
}
