using System.Collections.Frozen;
using SwapSolver.Service.Access;

namespace SwapSolver.Service.Solves;

/// <summary>Calls of gRPC with one question and one answer, which may be answered before a method is reached. Pages and HTTP/JSON write their
/// answers in their own ways, health is never kept, and a stream may be larger than a message only while nothing of it was looked at.</summary>
internal static class PlainCall
{
    /// <summary>What a call and its answer say that they are.</summary>
    public const string ContentType = "application/grpc";

    /// <summary>Paths of our methods with one question and one answer.</summary>
    private static readonly FrozenSet<string> Paths = Contract.Services
        .SelectMany(service => service.Methods)
        .Where(method => !method.IsClientStreaming && !method.IsServerStreaming)
        .Select(method => $"/{method.Service.FullName}/{method.Name}")
        .ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Whether a request is such a call.</summary>
    /// <param name="request">The request.</param>
    public static bool Is(HttpRequest request) =>
        HttpMethods.IsPost(request.Method) && request.ContentType == ContentType && HttpProtocol.IsHttp2(request.Protocol)
        && request.Path.Value is { } path && Paths.Contains(path);
}
