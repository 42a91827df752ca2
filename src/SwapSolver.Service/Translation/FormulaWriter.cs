using SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Service.Translation;

/// <summary>Writes a formula of the kitchen in the contract's words, every line with its grams.</summary>
internal static class FormulaWriter
{
    /// <summary>The formula.</summary>
    public static V1.Formula Write(Formula formula)
    {
        var written = new V1.Formula { DisplayName = formula.DisplayName, Slices = formula.Slices, Description = formula.Description };
        written.Lines.AddRange(formula.Lines.Select(Write));
        written.Steps.AddRange(formula.Steps);
        if (formula.BakeLoss is { } loss)
        {
            written.BakeLossPercent = loss.Value;
        }

        if (formula.Oven is { } oven)
        {
            written.Oven = new V1.Oven { Celsius = oven.Dial.Value, Fan = oven.Fan };
        }

        written.Shape = Write(formula.Shape);
        return written;
    }

    private static V1.Line Write(Line line)
    {
        var written = new V1.Line { Ingredient = ResourceName.Of(line.Ingredient), Grams = line.Grams.Value, DisplayName = line.Ingredient.Name };
        if (line.Size is { } size && line.Count is { } count)
        {
            written.Count = Math.Round(count, 6);
            written.Size = EggSizes.Write(size);
        }

        return written;
    }

    private static V1.Shape? Write(Shape? shape)
    {
        switch (shape)
        {
            case Tin tin:
                return new V1.Shape
                {
                    Tin = new V1.Tin { LengthMm = tin.Length.Value, WidthMm = tin.Width.Value, HeightMm = tin.Height.Value },
                };
            case Pieces pieces:
                return new V1.Shape { Pieces = new V1.Pieces { Count = pieces.Count } };
            case FreeForm free:
                var written = new V1.FreeForm();
                if (free.Length is { } length)
                {
                    written.LengthMm = length.Value;
                }

                if (free.Width is { } width)
                {
                    written.WidthMm = width.Value;
                }

                return new V1.Shape { FreeForm = written };
            default:
                return null;
        }
    }
}
