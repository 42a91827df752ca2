namespace SwapSolver.Console.Arguments;

/// <summary>Reads a known bake as it is typed: <c>FORMULA:MINUTES:CELSIUS</c>.</summary>
/// <param name="Formula">The formula file, or the name of a stored formula.</param>
/// <param name="Minutes">How long it took [min].</param>
/// <param name="Celsius">Core temperature that it was baked to [°C].</param>
internal sealed record AnchorText(string Formula, double Minutes, double Celsius)
{
    private const string Form = "Write FORMULA:MINUTES:CELSIUS, as data/formulas/hazelnut-tin-loaf.json:68:96.";

    /// <summary>Reads one known bake. The formula's own path may hold colons: the last two part it.</summary>
    public static Checked<AnchorText> Read(string text)
    {
        var second = text.LastIndexOf(':');
        var first = second > 0 ? text.LastIndexOf(':', second - 1) : -1;
        if (first <= 0)
        {
            return Checked<AnchorText>.Bad($"'{text}' is not a known bake. {Form}");
        }

        var (minutes, celsius) = (Figure.Read(text[(first + 1)..second].Trim()), Figure.Read(text[(second + 1)..].Trim()));
        return minutes.IsGood && celsius.IsGood
            ? new AnchorText(text[..first], minutes.Value, celsius.Value)
            : Checked<AnchorText>.Bad([.. minutes.Problems.Concat(celsius.Problems).Select(problem => $"{problem} {Form}")]);
    }
}
