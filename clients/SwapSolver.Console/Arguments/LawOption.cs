using System.CommandLine;
using Law = SwapSolver.V1.Label.Types.Law;

namespace SwapSolver.Console.Arguments;

/// <summary>Whose law a label follows.</summary>
internal sealed class LawOption : Option<Law?>
{
    /// <summary>Names the option.</summary>
    /// <param name="name">As <c>--law</c>.</param>
    public LawOption(string name)
        : base(name)
    {
        Description = "Whose law the label follows: us, eu, uk, au-nz or ca.";
        HelpName = "LAW";
        CustomParser = result => OptionText.One(
            result, name, text => EnumWord.Read<Law>(V1.Label.Descriptor.EnumTypes.Single(one => one.Name == nameof(Law)), text));
    }
}
