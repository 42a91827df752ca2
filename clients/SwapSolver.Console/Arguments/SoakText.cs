using SwapSolver.V1;

namespace SwapSolver.Console.Arguments;

/// <summary>Reads a soaking test as it is typed: <c>FOOD=DRY:DRAINED</c>.</summary>
internal static class SoakText
{
    private const string Form = "Write FOOD=DRY:DRAINED in grams, as coconut-flour=10:48.";

    /// <summary>Reads one test.</summary>
    public static Checked<SoakedBag> Read(string text)
    {
        var (equals, colon) = (text.IndexOf('=', StringComparison.Ordinal), text.LastIndexOf(':'));
        if (equals <= 0 || colon < equals)
        {
            return Checked<SoakedBag>.Bad($"'{text}' is not a soaking test. {Form}");
        }

        var (dry, drained) = (Figure.Read(text[(equals + 1)..colon].Trim()), Figure.Read(text[(colon + 1)..].Trim()));
        return dry.IsGood && drained.IsGood
            ? new SoakedBag { Ingredient = IngredientId.ToResourceName(text[..equals]), DryG = dry.Value, DrainedG = drained.Value }
            : Checked<SoakedBag>.Bad([.. dry.Problems.Concat(drained.Problems).Select(problem => $"{problem} {Form}")]);
    }
}
