using Google.Rpc;
using Grpc.Core;
using SwapSolver.Records.Formulas;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Translation;
using Reason = SwapSolver.V1.CallFault.Types.Reason;

namespace SwapSolver.Service.Stored;

/// <summary>Says why a stored formula was not changed.</summary>
internal static class FormulaRefusal
{
    /// <summary>NOT_FOUND for a formula that is put away.</summary>
    public static RpcException PutAway(string name) => RichFault.Of(
        Code.NotFound, $"'{name}' is put away; take it back with UndeleteFormula (formula restore) to ask about it", RichFault.Info(Reason.PutAway, ("name", name)));

    /// <summary>FAILED_PRECONDITION for a formula that is shipped.</summary>
    public static RpcException Shipped(string name) => RichFault.Of(
        Code.FailedPrecondition, $"'{name}' is shipped with the program and cannot be changed; copy it, and change the copy", RichFault.Info(Reason.Shipped, ("name", name)));

    /// <summary>ALREADY_EXISTS for an id that is taken.</summary>
    public static RpcException Taken(string id, string wayOut) => RichFault.Of(
        Code.AlreadyExists, $"'{ResourceName.OfFormula(id)}' is there already; {wayOut}", RichFault.Info(Reason.AlreadyExists, ("formulaId", id)));

    /// <summary>The refusal that an outcome stands for; null where the change was done.</summary>
    /// <param name="changed">What became of the change.</param>
    /// <param name="name">Name of the formula.</param>
    /// <param name="library">Knows the nearest names.</param>
    public static RpcException? Of(Changed changed, string name, FormulaLibrary library) => changed.Outcome switch
    {
        Outcome.Done => null,
        Outcome.NotThere => library.NotThere(name),
        Outcome.NoSuchRevision => RichFault.Of(
            Code.NotFound, $"'{name}' has no such revision: its newest is {changed.Now!.Newest}", RichFault.Info(Reason.NotFound, ("name", name))),
        Outcome.AlreadyThere => Taken(
            ResourceName.FormulaId(name), changed.Now!.Deleted is null ? "give another id, or save it as a new revision with UpdateFormula" : "it was put away: give another id, or take it back with UndeleteFormula (formula restore)"),
        Outcome.Stale => RichFault.Of(
            Code.Aborted,
            $"'{name}' was changed by somebody else meanwhile: its etag is '{changed.Now!.Etag}' now, at revision {changed.Now.Newest}; nothing of yours was written. Look at what changed, and send it again with that etag",
            RichFault.Info(Reason.StaleEtag, ("name", name), ("etag", changed.Now.Etag))),
        Outcome.PutAway => RichFault.Of(
            Code.FailedPrecondition, $"'{name}' is put away; take it back with UndeleteFormula (formula restore) first", RichFault.Info(Reason.PutAway, ("name", name))),
        Outcome.Published => RichFault.Of(
            Code.FailedPrecondition, $"'{name}' is published, and readers may be using it; unpublish it first", RichFault.Info(Reason.Published, ("name", name))),
        Outcome.OtherRequest => OtherRequest(),
        _ => throw new InvalidOperationException($"{changed.Outcome} has no words"),
    };

    /// <summary>INVALID_ARGUMENT for the id of another request.</summary>
    public static RpcException OtherRequest()
    {
        var problems = new ProblemList();
        problems.Add("requestId", string.Empty, "this id was given to another request within the last day", "give every request an id of its own, and the same one only where the same request is sent again");
        return problems.Refusal();
    }
}
