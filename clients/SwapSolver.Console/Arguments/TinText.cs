using SwapSolver.V1;

namespace SwapSolver.Console.Arguments;

/// <summary>Reads a tin as it is typed: <c>LxWxH</c> in millimetres.</summary>
internal static class TinText
{
    private static readonly char[] Times = ['x', 'X', '×'];

    /// <summary>Reads the inner measures of a tin.</summary>
    public static Checked<Tin> Read(string text)
    {
        var sides = text.Split(Times, StringSplitOptions.TrimEntries);
        if (sides.Length != 3)
        {
            return Checked<Tin>.Bad($"'{text}' is not a tin. Write LENGTHxWIDTHxHEIGHT in millimetres, as 300x110x65.");
        }

        var read = Array.ConvertAll(sides, Figure.Read);
        var problems = read.SelectMany(side => side.Problems).ToList();
        return problems.Count > 0
            ? Checked<Tin>.Bad(problems)
            : new Tin { LengthMm = read[0].Value, WidthMm = read[1].Value, HeightMm = read[2].Value };
    }
}
