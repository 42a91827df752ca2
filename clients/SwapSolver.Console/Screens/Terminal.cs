namespace SwapSolver.Console.Screens;

/// <summary>Where the answer is shown.</summary>
/// <param name="Width">Columns that a line may take.</param>
/// <param name="Colour">Whether colour and weight may be used.</param>
internal sealed record Terminal(int Width, bool Colour)
{
    // Beyond it an eye loses the row.
    private const int Widest = 100;

    private const int Narrowest = 20;

    /// <summary>Looks at standard output and at what the caller's environment asks for.</summary>
    public static Terminal Detect(bool noColour)
    {
        if (System.Console.IsOutputRedirected)
        {
            return new Terminal(Widest, Colour: false);
        }

        var width = System.Console.WindowWidth;
        var plain = noColour
            || Environment.GetEnvironmentVariable("NO_COLOR") is { Length: > 0 }
            || Environment.GetEnvironmentVariable("TERM") == "dumb";
        return new Terminal(width <= 0 ? Widest : Math.Clamp(width, Narrowest, Widest), !plain);
    }
}
