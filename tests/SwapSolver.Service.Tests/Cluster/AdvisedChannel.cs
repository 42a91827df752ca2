using Grpc.Core;
using Grpc.Core.Interceptors;
using Grpc.Net.Client;
using Grpc.Net.Client.Balancer;
using Grpc.Net.Client.Configuration;
using Microsoft.Extensions.DependencyInjection;

namespace SwapSolver.Service.Tests.Cluster;

/// <summary>A client as OPERATIONS advises it: all services in turn, and the same call again where one went away or is full.</summary>
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
            ServiceConfig = new ServiceConfig
            {
                LoadBalancingConfigs = { new RoundRobinConfig() },
                MethodConfigs =
                {
                    new MethodConfig
                    {
                        Names = { MethodName.Default },
                        RetryPolicy = new RetryPolicy
                        {
                            MaxAttempts = 4,
                            InitialBackoff = TimeSpan.FromSeconds(0.25),
                            MaxBackoff = TimeSpan.FromSeconds(4),
                            BackoffMultiplier = 2,
                            RetryableStatusCodes = { StatusCode.Unavailable, StatusCode.ResourceExhausted },
                        },
                    },
                },
            },
        });
        Invoker = channel.Intercept(headers =>
        {
            headers.Add("authorization", $"Bearer {key}");
            return headers;
        });
    }

    /// <summary>Calls through it.</summary>
    public CallInvoker Invoker { get; }

    public void Dispose()
    {
        channel.Dispose();
        parts.Dispose();
    }
}
