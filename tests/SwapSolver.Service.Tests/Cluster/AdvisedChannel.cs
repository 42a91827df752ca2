using Grpc.Core;
using Grpc.Net.Client;
using Grpc.Net.Client.Balancer;
using Microsoft.Extensions.DependencyInjection;
using SwapSolver.Console.Asking;

namespace SwapSolver.Service.Tests.Cluster;

/// <summary>A client as the console is one: all services in turn, and the same call again where one went away or is full.</summary>
internal sealed class AdvisedChannel : IDisposable
{
    private readonly GrpcChannel channel;

    private readonly ServiceProvider parts;

    public AdvisedChannel(string key, params IEnumerable<int> ports)
    {
        parts = new ServiceCollection()
            .AddSingleton<ResolverFactory>(new StaticResolverFactory(_ => [.. ports.Select(port => new BalancerAddress("127.0.0.1", port))]))
            .BuildServiceProvider();
        channel = GrpcChannel.ForAddress("static:///kitchen", new GrpcChannelOptions
        {
            Credentials = ChannelCredentials.Insecure,
            ServiceProvider = parts,
            MaxReceiveMessageSize = null,
            ServiceConfig = CallAdvice.Config,
            InitialReconnectBackoff = CallAdvice.SoonestLook,
            MaxReconnectBackoff = CallAdvice.LatestLook,
        });
        Invoker = CallAdvice.WithKey(channel, key);
    }

    /// <summary>Calls through it.</summary>
    public CallInvoker Invoker { get; }

    public void Dispose()
    {
        channel.Dispose();
        parts.Dispose();
    }
}
