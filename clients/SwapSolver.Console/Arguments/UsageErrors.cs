using System.CommandLine;
using System.CommandLine.Parsing;
using SwapSolver.Console.Asking;

namespace SwapSolver.Console.Arguments;

/// <summary>Says on standard error what is wrong with a command line, and how to do it right.</summary>
internal static class UsageErrors
{
    /// <summary>Writes every fault of the command line.</summary>
    public static void Write(ParseResult parse)
    {
        foreach (var words in Faults(parse).Distinct())
        {
            ErrorOutput.Write(words);
        }

        ErrorOutput.WriteMore(parse.CommandResult.Command is VerbCommand verb
            ? $"Example: {verb.Example}"
            : $"Verbs: {string.Join(", ", parse.CommandResult.Command.Subcommands.Select(known => known.Name))}");
        ErrorOutput.WriteMore($"Help: {PathOf(parse.CommandResult)} --help");
    }

    private static IEnumerable<string> Faults(ParseResult parse)
    {
        var command = parse.CommandResult;
        var unknown = parse.UnmatchedTokens;
        var options = unknown.Where(UnknownWord.IsOption).ToList();
        if (options.Count > 0)
        {
            // The words behind an unknown option are its values, most likely: one fault, not two.
            return [.. options.Select(word => UnknownWord.Option(word, command)), .. Others(parse)];
        }

        if (command.Command is not VerbCommand)
        {
            return [unknown.Count > 0 ? UnknownWord.Plain(unknown[0], command) : "a verb is missing."];
        }

        return [.. unknown.Select(word => UnknownWord.Plain(word, command)), .. Others(parse)];
    }

    // What the library says of words it cannot place is said better above.
    private static IEnumerable<string> Others(ParseResult parse) => parse.Errors
        .Select(error => error.Message)
        .Where(message => !parse.UnmatchedTokens.Any(word => message.Contains($"'{word}'", StringComparison.Ordinal)));

    private static string PathOf(CommandResult command)
    {
        var name = command.Command is RootCommand ? "swapsolver" : command.Command.Name;
        return command.Parent is CommandResult parent ? $"{PathOf(parent)} {name}" : name;
    }
}
