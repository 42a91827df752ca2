using System.Runtime.CompilerServices;
using Microsoft.Extensions.Caching.Hybrid;
using Microsoft.Extensions.Caching.Memory;
using Microsoft.Extensions.DependencyInjection.Extensions;
using SwapSolver.Cards;
using SwapSolver.Data.Files;
using SwapSolver.OrTools;
using SwapSolver.Records;
using SwapSolver.Service.Access;
using SwapSolver.Service.Desk;
using SwapSolver.Service.Jobs;
using SwapSolver.Service.Learned;
using SwapSolver.Service.Limits;
using SwapSolver.Service.Networking;
using SwapSolver.Service.Records;
using SwapSolver.Service.Services;
using SwapSolver.Service.Shelf;
using SwapSolver.Service.Solves;
using SwapSolver.Service.Stored;
using SwapSolver.Service.Translation;
using SwapSolver.Service.Watching;
using SwapSolver.Solving.Models;

namespace SwapSolver.Service;

/// <summary>Joins the rooms and runs the service.</summary>
internal static class ServiceHost
{
    private const int WrongUse = 2;

    private const int WrongData = 3;

    /// <summary>A larger answer is not kept [bytes].</summary>
    private const int MostAnswerBytes = 8 * 1024 * 1024;

    /// <summary>An answer hangs on nothing but its question and the records; it is kept as long as there is room.</summary>
    private static readonly TimeSpan AnswerLife = TimeSpan.FromDays(30);

    /// <summary>Runs until it is told to stop. The result is the exit code.</summary>
    public static async Task<int> Run(ServiceOptions options)
    {
        if (!RuntimeFeature.IsDynamicCodeSupported && options.EmbeddedSocket is null)
        {
            await Console.Error.WriteLineAsync("this program serves one console on its own socket only: for a network, start SwapSolver.Service");
            return WrongUse;
        }

        // The native solver takes as long to load as the network to start: side by side, a console call waits for one.
        var loading = Task.Run(static () => new OrToolsSolver().Solve(new Model([], []), TimeSpan.FromSeconds(1), CancellationToken.None));
        WebApplication app;
        try
        {
            app = Build(options);
        }
        catch (Exception fault) when (fault is DataFaultException or SettingFaultException)
        {
            await Console.Error.WriteLineAsync(fault.Message);
            return WrongData;
        }

        await using (app)
        {
            await app.StartAsync();
            if (options.EmbeddedSocket is not null)
            {
                EmbeddedLife.Begin(app.Lifetime);
            }

            var tidied = StartLeftovers.GiveBack(app.Lifetime.ApplicationStopping);
            await app.WaitForShutdownAsync();
            await tidied;
        }

        await loading;
        return 0;
    }

