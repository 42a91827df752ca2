using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Cards;

/// <summary>A short word that changes whenever what is baked changes: two cards with one fingerprint are of one formula.</summary>
internal static class Fingerprint
{
    private const int Letters = 10;

    /// <summary>The fingerprint of a formula; its names and descriptions do not count.</summary>
    public static string Of(Formula formula)
    {
        var text = new StringBuilder();
        foreach (var line in formula.Lines)
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"{line.Ingredient.Id} {line.Grams.Value:R} {line.Size}");
        }

        text.AppendLine(CultureInfo.InvariantCulture, $"{formula.Slices} {formula.Shape} {formula.Oven} {formula.BakeLoss}");
        foreach (var step in formula.Steps)
        {
            text.AppendLine(step);
        }

        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString().ReplaceLineEndings("\n"))))[..Letters];
    }
}
