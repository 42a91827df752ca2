using System.CommandLine;
using System.CommandLine.Parsing;

namespace SwapSolver.Console.Arguments;

/// <summary>An option that takes one whole figure; null where it is not given.</summary>
internal sealed class WholeFigureOption : Option<int?>
{
    /// <summary>Names the option and what its figure stands for.</summary>
    public WholeFigureOption(string name, string description)
        : base(name)
    {
        HelpName = "N";
        Description = description;
        CustomParser = Parse;
    }

    private int? Parse(ArgumentResult result) => OptionText.One(result, Name, Figure.ReadWhole);
}
