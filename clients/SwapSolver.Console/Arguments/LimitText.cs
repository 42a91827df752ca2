using SwapSolver.V1;

namespace SwapSolver.Console.Arguments;

/// <summary>Reads a limit as it is typed: <c>BALANCE=LOW..HIGH</c>.</summary>
internal static class LimitText
{
    private const string Form = "Write BALANCE=LOW..HIGH, as net-carbohydrate=..3, hydration=0.9..1.1 or ingredients/butter=..80.";

    /// <summary>Reads one limit; either side may be empty, not both.</summary>
    public static Checked<ReadingLimit> Read(string text)
    {
        var equals = text.IndexOf('=', StringComparison.Ordinal);
        var dots = text.IndexOf("..", StringComparison.Ordinal);
        if (equals < 1 || dots < equals)
        {
            return Checked<ReadingLimit>.Bad($"'{text}' is not a limit. {Form}");
        }

        var low = text[(equals + 1)..dots].Trim();
        var high = text[(dots + 2)..].Trim();
        if (low.Length == 0 && high.Length == 0)
        {
            return Checked<ReadingLimit>.Bad($"'{text}' limits nothing. {Form}");
        }

        var limit = new ReadingLimit { Balance = text[..equals].Trim() };
        var problems = new List<string>();
        ReadSide(low, figure => limit.Low = figure, problems);
        ReadSide(high, figure => limit.High = figure, problems);
        return problems.Count == 0 ? limit : Checked<ReadingLimit>.Bad(problems);
    }

    private static void ReadSide(string text, Action<double> set, List<string> problems)
    {
        if (text.Length == 0)
        {
            return;
        }

        var figure = Figure.Read(text);
        problems.AddRange(figure.Problems);
        if (figure.IsGood)
        {
            set(figure.Value);
        }
    }
}
