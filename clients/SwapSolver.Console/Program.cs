using SwapSolver.Console;
using SwapSolver.Console.Asking;

using var interruption = new Interruption();
try
{
    return await SwapSolverCommand.RunAsync(args, interruption.Token);
}
catch (OperationCanceledException) when (interruption.Token.IsCancellationRequested)
{
    ErrorOutput.Write("stopped before the answer came; asking again is safe.");
    return ExitCode.Interrupted;
}
catch (Exception fault)
{
    // The last resort: a baker gets one line, never a stack trace.
    ErrorOutput.Write($"something went wrong that should not have: {fault.GetType().Name}: {fault.Message.ReplaceLineEndings(" ")}");
    return ExitCode.Failed;
}
