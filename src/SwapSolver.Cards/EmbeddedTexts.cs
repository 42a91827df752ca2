using Fluid;

namespace SwapSolver.Cards;

/// <summary>The templates that are built into this room.</summary>
internal static class EmbeddedTexts
{
    private static readonly FluidParser Parser = new();

    /// <summary>A template.</summary>
    public static IFluidTemplate Template(string name) => Parser.TryParse(Read(name), out var template, out var fault)
        ? template
        : throw new InvalidOperationException($"the template {name} cannot be read: {fault}");

    /// <summary>A text as it stands.</summary>
    public static string Read(string name)
    {
        using var stream = typeof(EmbeddedTexts).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"the text {name} is not built in");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
