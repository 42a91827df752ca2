using System.CommandLine;
using MeasureSystem = SwapSolver.V1.Line.Types.System;

namespace SwapSolver.Console.Arguments;

/// <summary>Whose cups, spoons and eggs are meant where a line does not say.</summary>
internal sealed class MeasureSystemOption : Option<MeasureSystem?>
{
    /// <summary>Names the option.</summary>
    public MeasureSystemOption(string of)
        : base("--system")
    {
        Description = $"Whose cups and spoons are meant{of}: US_CUSTOMARY, US_LABELLING, METRIC, AUSTRALIAN or UK_IMPERIAL.";
        HelpName = "SYSTEM";
        CustomParser = result => OptionText.One(
            result, "--system", text => EnumWord.Read<MeasureSystem>(V1.Line.Descriptor.EnumTypes.Single(one => one.Name == nameof(V1.Line.Types.System)), text));
    }
}
