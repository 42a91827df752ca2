using Microsoft.AspNetCore.Server.Kestrel.Core;
using SwapSolver.Service.Limits;

namespace SwapSolver.Service.Networking;

/// <summary>The ports of the service, and what it puts up with on them: a caller who sends slowly or says nothing is dropped.</summary>
internal static class Doors
{
    /// <summary>A sender that brings less is dropped [bytes/s] after the grace time.</summary>
    private static readonly MinDataRate SlowestSender = new(240, TimeSpan.FromSeconds(5));

    /// <summary>Time in which a request's head must have come.</summary>
    private static readonly TimeSpan HeadTime = TimeSpan.FromSeconds(10);

    /// <summary>Time in which a connection must answer a ping.</summary>
    private static readonly TimeSpan PingTime = TimeSpan.FromSeconds(20);

    /// <summary>Opens the ports, or the private socket alone.</summary>
    public static void Open(KestrelServerOptions kestrel, ServiceOptions options, ServiceLimits limits, DoorSettings settings)
    {
        kestrel.AddServerHeader = false;
        if (options.EmbeddedSocket is { } socket)
        {
            kestrel.ListenUnixSocket(socket, listen => listen.Protocols = HttpProtocols.Http2);
            return;
        }

        var most = kestrel.Limits;
        most.MaxConcurrentConnections = limits.Connections;
        most.MaxRequestBodySize = limits.MessageBytes + 1024;
        most.MinRequestBodyDataRate = SlowestSender;
        most.MinResponseDataRate = SlowestSender;
        most.RequestHeadersTimeout = HeadTime;
        most.KeepAliveTimeout = TimeSpan.FromSeconds(limits.SilenceSeconds);
        most.Http2.MaxStreamsPerConnection = limits.CallsPerConnection;
        most.Http2.KeepAlivePingDelay = TimeSpan.FromSeconds(Math.Max(1, limits.SilenceSeconds / 2));
        most.Http2.KeepAlivePingTimeout = PingTime;
        kestrel.Listen(settings.Address, options.GrpcPort, listen => Secure(listen, settings, HttpProtocols.Http2));
        kestrel.Listen(
            settings.Address,
            options.HttpPort,
            listen => Secure(listen, settings, settings.Certificate is null ? HttpProtocols.Http1 : HttpProtocols.Http1AndHttp2));
    }

    private static void Secure(ListenOptions listen, DoorSettings settings, HttpProtocols protocols)
    {
        listen.Protocols = protocols;
        if (settings.Certificate is { } certificate)
        {
            listen.UseHttps(certificate);
        }
    }
}
