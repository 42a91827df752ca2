using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>Slices, shape and oven of a formula on one line.</summary>
internal static class BakeLine
{
    /// <summary>Shows what the formula says of it; nothing where it says nothing.</summary>
    public static void Show(Screen screen, Formula formula)
    {
        var words = new List<string>();
        if (formula.HasSlices)
        {
            words.Add($"{formula.Slices} {(formula.Slices == 1 ? "slice" : "slices")}");
        }

        if (ShapeWords(formula.Shape) is { } shape)
        {
            words.Add(shape);
        }

        if (formula.Oven is { } oven)
        {
            words.Add($"oven at {oven.Celsius} °C {(oven.Fan ? "with fan" : "without fan")}");
        }

        if (formula.HasBakeLossPercent)
        {
            words.Add($"loses {formula.BakeLossPercent:0.#} % in the oven");
        }

        if (words.Count > 0)
        {
            screen.Item($"{string.Join("; ", words)}");
        }
    }

    private static string? ShapeWords(Shape? shape) => shape?.KindCase switch
    {
        Shape.KindOneofCase.Tin => $"tin of {shape.Tin.LengthMm:0.#} x {shape.Tin.WidthMm:0.#} x {shape.Tin.HeightMm:0.#} mm",
        Shape.KindOneofCase.FreeForm when shape.FreeForm is { HasLengthMm: true, HasWidthMm: true } form =>
            $"set on a tray, {form.LengthMm:0.#} x {form.WidthMm:0.#} mm",
        Shape.KindOneofCase.FreeForm => "set on a tray",
        Shape.KindOneofCase.Pieces => $"{shape.Pieces.Count} {(shape.Pieces.Count == 1 ? "piece" : "pieces")}",
        _ => null,
    };
}
