using Microsoft.Extensions.Caching.Distributed;
using StackExchange.Redis;
using SwapSolver.Records;
using SwapSolver.Service.Limits;

namespace SwapSolver.Service.Solves;

/// <summary>The answers that several processes keep together, from the section <c>Cache</c> of the configuration; without it each
/// keeps its own.</summary>
/// <param name="Server">How the server is reached.</param>
internal sealed record SharedCacheSettings(ConfigurationOptions Server)
{
    /// <summary>Name of the section.</summary>
    public const string Section = "Cache";

    private const string Redis = "Redis";

    /// <summary>A server that does not answer within this time is gone on without [ms].</summary>
    private const int Patience = 250;

    /// <summary>Adds the shared cache where the configuration names one.</summary>
    /// <exception cref="SettingFaultException">A setting cannot be what it says.</exception>
    public static void Add(WebApplicationBuilder builder, string dataPath)
    {
        var section = builder.Configuration.GetSection(Section);
        foreach (var setting in section.GetChildren().Where(child => !child.Key.Equals(Redis, StringComparison.OrdinalIgnoreCase)))
        {
            throw new SettingFaultException($"{Section}:{setting.Key}", setting.Value, $"is no setting of the shared cache; there is {Section}:{Redis}");
        }

        if (section[Redis] is { } text && !string.IsNullOrWhiteSpace(text))
        {
            // Apart, so that a process on its own does not even load what speaks to the server.
            AddServer(builder.Services, text, dataPath);
        }
    }

    private static void AddServer(IServiceCollection services, string text, string dataPath)
    {
        var settings = Read(text);
        services.AddSingleton<IDistributedCache>(provider => new SharedCache(
            settings, dataPath, provider.GetRequiredService<KitchenRecords>(), provider.GetRequiredService<ILogger<SharedCache>>()));
    }

    private static SharedCacheSettings Read(string text)
    {
        try
        {
            var server = ConfigurationOptions.Parse(text);
            if (server.EndPoints.Count == 0)
            {
                throw new ArgumentException("it names no server", nameof(text));
            }

            // A server that is away costs nothing: what would wait for it fails at once, and it is looked for behind the calls.
            server.AbortOnConnectFail = false;
            server.BacklogPolicy = BacklogPolicy.FailFast;
            (server.ConnectTimeout, server.AsyncTimeout, server.SyncTimeout) = (Patience, Patience, Patience);
            return new SharedCacheSettings(server);
        }
        catch (ArgumentException fault)
        {
            // The text may hold a password, which is nobody's to read in a log.
            throw new SettingFaultException($"{Section}:{Redis}", "(the text)", $"write it as HOST:6379 or HOST:6379,password=WORD,ssl=true ({fault.Message.ReplaceLineEndings(" ")})");
        }
    }
}
