using System.Globalization;
using Google.Protobuf;
using SwapSolver.Records.Jobs;
using SwapSolver.Service.Stored;
using SwapSolver.V1;

namespace SwapSolver.Service.Jobs;

/// <summary>Jobs and results as the records hold them, and as they come out of them.</summary>
internal static class JobDocument
{
    private const string Jobs = "jobs/";

    private static readonly JsonParser Parser = new(JsonParser.Settings.Default.WithIgnoreUnknownFields(true));

    /// <summary>The words of a catalogue or of a result.</summary>
    public static string Write(IMessage message) => JsonFormatter.Default.Format(message);

    /// <summary>What a job was asked for.</summary>
    public static Catalogue ReadCatalogue(string document) => Parser.Parse<Catalogue>(document);

    /// <summary>The id in a job's name; a bare id is one too.</summary>
    public static string IdOf(string name) => name.StartsWith(Jobs, StringComparison.Ordinal) ? name[Jobs.Length..] : name;

    /// <summary>The job.</summary>
    public static Job Read(StoredJob stored) => new()
    {
        Name = Jobs + stored.Id,
        DisplayName = stored.DisplayName,
        Catalogue = ReadCatalogue(stored.Document),
        State = stored.State switch
        {
            JobState.Running => Job.Types.State.Running,
            JobState.Paused => Job.Types.State.Paused,
            JobState.Cancelled => Job.Types.State.Cancelled,
            _ => Job.Types.State.Done,
        },
        Items = (int)stored.Items,
        Counted = stored.IsCounted == 1,
        Done = (int)stored.Done,
        Failed = (int)stored.Failed,
        CreateTime = Moment.Read(stored.Created),
        EndTime = Moment.Read(stored.Ended),
    };

    /// <summary>The result.</summary>
    /// <param name="job">Id of its job.</param>
    /// <param name="stored">The result.</param>
    public static JobItem Read(string job, StoredResult stored)
    {
        var item = Parser.Parse<JobItem>(stored.Document);
        item.Place = (int)stored.Place;
        item.Item = (int)stored.Item;
        item.Name = string.Create(CultureInfo.InvariantCulture, $"{Jobs}{job}/items/{stored.Item}");
        return item;
    }
}
