using System.Globalization;
using Google.Rpc;
using Grpc.Core;
using Reason = SwapSolver.V1.CallFault.Types.Reason;

namespace SwapSolver.Service.Faults;

/// <summary>Collects a caller's mistakes, so that all are named at once and none costs a solve.</summary>
internal sealed class ProblemList
{
    private const int MostListed = 50;

    private readonly List<Problem> problems = [];

    /// <summary>How many mistakes there are.</summary>
    public int Count => problems.Count;

    /// <summary>Adds a mistake.</summary>
    public void Add(string path, string value, string reason, string wayOut) =>
        problems.Add(new Problem(path, RichFault.Short(value), reason, wayOut));

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
        var info = RichFault.Info(Reason.InvalidRequest);
        foreach (var problem in shown)
        {
            info.Metadata[problem.Path] = problem.Value;
        }

        var more = problems.Count > shown.Count ? $" (and {problems.Count - shown.Count} more)" : string.Empty;
        return RichFault.Of(Code.InvalidArgument, $"{shown[0].Path}: {shown[0].Sentence}{more}", request, info);
    }

    /// <summary>NOT_FOUND for a name, with the nearest names.</summary>
    public static RpcException NotFound(string name, IEnumerable<string> nearest)
    {
        var names = string.Join(", ", nearest);
        var info = RichFault.Info(Reason.NotFound, ("name", name));
        info.Metadata["nearest"] = names;
        return RichFault.Of(Code.NotFound, $"'{RichFault.Short(name)}' is not known; nearest names: {names}", info);
    }

    /// <summary>NOT_FOUND for a name that is known, and of which this kitchen wrote nothing down.</summary>
    public static RpcException NothingWritten(string name) => RichFault.Of(
        Code.NotFound, $"this kitchen wrote nothing down of '{RichFault.Short(name)}'; a shipped ingredient stays", RichFault.Info(Reason.NothingWritten, ("name", name)));

    /// <summary>ALREADY_EXISTS for a food that this kitchen has.</summary>
    public static RpcException AlreadyThere(string id) => RichFault.Of(
        Code.AlreadyExists,
        $"'{RichFault.Short(id)}' is a food of this kitchen already; give another id, or say that it is to be replaced",
        RichFault.Info(Reason.AlreadyExists, ("ingredientId", id)));
}
