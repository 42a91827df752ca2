namespace SwapSolver.Records.Tests.Engines;

/// <summary>An engine that the one suite of storage tests runs against.</summary>
public interface IRecordsEngine
{
    /// <summary>A new place without records.</summary>
    string NewPlace();
}

/// <summary>The embedded engine, each kitchen in a folder of its own.</summary>
public sealed class EmbeddedEngine : IRecordsEngine, IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("kitchen-records-");

    private int places;

    public string NewPlace() => Path.Combine(folder.FullName, Interlocked.Increment(ref places).ToString(System.Globalization.CultureInfo.InvariantCulture));

    public void Dispose() => folder.Delete(recursive: true);
}

/// <summary>A real server, each kitchen in a database of its own.</summary>
public sealed class ServerEngine : IRecordsEngine, IDisposable
{
    public PostgresServer Server { get; } = new();

    public string NewPlace() => Server.NewDatabase();

    public void Dispose() => Server.Dispose();
}

/// <summary>All tests that need the server share one.</summary>
[CollectionDefinition(Name)]
public sealed class WithServer : ICollectionFixture<ServerEngine>
{
    public const string Name = "with a server";
}
