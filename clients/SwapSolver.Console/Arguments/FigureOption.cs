using System.CommandLine;
using System.CommandLine.Parsing;

namespace SwapSolver.Console.Arguments;

/// <summary>An option that takes one figure; null where it is not given.</summary>
internal sealed class FigureOption : Option<double?>
{
    /// <summary>Names the option and what its figure stands for.</summary>
    public FigureOption(string name, string unit, string description)
        : base(name)
    {
        HelpName = unit;
        Description = description;
        CustomParser = Parse;
    }

    private double? Parse(ArgumentResult result) => OptionText.One(result, Name, Figure.Read);
}
