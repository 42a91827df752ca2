using System.CommandLine;
using System.CommandLine.Parsing;

namespace SwapSolver.Console.Arguments;

/// <summary>An option that takes one figure; null where it is not given.</summary>
internal sealed class FigureOption : Option<double?>
{
    private readonly Func<double, string?> objection;

    /// <summary>Names the option and what its figure stands for.</summary>
    /// <param name="name">The option.</param>
    /// <param name="unit">What its figure stands for.</param>
    /// <param name="description">What it does.</param>
    /// <param name="objection">What is wrong with a figure; null where nothing is.</param>
    public FigureOption(string name, string unit, string description, Func<double, string?>? objection = null)
        : base(name)
    {
        this.objection = objection ?? (static _ => null);
        HelpName = unit;
        Description = description;
        CustomParser = Parse;
    }

    private double? Parse(ArgumentResult result)
    {
        var figure = OptionText.One(result, Name, Figure.Read);
        if (figure is { } read && objection(read) is { } wrong)
        {
            result.AddError($"{Name}: {wrong}");
        }

        return figure;
    }
}
