using System.CommandLine;
using SwapSolver.V1;

namespace SwapSolver.Console.Arguments;

/// <summary>The options for the allergens that a packet states.</summary>
internal sealed class AllergenOptions
{
    private const string None = "none";

    private readonly Option<string?> contains = new("--contains")
    {
        Description = "Allergens that the packet states, as tree-nuts,milk; none where it names none. Without it they are not known.",
        HelpName = "A,B",
    };

    private readonly Option<string?> mayContain = new("--may-contain")
    {
        Description = "Allergens that may come in by cross-contact.",
        HelpName = "A,B",
    };

    /// <summary>Offers the options under a verb.</summary>
    public void AddTo(Command verb)
    {
        verb.Add(contains);
        verb.Add(mayContain);
        verb.Validators.Add(result =>
        {
            if (result.GetResult(mayContain) is not null && result.GetResult(contains) is null)
            {
                result.AddError($"--may-contain says what may be in it; say by --contains what is, or --contains {None}.");
            }
        });
    }

    /// <summary>What the packet states; null where nothing was stated.</summary>
    public StatedAllergens? Read(ParseResult parse)
    {
        return parse.GetValue(contains) is { } stated
            ? new StatedAllergens { Contains = { Words(stated) }, MayContain = { Words(parse.GetValue(mayContain) ?? None) } }
            : null;
    }

    private static string[] Words(string text) => text.Trim().Equals(None, StringComparison.OrdinalIgnoreCase)
        ? []
        : OptionText.SplitAtCommas(text);
}
