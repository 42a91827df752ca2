using SwapSolver.V1;

namespace SwapSolver.Console.Arguments;

/// <summary>Reads a target as it is typed: <c>NAME=LOW..HIGH</c>, or a word that says by itself how far.</summary>
internal static class TargetText
{
    /// <summary>Reads one target.</summary>
    public static Checked<Target> Read(string text)
    {
        if (!text.Contains('=', StringComparison.Ordinal))
        {
            return text.Trim().Length > 0
                ? new Target { Name = text.Trim() }
                : Checked<Target>.Bad("a target is empty. Write NAME=LOW..HIGH, as net-carbohydrate=..1, or a word, as softer.");
        }

        return LimitText.Read(text).Then(limit =>
        {
            var target = new Target { Name = limit.Balance };
            if (limit.HasLow)
            {
                target.Low = limit.Low;
            }

            if (limit.HasHigh)
            {
                target.High = limit.High;
            }

            return target;
        });
    }
}
