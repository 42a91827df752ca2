using System.Diagnostics;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Microsoft.Extensions.Hosting;
using SwapSolver.Solving.Models;

namespace SwapSolver.Service.Tests.Running;

/// <summary>Builds a host with another solver, through the event that the hosting library raises while it builds; the
/// service itself needs no door for tests.</summary>
internal static class OtherSolver
{
    private const string Listener = "Microsoft.Extensions.Hosting";

    private const string Building = "HostBuilding";

    public static T In<T>(Func<T> build, ISolver solver)
    {
        using var watch = DiagnosticListener.AllListeners.Subscribe(new Watcher<DiagnosticListener>(Environment.CurrentManagedThreadId, listener =>
        {
            if (listener.Name == Listener)
            {
                // Ends with its listener, which lives for one build.
                listener.Subscribe(new Watcher<KeyValuePair<string, object?>>(Environment.CurrentManagedThreadId, raised =>
                {
                    if (raised is { Key: Building, Value: IHostBuilder host })
                    {
                        host.ConfigureServices(services => services.Replace(ServiceDescriptor.Singleton(solver)));
                    }
                }));
            }
        }));
        return build();
    }

    /// <summary>Hears only what is raised on its own thread: other hosts may be built at the same time.</summary>
    private sealed class Watcher<T>(int thread, Action<T> hear) : IObserver<T>
    {
        public void OnNext(T value)
        {
            if (Environment.CurrentManagedThreadId == thread)
            {
                hear(value);
            }
        }

        public void OnCompleted()
        {
        }

        public void OnError(Exception error) => throw error;
    }
}
