using System.CommandLine;
using Format = SwapSolver.V1.PrintCardRequest.Types.Format;

namespace SwapSolver.Console.Arguments;

/// <summary>How something is printed, of the formats that a verb offers.</summary>
internal sealed class FormatOption : Option<Format?>
{
    /// <summary>Names the option.</summary>
    /// <param name="description">What it does.</param>
    /// <param name="offered">The formats that the verb offers.</param>
    public FormatOption(string description, params Format[] offered)
        : base("--format")
    {
        Description = description;
        HelpName = "FORMAT";
        CustomParser = result => OptionText.One(result, "--format", text => Read(text, offered));
    }

    private static Checked<Format> Read(string text, Format[] offered)
    {
        foreach (var format in offered)
        {
            if (format.ToString().Equals(text.Trim(), StringComparison.OrdinalIgnoreCase))
            {
                return format;
            }
        }

        return Checked<Format>.Bad($"'{text}' is not known. Write one of {string.Join(", ", offered.Select(format => format.ToString().ToLowerInvariant()))}.");
    }
}
