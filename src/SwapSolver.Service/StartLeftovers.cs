namespace SwapSolver.Service;

/// <summary>What reading the data and building the service left behind is given back once the start is over: it is a good part of
/// what a service at rest would hold, and no answer needs it.</summary>
internal static class StartLeftovers
{
    /// <summary>A service that a console starts for one call is gone by then.</summary>
    private static readonly TimeSpan AfterStart = TimeSpan.FromSeconds(5);

    /// <summary>Waits until the start is over and gives it back.</summary>
    /// <param name="stopping">The service ends.</param>
    public static async Task GiveBack(CancellationToken stopping)
    {
        await Task.Delay(AfterStart, stopping).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        if (!stopping.IsCancellationRequested)
        {
            GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive, blocking: true, compacting: true);
        }
    }
}
