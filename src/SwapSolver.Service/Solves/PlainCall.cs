using System.Buffers;
using System.Buffers.Binary;
using System.Collections.Frozen;
using System.Security.Cryptography;
using SwapSolver.Service.Access;

namespace SwapSolver.Service.Solves;

/// <summary>Calls of gRPC with one question and one answer, which may be answered before a method is reached. Pages and HTTP/JSON write their
/// answers in their own ways, health is never kept, and a stream may be larger than a message only while nothing of it was looked at.</summary>
internal static class PlainCall
{
    /// <summary>What a call and its answer say that they are.</summary>
    public const string ContentType = "application/grpc";

    private static readonly object Slot = new();

    /// <summary>Paths of our methods with one question and one answer.</summary>
    private static readonly FrozenSet<string> Paths = Contract.Services
        .SelectMany(service => service.Methods)
        .Where(method => !method.IsClientStreaming && !method.IsServerStreaming)
        .Select(method => $"/{method.Service.FullName}/{method.Name}")
        .ToFrozenSet(StringComparer.Ordinal);

    /// <summary>A message on the wire: whether it is packed, its length, and itself (gRPC over HTTP/2, Length-Prefixed-Message).</summary>
    public const int PrefixBytes = 5;

    /// <summary>Larger questions are looked at by none but their method [bytes].</summary>
    public const int MostBytes = 256 * 1024;

    /// <summary>Looks at a question, prefix and message, where all of it is there; else null. Nothing is taken from what came in.</summary>
    /// <param name="request">The request.</param>
    /// <param name="look">What is made of it.</param>
    public static T? Look<T>(HttpRequest request, Func<ReadOnlySequence<byte>, T> look)
        where T : struct
    {
        if (!request.BodyReader.TryRead(out var read))
        {
            return null;
        }

        T? seen = HasOneMessage(read.Buffer) ? look(read.Buffer) : null;
        request.BodyReader.AdvanceTo(read.Buffer.Start);
        return seen;
    }

    /// <summary>Digest of a question's bytes, half a SHA-256, worked out once a call; null where not all of it is there.</summary>
    /// <param name="context">The call.</param>
    public static UInt128? DigestOf(HttpContext context)
    {
        if (context.Items.TryGetValue(Slot, out var known))
        {
            return (UInt128)known!;
        }

        var digest = Look(context.Request, DigestOf);
        if (digest is { } found)
        {
            context.Items[Slot] = found;
        }

        return digest;
    }

    /// <summary>Whether a request is such a call.</summary>
    /// <param name="request">The request.</param>
    public static bool Is(HttpRequest request) =>
        HttpMethods.IsPost(request.Method) && request.ContentType == ContentType && HttpProtocol.IsHttp2(request.Protocol)
        && request.Path.Value is { } path && Paths.Contains(path);

    private static bool HasOneMessage(ReadOnlySequence<byte> body)
    {
        if (body.Length is < PrefixBytes or > MostBytes)
        {
            return false;
        }

        Span<byte> prefix = stackalloc byte[PrefixBytes];
        body.Slice(0, PrefixBytes).CopyTo(prefix);
        return prefix[0] == 0 && BinaryPrimitives.ReadUInt32BigEndian(prefix[1..]) == body.Length - PrefixBytes;
    }

    private static UInt128 DigestOf(ReadOnlySequence<byte> question)
    {
        Span<byte> digest = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(question.IsSingleSegment ? question.FirstSpan : question.ToArray(), digest);
        return BinaryPrimitives.ReadUInt128BigEndian(digest);
    }
}
