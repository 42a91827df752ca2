using System.Collections.Frozen;
using Google.Protobuf;
using Google.Protobuf.WellKnownTypes;
using Google.Rpc;
using Grpc.Core;
using Reason = SwapSolver.V1.CallFault.Types.Reason;

namespace SwapSolver.Service.Faults;

/// <summary>Ends of a call with google.rpc details.</summary>
internal static class RichFault
{
    /// <summary>Domain of every ErrorInfo of this service.</summary>
    public const string Domain = "swapsolver";

    private const int MostLetters = 100;

    /// <summary>The reasons' names, as the contract has them.</summary>
    private static readonly FrozenDictionary<Reason, string> Names =
        V1.CallFault.Descriptor.EnumTypes.Single().Values.ToFrozenDictionary(value => (Reason)value.Number, value => value.Name);

    /// <summary>An end with details.</summary>
    public static RpcException Of(Code code, string message, params IMessage[] details)
    {
        var status = new Google.Rpc.Status { Code = (int)code, Message = message };
        status.Details.AddRange(details.Select(Any.Pack));
        return status.ToRpcException();
    }

    /// <summary>The details that tell of a reason.</summary>
    /// <param name="reason">The reason, from the table of the contract.</param>
    /// <param name="about">What it is about.</param>
    public static ErrorInfo Info(Reason reason, params (string Key, string Value)[] about)
    {
        var info = new ErrorInfo { Reason = Names[reason], Domain = Domain };
        foreach (var (key, value) in about)
        {
            info.Metadata[key] = Short(value);
        }

        return info;
    }

    /// <summary>An end that another try after a while may mend.</summary>
    public static RpcException Later(Code code, Reason reason, string message, TimeSpan retry) =>
        Of(code, message, Info(reason), new RetryInfo { RetryDelay = Duration.FromTimeSpan(retry) });

    /// <summary>As much of a value as fits into a message.</summary>
    public static string Short(string value)
    {
        if (value.Length <= MostLetters)
        {
            return value;
        }

        // A letter of two halves is not cut in two.
        var end = char.IsHighSurrogate(value[MostLetters - 4]) ? MostLetters - 4 : MostLetters - 3;
        return $"{value[..end]}...";
    }
}
