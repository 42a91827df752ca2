using System.Diagnostics;
using System.Diagnostics.Metrics;

namespace SwapSolver.Service.Watching;

/// <summary>What the service counts of itself. Names and units follow the general metric conventions of OpenTelemetry; a
/// question is the name of its method.</summary>
internal sealed class CallMeter : IDisposable
{
    /// <summary>Name of the meter and of the source of traces.</summary>
    public const string Name = "swapsolver";

    private readonly Meter meter = new(Name);

    private readonly Counter<long> calls;

    private readonly Histogram<double> callSeconds;

    private readonly Histogram<double> solveSeconds;

    private readonly Histogram<long> solveParts;

    private readonly Histogram<double> solveGap;

    private readonly Counter<long> refused;

    private readonly Counter<long> answers;

    private readonly Counter<long> freed;

    private readonly Histogram<double> freeSeconds;

    /// <summary>Prepares the counts.</summary>
    public CallMeter()
    {
        calls = meter.CreateCounter<long>("swapsolver.calls", "{call}", "Calls that ended, by question and code.");
        callSeconds = meter.CreateHistogram<double>("swapsolver.call.duration", "s", "From a call's start to its end, by question.");
        solveSeconds = meter.CreateHistogram<double>("swapsolver.solve.duration", "s", "Time in the solver, by question and outcome.");
        solveParts = meter.CreateHistogram<long>("swapsolver.solve.nodes", "{node}", "Nodes of the search tree of a solve, by question.");
        solveGap = meter.CreateHistogram<double>("swapsolver.solve.gap", "1", "Relative gap of a solve that gave a point, by question.");
        refused = meter.CreateCounter<long>("swapsolver.calls.refused", "{call}", "Calls that were turned away, by question and reason.");
        answers = meter.CreateCounter<long>("swapsolver.answers", "{answer}", "Answers, by question and whether they were kept from before.");
        freed = meter.CreateCounter<long>("swapsolver.solves.cancelled", "{solve}", "Solves that were cancelled, by question.");
        freeSeconds = meter.CreateHistogram<double>("swapsolver.solve.cancel.duration", "s", "From a cancellation to the solver's end, by question.");
    }

    /// <summary>Traces of the service.</summary>
    public ActivitySource Traces { get; } = new(Name);

    /// <summary>The question that is being answered on this flow of control; empty outside a call.</summary>
    public static AsyncLocal<string> Question { get; } = new();

    /// <summary>Shows how many solves run and how many calls wait for one.</summary>
    public void Watch(Func<int> running, Func<int> waiting)
    {
        meter.CreateObservableGauge("swapsolver.solves.running", running, "{solve}", "Solves that run now.");
        meter.CreateObservableGauge("swapsolver.solves.waiting", waiting, "{call}", "Calls that wait for a solve.");
    }

    /// <summary>A call ended.</summary>
    public void Ended(string question, string code, TimeSpan took)
    {
        calls.Add(1, Asked(question), new("code", code));
        callSeconds.Record(took.TotalSeconds, Asked(question));
    }

    /// <summary>A call was turned away.</summary>
    public void Refused(string question, string reason) => refused.Add(1, Asked(question), new("reason", reason));

    /// <summary>An answer was given from what was kept, or was made.</summary>
    /// <param name="kept">Whether it was kept.</param>
    /// <param name="unread">Whether it was given for the bytes of its question, which was not read.</param>
    public void Answered(bool kept, bool unread = false) => answers.Add(1, Asked(Current), new("kept", kept ? "yes" : "no"), new("unread", unread ? "yes" : "no"));

    /// <summary>A solve ended.</summary>
    public void Solved(string outcome, TimeSpan took, int nodes, double? gap)
    {
        solveSeconds.Record(took.TotalSeconds, Asked(Current), new("outcome", outcome));
        solveParts.Record(nodes, Asked(Current));
        if (gap is { } known)
        {
            solveGap.Record(known, Asked(Current));
        }
    }

    /// <summary>A solve was cancelled.</summary>
    public void Freed(TimeSpan after)
    {
        freed.Add(1, Asked(Current));
        freeSeconds.Record(after.TotalSeconds, Asked(Current));
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        meter.Dispose();
        Traces.Dispose();
    }

    private static string Current => Question.Value ?? string.Empty;

    private static KeyValuePair<string, object?> Asked(string question) => new("question", question);
}