    /// <summary>The service, not yet started.</summary>
    /// <exception cref="DataFaultException">A data file cannot be believed.</exception>
    /// <exception cref="SettingFaultException">A setting cannot be what it says.</exception>
    /// <param name="options">How it is started.</param>
    /// <param name="settings">Settings that go before those of the file and the environment.</param>
    public static WebApplication Build(ServiceOptions options, IEnumerable<KeyValuePair<string, string?>>? settings = null)
    {
        // The data takes as long to read as the host to build: side by side too.
        var data = Task.Run(() => ShippedData.Read(options.DataPath));
        var builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory });
        builder.Configuration.AddInMemoryCollection(settings);
        var limits = ServiceLimits.Read(builder.Configuration);
        // What a network needs is left out where the program was compiled ahead of time, for the console alone: it makes code when it runs.
        var isEmbedded = options.EmbeddedSocket is not null;
        Logging.Add(builder.Logging, asJson: !isEmbedded);
        builder.WebHost.ConfigureKestrel(kestrel => Doors.Open(kestrel, options, limits, DoorSettings.Read(builder.Configuration)));
        builder.Services.Configure<HostOptions>(host => host.ShutdownTimeout = TimeSpan.FromSeconds(limits.DrainSeconds));
        var rooms = new ServiceCollection();
        rooms.AddSingleton(limits);
        AddRooms(rooms, options, data);
        builder.Services.Add(rooms);
        if (RuntimeFeature.IsDynamicCodeSupported && !isEmbedded)
        {
            SharedCacheSettings.Add(builder, options.DataPath);
        }

        Methods.Add(builder.Services, limits, isEmbedded);
        if (RuntimeFeature.IsDynamicCodeSupported && !isEmbedded)
        {
            Network.Add(builder);
            Telemetry.Add(builder);
        }

        var app = builder.Build();
        if (RuntimeFeature.IsDynamicCodeSupported && !isEmbedded)
        {
            Network.Use(app, rooms);
        }

        app.Use(new CalledServices(app.Services).Answer);
        if (RuntimeFeature.IsDynamicCodeSupported && !isEmbedded)
        {
            Network.Map(app);
        }

        return IsRead(data, app);
    }

    /// <summary>A service whose data cannot be believed is none.</summary>
    private static WebApplication IsRead(Task<ShippedData> data, WebApplication app)
    {
        try
        {
            _ = data.GetAwaiter().GetResult();
            return app;
        }
        catch (DataFaultException)
        {
            ((IDisposable)app).Dispose();
            throw;
        }
    }

    private static KitchenShelf ShelfOf(ShippedData data, IServiceProvider provider) => new(
        data.Bakehouse, data.Measures, data.Foods, data.Measuring, data.Learning, provider.GetRequiredService<KitchenRecords>(), provider.GetRequiredService<ISolver>());

    private static void AddRooms(IServiceCollection services, ServiceOptions options, Task<ShippedData> data)
    {
        services.AddSingleton(TimeProvider.System);
        services.AddSingleton(options);
        services.AddScoped<Caller>();
        services.AddSingleton<CallMeter>();
        services.AddSingleton<CallerLimits>();
        services.AddSingleton<AccessInterceptor>();
        services.AddSingleton<FullHouse>();
        services.AddSingleton<ISolver>(provider => new WatchedSolver(new OrToolsSolver(), provider.GetRequiredService<CallMeter>()));
        AddShipped(shipped => shipped.Panels);
        AddShipped(shipped => shipped.Cards);
        AddShipped(shipped => shipped.Table);
        AddShipped(shipped => shipped.Ingredients);
        AddShipped(shipped => shipped.Questions);
        AddShipped(shipped => shipped.Formulas);
        services.AddSingleton<CardPrinter>();
        services.AddSingleton(_ => new KitchenRecords(options.RecordsPath));
        services.AddSingleton(provider => ShelfOf(data.GetAwaiter().GetResult(), provider));
        services.AddSingleton(provider =>
        {
            var room = new SolveRoom(provider.GetRequiredService<TimeProvider>(), provider.GetRequiredService<ServiceLimits>());
            provider.GetRequiredService<CallMeter>().Watch(() => room.Running, () => room.Waiting);
            return room;
        });
        services.AddSingleton<Adding>();
        services.AddSingleton<Importing>();
        // Cut down by itself when it is full; what is too old to be asked for again is pressed out.
        services.AddMemoryCache();
        services.AddOptions<MemoryCacheOptions>().Configure<ServiceLimits>((memory, limits) => memory.SizeLimit = limits.AnswerBytes);
        services.AddHybridCache(cache =>
        {
            cache.MaximumPayloadBytes = MostAnswerBytes;
            cache.DefaultEntryOptions = new HybridCacheEntryOptions { Expiration = AnswerLife, LocalCacheExpiration = AnswerLife };
        });
        // A call sees one state of the kitchen from start to end.
        services.AddScoped(provider => provider.GetRequiredService<Caller>() switch
        {
            { Kitchen: { } already } => already,
            { SeesOnlyPublished: true } => provider.GetRequiredService<KitchenShelf>().OnlyShipped,
            var caller => provider.GetRequiredService<KitchenShelf>().Today(caller.Stamp),
        });
        services.AddScoped(provider => provider.GetRequiredService<KitchenToday>().Search);
        services.AddScoped(provider => provider.GetRequiredService<KitchenToday>().Pantry);
        services.AddScoped(provider => provider.GetRequiredService<KitchenToday>().Lines);
        services.AddScoped<FormulaLibrary>();
        services.AddSingleton<RequestReader>();
        services.AddScoped<KitchenLearning>();
        services.AddScoped<KitchenAnchor>();
        services.AddScoped<Subject>();
        services.AddScoped<AnswerCache>();
        services.AddScoped<QuestionDesk>();
        services.AddSingleton<JobRunner>();
        services.AddHostedService(provider => provider.GetRequiredService<JobRunner>());

        void AddShipped<T>(Func<ShippedData, T> which)
            where T : class => services.AddSingleton(_ => which(data.GetAwaiter().GetResult()));
    }
}
