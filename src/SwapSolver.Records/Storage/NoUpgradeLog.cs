using DbUp.Engine.Output;

namespace SwapSolver.Records.Storage;

/// <summary>The migration library would write to standard output, which belongs to the answer.</summary>
internal sealed class NoUpgradeLog : IUpgradeLog
{
    public void LogTrace(string format, params object[] args)
    {
    }

    public void LogDebug(string format, params object[] args)
    {
    }

    public void LogInformation(string format, params object[] args)
    {
    }

    public void LogWarning(string format, params object[] args)
    {
    }

    public void LogError(string format, params object[] args)
    {
    }

    public void LogError(Exception ex, string format, params object[] args)
    {
    }
}
