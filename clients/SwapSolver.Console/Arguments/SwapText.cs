using SwapSolver.V1;

namespace SwapSolver.Console.Arguments;

/// <summary>Reads a proposed swap as it is typed: <c>X=Y</c> or <c>X=Y:GRAMS</c>, and <c>X:GRAMS=Y</c> for a part of X.</summary>
internal static class SwapText
{
    private const string Form = "Write X=Y or X=Y:GRAMS, as hazelnut-flour=sunflower-seed-flour:170, or X:GRAMS=Y where only so much of X goes; X=nothing leaves X out.";

    /// <summary>Reads one swap.</summary>
    public static Checked<Swap> Read(string text)
    {
        var equals = text.IndexOf('=', StringComparison.Ordinal);
        var outgoing = text[..Math.Max(0, equals)].Split(':', 2);
        if (outgoing[0].Trim().Length == 0)
        {
            return Checked<Swap>.Bad($"'{text}' is not a swap. {Form}");
        }

        var incoming = text[(equals + 1)..];
        var colon = incoming.IndexOf(':', StringComparison.Ordinal);
        var to = (colon < 0 ? incoming : incoming[..colon]).Trim();
        var swap = new Swap
        {
            From = IngredientId.ToResourceName(outgoing[0].Trim()),
            To = to is "" or "nothing" or "none" ? "" : IngredientId.ToResourceName(to),
        };
        if (outgoing.Length > 1)
        {
            var goes = Figure.Read(outgoing[1].Trim());
            if (!goes.IsGood)
            {
                return Checked<Swap>.Bad(goes.Problems);
            }

            swap.FromGrams = goes.Value;
        }

        return WithGrams(swap, text, incoming, colon);
    }

    private static Checked<Swap> WithGrams(Swap swap, string text, string incoming, int colon)
    {
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
