using System.Security.Cryptography;
using System.Text;
using Microsoft.Extensions.Caching.Distributed;
using Microsoft.Extensions.Caching.StackExchangeRedis;
using StackExchange.Redis;
using SwapSolver.Records;

namespace SwapSolver.Service.Solves;

/// <summary>Answers in a Redis server, for all processes that share it. It only ever makes answers quicker: one that is away or fails
/// is gone on without. Answers of another release, of other facts or of another kitchen stand under other keys.</summary>
internal sealed partial class SharedCache : IDistributedCache, IDisposable
{
    private readonly RedisCache server;

    private readonly KitchenRecords records;

    private readonly Lazy<string> release;

    private readonly ILogger logger;

    private string? kitchen;

    private int isAway;

    /// <summary>Prepares it; the server is first looked for when an answer is.</summary>
    /// <param name="settings">Where it is.</param>
    /// <param name="dataPath">The shipped facts.</param>
    /// <param name="records">The kitchen's records.</param>
    /// <param name="logger">Is told when the server goes away and comes back.</param>
    public SharedCache(SharedCacheSettings settings, string dataPath, KitchenRecords records, ILogger<SharedCache> logger)
    {
        this.records = records;
        this.logger = logger;
        release = new Lazy<string>(() => Digest(dataPath));
        server = new RedisCache(new RedisCacheOptions
        {
            InstanceName = "swapsolver:",
            ConnectionMultiplexerFactory = async () => await ConnectionMultiplexer.ConnectAsync(settings.Server),
        });
    }

    /// <inheritdoc/>
    public byte[]? Get(string key) => Reach(() => server.Get(Full(key)));

    /// <inheritdoc/>
    public async Task<byte[]?> GetAsync(string key, CancellationToken token = default) => await ReachAsync(async () => await server.GetAsync(Full(key), token));

    /// <inheritdoc/>
    public void Set(string key, byte[] value, DistributedCacheEntryOptions options) => Reach(() =>
    {
        server.Set(Full(key), value, options);
        return value;
    });

    /// <inheritdoc/>
    public Task SetAsync(string key, byte[] value, DistributedCacheEntryOptions options, CancellationToken token = default) => ReachAsync(async () =>
    {
        await server.SetAsync(Full(key), value, options, token);
        return value;
    });

    /// <inheritdoc/>
    public void Refresh(string key)
    {
        // Answers have no sliding life.
    }

    /// <inheritdoc/>
    public Task RefreshAsync(string key, CancellationToken token = default) => Task.CompletedTask;

    /// <inheritdoc/>
    public void Remove(string key) => Reach(() =>
    {
        server.Remove(Full(key));
        return key;
    });

    /// <inheritdoc/>
    public Task RemoveAsync(string key, CancellationToken token = default) => ReachAsync(async () =>
    {
        await server.RemoveAsync(Full(key), token);
        return key;
    });

    /// <inheritdoc/>
    public void Dispose() => server.Dispose();

    /// <summary>What this release answers by: its code and its facts.</summary>
    private static string Digest(string dataPath)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var assembly in Directory.EnumerateFiles(AppContext.BaseDirectory, "SwapSolver.*.dll").Order(StringComparer.Ordinal))
        {
            hash.AppendData(File.ReadAllBytes(assembly));
        }

        foreach (var file in Directory.EnumerateFiles(dataPath, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal))
        {
            hash.AppendData(Encoding.UTF8.GetBytes(Path.GetRelativePath(dataPath, file)));
            hash.AppendData(File.ReadAllBytes(file));
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset())[..16];
    }

    // A kitchen that wrote nothing down is answered by what is shipped.
    private string Full(string key) => $"{release.Value}:{kitchen ??= records.Identity()}:{key}";

    private T? Reach<T>(Func<T?> what)
        where T : class
    {
        try
        {
            return Back(what());
        }
        catch (Exception fault) when (IsOfTheServer(fault))
        {
            return Away<T>(fault);
        }
    }

    private async Task<T?> ReachAsync<T>(Func<Task<T?>> what)
        where T : class
    {
        try
        {
            return Back(await what());
        }
        catch (Exception fault) when (IsOfTheServer(fault))
        {
            return Away<T>(fault);
        }
    }

    private static bool IsOfTheServer(Exception fault) => fault is RedisException or RedisTimeoutException or TimeoutException or ObjectDisposedException or System.Net.Sockets.SocketException;

    private T? Back<T>(T? found)
        where T : class
    {
        if (Interlocked.Exchange(ref isAway, 0) == 1)
        {
            ServerIsBack(logger);
        }

        return found;
    }

    private T? Away<T>(Exception fault)
        where T : class
    {
        if (Interlocked.Exchange(ref isAway, 1) == 0)
        {
            ServerIsAway(logger, fault.Message.ReplaceLineEndings(" "));
        }

        return null;
    }

    [LoggerMessage(EventId = 8, Level = LogLevel.Warning, Message = "the shared cache is away, and answers are made without it: {Reason}")]
    private static partial void ServerIsAway(ILogger logger, string reason);

    [LoggerMessage(EventId = 9, Level = LogLevel.Warning, Message = "the shared cache is back")]
    private static partial void ServerIsBack(ILogger logger);
}
