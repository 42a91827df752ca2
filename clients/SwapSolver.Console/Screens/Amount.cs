using System.Globalization;
using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>Amounts as they stand on the bench: grams, and eggs by the piece.</summary>
internal static class Amount
{
    /// <summary>Grams without decimals where they are whole, else with one or two, as the service rounded them.</summary>
    public static string Grams(double grams) => grams.ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>What is counted with its grams, else the grams: '4 eggs (200 g)' or '120 g'.</summary>
    public static string Of(string ingredient, double grams, double? count) => (grams, count) switch
    {
        (0, _) => "0 g",
        (_, > 0 and double pieces) => $"{Count(ingredient, pieces)} ({Grams(grams)} g)",
        _ => $"{Grams(grams)} g",
    };

    /// <summary>The count of a line with the size of its eggs, as '4 eggs, large EU'; empty where nothing is counted.</summary>
    public static string Count(Line line)
    {
        if (!line.HasCount)
        {
            return "";
        }

        var size = line.HasSize ? SizeWords(line.Size) : "";
        return Count(line.Ingredient, line.Count) + (size.Length > 0 ? $", {size}" : "");
    }

    private static string Count(string ingredient, double pieces)
    {
        var words = IngredientName.Id(ingredient).Split('-');
        var what = words.Contains("white") ? "white" : words.Contains("yolk") ? "yolk" : words.Contains("egg") ? "egg" : "piece";
        return pieces.ToString("0.##", CultureInfo.InvariantCulture) + $" {what}{(pieces == 1 ? "" : "s")}";
    }

    private static string SizeWords(Line.Types.Size size)
    {
        var name = Line.Descriptor.EnumTypes[0].FindValueByNumber((int)size)?.Name ?? "";
        var words = name.Split('_');
        return size == Line.Types.Size.Unspecified || words.Length < 2
            ? ""
            : $"{string.Join(' ', words[..^1]).ToLowerInvariant()} {words[^1]}";
    }
}
