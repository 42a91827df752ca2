namespace SwapSolver.Service.Limits;

/// <summary>How much the service takes on, from the section <c>Limits</c> of its configuration (appsettings.json, environment).</summary>
internal sealed record ServiceLimits
{
    /// <summary>Name of the section.</summary>
    public const string Section = "Limits";

    /// <summary>Solves that run at once, 1 to 1024; 0 stands for one a processor.</summary>
    public int SolvesAtOnce { get; init; }

    /// <summary>Calls that may wait for a solve, 0 to 10000; 0 stands for one for every two solves that run. Beyond it one
    /// call is refused at once: of those at the door the one that came first, or whoever comes where all wait inside (<see cref="Solves.Doorstep"/>). Kept
    /// short: the next place is free in a part of a solve, and whoever waits longer is better told to come back.</summary>
    public int SolvesWaiting { get; init; }

    /// <summary>Most time a call is solved for [s], 1 to 3600, however late its deadline is.</summary>
    public double CallSeconds { get; init; } = 60;

    /// <summary>The same for a call that gives what it finds piece by piece [s], 1 to 86400.</summary>
    public double StreamSeconds { get; init; } = 300;

    /// <summary>Calls a second of one caller over a longer time [1/s], above 0.</summary>
    public double CallerCallsPerSecond { get; init; } = 100;

    /// <summary>Calls of one caller at once after a pause, 1 or more.</summary>
    public int CallerBurst { get; init; } = 500;

    /// <summary>Connections at once, 1 or more.</summary>
    public int Connections { get; init; } = 4_000;

    /// <summary>Calls at once on one connection, 1 or more.</summary>
    public int CallsPerConnection { get; init; } = 100;

    /// <summary>Time after which a connection that says nothing is dropped [s], 1 or more.</summary>
    public double SilenceSeconds { get; init; } = 60;

    /// <summary>Size of a message [bytes], 1024 or more.</summary>
    public int MessageBytes { get; init; } = 1024 * 1024;

    /// <summary>Answers that are kept [bytes], 0 or more.</summary>
    public long AnswerBytes { get; init; } = 64 * 1024 * 1024;

    /// <summary>Time in which calls may end after the service was told to stop [s], 0 or more.</summary>
    public double DrainSeconds { get; init; } = 8;

    /// <summary>Items of jobs that are solved at once, 1 to 1024, beside callers' questions, to which all but one make way; 0 stands
    /// for one a processor.</summary>
    public int JobSolvesAtOnce { get; init; }

    /// <summary>Time after which another process takes over what a silent one was at [s], 1 to 3600.</summary>
    public double JobLeaseSeconds { get; init; } = 30;

    /// <summary>Solves at once, as a count.</summary>
    public int Solves => SolvesAtOnce == 0 ? Environment.ProcessorCount : SolvesAtOnce;

    /// <summary>Calls that may wait, as a count.</summary>
    public int Waiting => SolvesWaiting == 0 ? (Solves + 1) / 2 : SolvesWaiting;

    /// <summary>Reads the limits.</summary>
    /// <exception cref="SettingFaultException">A limit cannot be one; the message names it, its value and its range.</exception>
    public static ServiceLimits Read(IConfiguration configuration)
    {
        var section = configuration.GetSection(Section);
        var known = typeof(ServiceLimits).GetProperties().Where(property => property.SetMethod is not null).Select(property => property.Name).ToList();
        foreach (var setting in section.GetChildren().Where(child => !known.Contains(child.Key, StringComparer.OrdinalIgnoreCase)))
        {
            throw new SettingFaultException($"{Section}:{setting.Key}", setting.Value, $"is no limit; the limits are {string.Join(", ", known)}");
        }

        var settings = new SettingReader(section);
        var usual = new ServiceLimits();
        return new ServiceLimits
        {
            SolvesAtOnce = settings.Whole(nameof(SolvesAtOnce), usual.SolvesAtOnce, 0, 1_024),
            SolvesWaiting = settings.Whole(nameof(SolvesWaiting), usual.SolvesWaiting, 0, 10_000),
            CallSeconds = settings.Figure(nameof(CallSeconds), usual.CallSeconds, 1, 3_600),
            StreamSeconds = settings.Figure(nameof(StreamSeconds), usual.StreamSeconds, 1, 86_400),
            CallerCallsPerSecond = settings.Figure(nameof(CallerCallsPerSecond), usual.CallerCallsPerSecond, 0.01, 1_000_000),
            CallerBurst = settings.Whole(nameof(CallerBurst), usual.CallerBurst, 1, 1_000_000),
            Connections = settings.Whole(nameof(Connections), usual.Connections, 1, 1_000_000),
            CallsPerConnection = settings.Whole(nameof(CallsPerConnection), usual.CallsPerConnection, 1, 10_000),
            SilenceSeconds = settings.Figure(nameof(SilenceSeconds), usual.SilenceSeconds, 1, 3_600),
            MessageBytes = settings.Whole(nameof(MessageBytes), usual.MessageBytes, 1_024, 256 * 1024 * 1024),
            AnswerBytes = settings.Whole(nameof(AnswerBytes), (int)usual.AnswerBytes, 0, int.MaxValue),
            JobSolvesAtOnce = settings.Whole(nameof(JobSolvesAtOnce), usual.JobSolvesAtOnce, 0, 1_024),
            JobLeaseSeconds = settings.Figure(nameof(JobLeaseSeconds), usual.JobLeaseSeconds, 1, 3_600),
            DrainSeconds = settings.Figure(nameof(DrainSeconds), usual.DrainSeconds, 0, 60),
        };
    }
}
