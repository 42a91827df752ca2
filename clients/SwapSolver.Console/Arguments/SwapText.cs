using SwapSolver.V1;

namespace SwapSolver.Console.Arguments;

/// <summary>Reads a proposed swap as it is typed: <c>X=Y</c> or <c>X=Y:GRAMS</c>.</summary>
internal static class SwapText
{
    private const string Form = "Write X=Y or X=Y:GRAMS, as hazelnut-flour=sunflower-seed-flour:170; X=nothing leaves X out.";

    /// <summary>Reads one swap.</summary>
    public static Checked<Swap> Read(string text)
    {
        var equals = text.IndexOf('=', StringComparison.Ordinal);
        if (equals < 0 || text[..equals].Trim().Length == 0)
        {
            return Checked<Swap>.Bad($"'{text}' is not a swap. {Form}");
        }

        var incoming = text[(equals + 1)..];
        var colon = incoming.IndexOf(':', StringComparison.Ordinal);
        var to = (colon < 0 ? incoming : incoming[..colon]).Trim();
        var swap = new Swap
        {
            From = IngredientId.ToResourceName(text[..equals]),
            To = to is "" or "nothing" or "none" ? "" : IngredientId.ToResourceName(to),
        };
        if (colon < 0)
        {
            return swap;
        }

        if (swap.To.Length == 0)
        {
            return Checked<Swap>.Bad($"'{text}' weighs what is left out. {Form}");
        }

        return Figure.Read(incoming[(colon + 1)..].Trim()).Then(grams =>
        {
            swap.Grams = grams;
            return swap;
        });
    }
}
