using System.Globalization;
using System.Text.Json;
using SwapSolver.Data.Files;
using SwapSolver.Data.Measures;
using SwapSolver.Data.Wording;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Lines;
using SwapSolver.Loaves;

namespace SwapSolver.Asking.Tests;

/// <summary>The reader of questions over the shipped data, and formulas: the shipped ones, and others of the tests alone.</summary>
internal static class TestQuestions
{
    /// <summary>An egg of the demo formulas, or its white [g].</summary>
    private static double EggGrams(Ingredient egg) => Line.UnitOf(egg, EggSize.LargeUs)!.Value.Value;

    private static readonly Dictionary<string, Formula> Formulas = [];

    private static readonly Lazy<QuestionReader> Opened = new(Open);

    public static QuestionReader Reader => Opened.Value;

    public static Understanding Read(string formula, string question) => Reader.Read(question, Formula(formula));

    public static Formula Formula(string id)
    {
        lock (Formulas)
        {
            if (!Formulas.TryGetValue(id, out var known))
            {
                var shipped = Path.Combine(AppContext.BaseDirectory, "data", "formulas", $"{id}.json");
                Formulas[id] = known = FromFile(File.Exists(shipped) ? shipped : Path.Combine(AppContext.BaseDirectory, "Reference", "formulas", $"{id}.json"));
            }

            return known;
        }
    }

    /// <summary>An understanding in one line, as the reference tables write it.</summary>
    public static string Words(Understanding told)
    {
        var parts = new List<string> { Kind(told.Kind) };
        Add(parts, "without", string.Join('+', told.Without.Select(wish => wish.Id)));
        Add(parts, "diet", told.Diet);
        Add(parts, "from", told.From);
        Add(parts, "part", Number(told.FromGrams));
        Add(parts, "also", told.AlsoFrom);
        Add(parts, "to", told.To);
        Add(parts, "alsoto", told.AlsoTo);
        Add(parts, "and", string.Join('+', told.AlsoSwaps.Select(swap => $"{swap.From}>{swap.To}")));
        Add(parts, "slices", Number(told.Slices));
        Add(parts, "mass", Number(told.MassGrams));
        Add(parts, "factor", Number(told.Factor));
        Add(parts, "tin", told.Tin is { } tin ? $"{Number(tin.Length.Value)}x{Number(tin.Width.Value)}x{Number(tin.Height.Value)}" : string.Empty);
        Add(parts, "targets", string.Join('+', told.Targets.Select(target =>
            target.Low is null && target.High is null ? target.Name : $"{target.Name}={Number(target.Low)}..{Number(target.High)}")));
        Add(parts, "oven", Number(told.OvenCelsius) + (told.Fan ? " fan" : string.Empty));
        Add(parts, "text", told.Text);
        return string.Join(' ', parts);
    }

    private static void Add(List<string> parts, string name, string value)
    {
        if (value.Length > 0)
        {
            parts.Add($"{name}={value}");
        }
    }

    private static string Number(double? value) => value?.ToString(CultureInfo.InvariantCulture) ?? string.Empty;

    private static string Kind(QuestionKind kind) => kind == QuestionKind.NotUnderstood ? "NOT_UNDERSTOOD" : kind.ToString().ToUpperInvariant();

    private static QuestionReader Open()
    {
        var sources = SourceKeys.Read(TestKitchen.Folder);
        var pantry = TestKitchen.Bakehouse.Pantry;
        var lines = new IngredientLines(MeasureFiles.Read(TestKitchen.Folder, sources, pantry), pantry);
        return new QuestionReader(QuestionFiles.Read(TestKitchen.Folder, sources), lines.Spoken, pantry, OvenDialFile.Read(TestKitchen.Folder, sources), TestKitchen.Bakehouse.Phrases);
    }

    private static Formula FromFile(string path)
    {
        using var file = JsonDocument.Parse(File.ReadAllText(path));
        var root = file.RootElement;
        var lines = root.GetProperty("lines").EnumerateArray().Select(line => new Line(
            TestKitchen.Ingredient(line.GetProperty("ingredient").GetString()!["ingredients/".Length..]),
            new Grams(line.TryGetProperty("grams", out var grams) ? grams.GetDouble() : line.GetProperty("count").GetDouble() * EggGrams(TestKitchen.Ingredient(line.GetProperty("ingredient").GetString()!["ingredients/".Length..]))),
            line.TryGetProperty("count", out _) ? EggSize.LargeUs : null));
        var said = root.GetProperty("shape");
        Shape? shape = said.TryGetProperty("tin", out var tin) ? new Tin(Side(tin, "lengthMm"), Side(tin, "widthMm"), Side(tin, "heightMm"))
            : said.TryGetProperty("pieces", out var pieces) ? new Pieces(pieces.GetProperty("count").GetInt32())
            : said.TryGetProperty("freeForm", out var free) ? new FreeForm(Side(free, "lengthMm"), Side(free, "widthMm"))
            : null;
        return new Formula(root.GetProperty("displayName").GetString()!, [.. lines], root.GetProperty("slices").GetInt32(), shape, null, null);
    }

    private static Millimetres Side(JsonElement tin, string name) => new(tin.GetProperty(name).GetDouble());
}
