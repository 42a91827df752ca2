using SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Benchmarks.Calls;

/// <summary>A formula as a caller writes it.</summary>
internal static class FormulaMessage
{
    /// <summary>The formula in grams and counts.</summary>
    public static V1.Formula Of(Formula formula)
    {
        var message = new V1.Formula { DisplayName = formula.DisplayName, Slices = formula.Slices };
        message.Lines.AddRange(formula.Lines.Select(line => line.Count is { } count
            ? new V1.Line { Ingredient = $"ingredients/{line.Ingredient.Id}", Count = count, Size = V1.Line.Types.Size.LargeUs }
            : new V1.Line { Ingredient = $"ingredients/{line.Ingredient.Id}", Grams = line.Grams.Value }));
        return message;
    }
}
