using System.Globalization;
using Google.Protobuf;
using Grpc.Core;

namespace SwapSolver.Service.Faults;

/// <summary>The end of a call as it goes over the wire, where no method says it (gRPC over HTTP/2, Trailers).</summary>
/// <param name="Code">Its code.</param>
/// <param name="Words">Its message, percent-encoded.</param>
/// <param name="Details">Its details, as a google.rpc.Status in Base64.</param>
internal sealed record WrittenEnd(string Code, string Words, string Details)
{
    private const string CodeHeader = "grpc-status";

    private const string WordsHeader = "grpc-message";

    private const string DetailsHeader = "grpc-status-details-bin";

    /// <summary>What is told of a fault.</summary>
    /// <param name="fault">A fault with details.</param>
    public static WrittenEnd Of(RpcException fault)
    {
        var status = fault.GetRpcStatus()!;
        return new WrittenEnd(
            status.Code.ToString(CultureInfo.InvariantCulture),
            Uri.EscapeDataString(status.Message),
            Convert.ToBase64String(status.ToByteArray()).TrimEnd('='));
    }

    /// <summary>The code that headers or trailers tell; null where they tell none.</summary>
    /// <param name="ends">The headers or trailers.</param>
    public static StatusCode? CodeOf(IHeaderDictionary ends) =>
        int.TryParse(ends[CodeHeader].ToString(), NumberStyles.None, CultureInfo.InvariantCulture, out var code) ? (StatusCode)code : null;

    /// <summary>Ends a call with it.</summary>
    /// <param name="ends">Its trailers, or its headers where nothing was answered.</param>
    public void Give(IHeaderDictionary ends)
    {
        ends[CodeHeader] = Code;
        ends[WordsHeader] = Words;
        ends[DetailsHeader] = Details;
    }
}
