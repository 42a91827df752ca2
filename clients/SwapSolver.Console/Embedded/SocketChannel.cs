using System.Net.Sockets;
using Grpc.Net.Client;
using SwapSolver.Console.Asking;

namespace SwapSolver.Console.Embedded;

/// <summary>A gRPC channel over a Unix socket.</summary>
internal static class SocketChannel
{
    /// <summary>Opens the channel; the socket is connected at the first call.</summary>
    public static GrpcChannel Open(string socketPath)
    {
        var endPoint = new UnixDomainSocketEndPoint(socketPath);
        var handler = new SocketsHttpHandler
        {
            UseProxy = false,
            ConnectCallback = async (_, cancel) =>
            {
                var socket = new Socket(AddressFamily.Unix, SocketType.Stream, ProtocolType.Unspecified);
                try
                {
                    await socket.ConnectAsync(endPoint, cancel);
                    return new NetworkStream(socket, ownsSocket: true);
                }
                catch
                {
                    socket.Dispose();
                    throw;
                }
            },
        };
        return GrpcChannel.ForAddress("http://localhost", new GrpcChannelOptions
        {
            HttpHandler = handler,
            DisposeHttpClient = true,
            MaxReceiveMessageSize = IServiceConnection.LargestResponseBytes,
        });
    }
}
