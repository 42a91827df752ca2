using System.CommandLine.Parsing;

namespace SwapSolver.Console.Arguments;

/// <summary>Says what is wrong with a word that the command line has no place for.</summary>
internal static class UnknownWord
{
    /// <summary>Whether a word means to be an option; - alone is standard input.</summary>
    public static bool IsOption(string word) => word.Length > 1 && word.StartsWith('-');

    /// <summary>An option that the command does not take.</summary>
    public static string Option(string word, CommandResult command)
    {
        var name = word.Split('=')[0];
        var known = new List<string>();
        for (var result = command; result is not null; result = result.Parent as CommandResult)
        {
            known.AddRange(result.Command.Options.Select(option => option.Name));
        }

        return $"'{name}' is not an option here.{NearestNames.Suggest(name, known)}";
    }

    /// <summary>A verb that is not there, or a word too many behind one.</summary>
    public static string Plain(string word, CommandResult command) => command.Command.Subcommands.Count == 0
        ? $"'{word}' is one word too many here."
        : $"'{word}' is not a verb here.{NearestNames.Suggest(word, command.Command.Subcommands.Select(verb => verb.Name))}";
}
