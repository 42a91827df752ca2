using System.Globalization;
using Google.Rpc;
using Grpc.Core;

namespace SwapSolver.Service.Faults;

/// <summary>Collects a caller's mistakes, so that all are named at once and none costs a solve.</summary>
internal sealed class ProblemList
{
    /// <summary>Domain of every ErrorInfo of this service.</summary>
    public const string Domain = "swapsolver";

    private const int MostListed = 50;

    private const int MostLetters = 100;

    private readonly List<Problem> problems = [];

    /// <summary>How many mistakes there are.</summary>
    public int Count => problems.Count;

    /// <summary>Adds a mistake.</summary>
    public void Add(string path, string value, string reason, string wayOut) =>
        problems.Add(new Problem(path, Short(value), reason, wayOut));

    /// <summary>Adds a mistake whose way out takes time to find; it is sought only where it will be told.</summary>
    public void Add(string path, string value, string reason, Func<string> wayOut) =>
        Add(path, value, reason, problems.Count < MostListed ? wayOut() : string.Empty);

    /// <summary>Adds a mistake about a number.</summary>
    public void Add(string path, double value, string reason, string wayOut) =>
        Add(path, value.ToString(CultureInfo.InvariantCulture), reason, wayOut);

    /// <summary>Ends the call with INVALID_ARGUMENT where there were mistakes.</summary>
    /// <exception cref="RpcException">There were.</exception>
    public void ThrowIfAny()
    {
        if (problems.Count > 0)
        {
            throw Refusal();
        }
    }

    /// <summary>INVALID_ARGUMENT with every mistake.</summary>
    public RpcException Refusal()
    {
        var shown = problems.Take(MostListed).ToList();
        var request = new BadRequest();
        request.FieldViolations.AddRange(shown.Select(problem => new BadRequest.Types.FieldViolation
        {
            Field = problem.Path,
            Description = problem.Sentence,
        }));
        var info = new ErrorInfo { Reason = "INVALID_REQUEST", Domain = Domain };
        foreach (var problem in shown)
        {
            info.Metadata[problem.Path] = problem.Value;
        }

        var more = problems.Count > shown.Count ? $" (and {problems.Count - shown.Count} more)" : string.Empty;
        return Rich(Code.InvalidArgument, $"{shown[0].Path}: {shown[0].Sentence}{more}", request, info);
    }

    /// <summary>NOT_FOUND for a name, with the nearest names.</summary>
    public static RpcException NotFound(string name, IEnumerable<string> nearest)
    {
        var names = string.Join(", ", nearest);
        var info = new ErrorInfo { Reason = "NOT_FOUND", Domain = Domain };
        name = Short(name);
        info.Metadata["name"] = name;
        info.Metadata["nearest"] = names;
        return Rich(Code.NotFound, $"'{name}' is not known; nearest names: {names}", info);
    }

    /// <summary>NOT_FOUND for a name that is known, and of which this kitchen wrote nothing down.</summary>
    public static RpcException NothingWritten(string name)
    {
        var info = new ErrorInfo { Reason = "NOTHING_WRITTEN", Domain = Domain };
        info.Metadata["name"] = Short(name);
        return Rich(Code.NotFound, $"this kitchen wrote nothing down of '{Short(name)}'; a shipped ingredient stays", info);
    }

    /// <summary>ALREADY_EXISTS for a food that this kitchen has.</summary>
    public static RpcException AlreadyThere(string id)
    {
        var info = new ErrorInfo { Reason = "ALREADY_EXISTS", Domain = Domain };
        info.Metadata["ingredientId"] = Short(id);
        return Rich(Code.AlreadyExists, $"'{Short(id)}' is a food of this kitchen already; give another id, or say that it is to be replaced", info);
    }

    /// <summary>Why a call was refused, for programs: a reason that stays, and what it is about.</summary>
    public static ErrorInfo Info(string reason, params (string Key, string Value)[] about)
    {
        var info = new ErrorInfo { Reason = reason, Domain = Domain };
        foreach (var (key, value) in about)
        {
            info.Metadata[key] = Short(value);
        }

        return info;
    }

    /// <summary>A refusal with its details.</summary>
    public static RpcException Rich(Code code, string message, params Google.Protobuf.IMessage[] details)
    {
        var status = new Google.Rpc.Status { Code = (int)code, Message = message };
        status.Details.AddRange(details.Select(Google.Protobuf.WellKnownTypes.Any.Pack));
        return status.ToRpcException();
    }

    private static string Short(string value)
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
