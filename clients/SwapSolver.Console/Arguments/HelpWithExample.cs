using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace SwapSolver.Console.Arguments;

/// <summary>Help as the library prints it, with the verb's example and the exit codes below.</summary>
internal sealed class HelpWithExample(HelpAction help) : SynchronousCommandLineAction
{
    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        help.MaxWidth = 100;
        help.Invoke(parseResult);
        var output = parseResult.InvocationConfiguration.Output;
        if (parseResult.CommandResult.Command is VerbCommand verb)
        {
            output.WriteLine("Example:");
            output.WriteLine($"  {verb.Example}");
            output.WriteLine();
        }

        output.WriteLine("Exit codes:");
        output.WriteLine("  0 an answer; 1 a true answer that is 'no'; 2 wrong usage or bad input;");
        output.WriteLine("  3 the service failed or could not be reached; 130 stopped with Ctrl-C");

        return ExitCode.Answer;
    }
}
