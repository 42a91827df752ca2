namespace SwapSolver.Records.Jobs;

/// <summary>A part of a job that one process took to work on.</summary>
/// <param name="Job">Id of the job.</param>
/// <param name="Number">Its number within the job.</param>
/// <param name="Kind">One of <see cref="ShardKind"/>.</param>
/// <param name="Document">What is to be done, as JSON.</param>
/// <param name="JobDocument">What the whole job was asked for, as JSON.</param>
/// <param name="FirstItem">Number of its first item within the job.</param>
/// <param name="Items">How many items it has.</param>
/// <param name="Written">How many of them are written.</param>
/// <param name="Fence">Tells this holder from those before: who was overtaken can write no more.</param>
/// <param name="Attempts">How often it was taken, this time too, since something of it was written.</param>
public sealed record HeldShard(
    string Job, long Number, string Kind, string Document, string JobDocument, long FirstItem, long Items, long Written, long Fence, long Attempts);

/// <summary>What a shard is.</summary>
public static class ShardKind
{
    /// <summary>Counts the next items and cuts them into shards.</summary>
    public const string Counting = "COUNTING";

    /// <summary>Items to be answered.</summary>
    public const string Items = "ITEMS";
}

/// <summary>A part that is to be worked on.</summary>
/// <param name="Document">What is to be done, as JSON.</param>
/// <param name="Items">How many items it has.</param>
public sealed record NewShard(string Document, int Items);

/// <summary>What became of one item.</summary>
/// <param name="IsFailed">Whether it is a problem.</param>
/// <param name="Document">The result, as JSON.</param>
public sealed record NewResult(bool IsFailed, string Document);

/// <summary>A result that is written.</summary>
/// <param name="Item">Number of the item within its job.</param>
/// <param name="Place">Its place among the results, from 1, in the order in which they were written.</param>
/// <param name="Document">The result, as JSON.</param>
public sealed record StoredResult(long Item, long Place, string Document);

/// <summary>Whether a process still has what it works on.</summary>
public enum Hold
{
    /// <summary>It has.</summary>
    Kept,

    /// <summary>It has, and its job was told to stop: what is done may be written, nothing more is to be begun.</summary>
    Stopped,

    /// <summary>Another process took it, or the job was given up; nothing was written.</summary>
    Lost,
}
