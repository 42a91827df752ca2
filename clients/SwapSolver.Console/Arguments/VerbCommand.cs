using System.CommandLine;

namespace SwapSolver.Console.Arguments;

/// <summary>A verb together with one example of its use, which help and usage errors show.</summary>
internal sealed class VerbCommand(string name, string description, string example) : Command(name, description)
{
    /// <summary>A whole command line that works.</summary>
    public string Example { get; } = example;
}
