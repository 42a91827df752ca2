using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Verbs;

namespace SwapSolver.Console;

/// <summary>The command line as a whole: the shared options and the list of verbs.</summary>
internal static class SwapSolverCommand
{
    /// <summary>Reads the command line and does what it asks.</summary>
    /// <returns>The exit code.</returns>
    public static async Task<int> RunAsync(string[] arguments, CancellationToken cancel)
    {
        // A leading @ is part of a file name here, not a file of more arguments.
        var parse = Create().Parse(arguments, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (parse.Action is ParseErrorAction)
        {
            UsageErrors.Write(parse);
            return ExitCode.BadInput;
        }

        // Ctrl-C is handled in Interruption and faults in Program, so the library does neither.
        var invocation = new InvocationConfiguration { EnableDefaultExceptionHandler = false, ProcessTerminationTimeout = null };
        return await parse.InvokeAsync(invocation, cancel);
    }

    private static void CheckEach(Command command, SharedOptions shared)
    {
        command.Validators.Add(shared.Check);
        foreach (var inner in command.Subcommands)
        {
            CheckEach(inner, shared);
        }
    }

    private static RootCommand Create()
    {
        var shared = new SharedOptions();
        var errand = new Errand(shared);
        var root = new RootCommand("Weighed formulas and swaps that balance: asks SwapSolver and prints the answer.")
        {
            Balance.Create(errand),
            Variant.Create(errand),
            Check.Create(errand),
            Replace.Create(errand),
            Resize.Create(errand),
            Reformulate.Create(errand),
            Frontier.Create(errand),
            Chart.Create(errand),
            Rise.Create(errand),
            Bake.Create(errand),
            Label.Create(errand),
            Card.Create(errand),
            Verbs.Convert.Create(errand),
            AnswerQuestions.Create(errand),
            Pantry.Create(errand),
            Formulas.Create(errand),
            Trials.Create(errand),
            Keys.Create(errand),
            Jobs.Create(errand),
            WholeRecords.Create(errand),
        };
        shared.AddTo(root);
        CheckEach(root, shared);
        foreach (var option in root.Options)
        {
            if (option is HelpOption { Action: HelpAction help })
            {
                option.Action = new HelpWithExample(help);
            }
        }

        return root;
    }
}
