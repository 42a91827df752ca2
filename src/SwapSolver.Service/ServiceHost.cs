using System.Net;
using Google.Protobuf.Reflection;
using Google.Rpc;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.Extensions.Diagnostics.HealthChecks;
using SwapSolver.Cards;
using SwapSolver.Data.Acids;
using SwapSolver.Data.Balances;
using SwapSolver.Data.Files;
using SwapSolver.Data.Foods;
using SwapSolver.Data.Forecasts;
using SwapSolver.Data.Ingredients;
using SwapSolver.Data.Labels;
using SwapSolver.Data.Learning;
using SwapSolver.Data.Measures;
using SwapSolver.Data.Panels;
using SwapSolver.Data.Practice;
using SwapSolver.Data.Wording;
using SwapSolver.Forecasts;
using SwapSolver.Kitchen.Foods;
using SwapSolver.OrTools;
using SwapSolver.Records;
using SwapSolver.Service.Access;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Learned;
using SwapSolver.Service.Records;
using SwapSolver.Service.Services;
using SwapSolver.Service.Shelf;
using SwapSolver.Service.Solves;
using SwapSolver.Service.Stored;
using SwapSolver.Service.Translation;
using SwapSolver.Solving;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;
using SwapSolver.Tables;

namespace SwapSolver.Service;

/// <summary>Joins the rooms and runs the service.</summary>
internal static class ServiceHost
{
    private const int WrongData = 3;

    private const int MostMessageBytes = 1024 * 1024;

    /// <summary>Runs until it is told to stop. The result is the exit code.</summary>
    public static async Task<int> Run(ServiceOptions options)
    {
        // The native solver takes as long to load as the network to start: side by side, a console call waits for one.
        var loading = Task.Run(static () => new OrToolsSolver().Solve(new Model([], []), TimeSpan.FromSeconds(1), CancellationToken.None));
        WebApplication app;
        try
        {
            app = Build(options);
        }
        catch (DataFaultException fault)
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

            await app.WaitForShutdownAsync();
        }

        await loading;
        return 0;
    }

    /// <summary>The service, not yet started.</summary>
    /// <exception cref="DataFaultException">A data file cannot be believed.</exception>
    public static WebApplication Build(ServiceOptions options)
    {
        var builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory });
        builder.Logging.ClearProviders();
        builder.Logging.AddConsole(console => console.LogToStandardErrorThreshold = LogLevel.Trace);
        builder.Logging.SetMinimumLevel(LogLevel.Warning);
        builder.WebHost.ConfigureKestrel(kestrel => Listen(kestrel, options));
        AddRooms(builder.Services, options);
        var grpc = builder.Services.AddGrpc(server =>
        {
            server.Interceptors.Add<FaultInterceptor>();
            server.Interceptors.Add<AccessInterceptor>();
            server.MaxReceiveMessageSize = MostMessageBytes;
        });
        if (options.EmbeddedSocket is null)
        {
            grpc.AddJsonTranscoding(json => json.TypeRegistry = TypeRegistry.FromMessages(BadRequest.Descriptor, ErrorInfo.Descriptor));
            builder.Services.AddGrpcHealthChecks().AddCheck("process", () => HealthCheckResult.Healthy());
        }

        var app = builder.Build();
        app.MapGrpcService<BalanceService>();
        app.MapGrpcService<SubstitutionService>();
        app.MapGrpcService<ReformulationService>();
        app.MapGrpcService<BakingService>();
        app.MapGrpcService<IngredientService>();
        app.MapGrpcService<MeasureService>();
        app.MapGrpcService<FormulaService>();
        app.MapGrpcService<KeyService>();
        app.MapGrpcService<TrialService>();
        app.MapGrpcService<RecordService>();
        app.MapGrpcService<CardService>();
        if (options.EmbeddedSocket is null)
        {
            app.MapGrpcHealthChecksService();
            app.MapHealthChecks("/health/live");
            app.MapHealthChecks("/health/ready");
        }

        return app;
    }

    private static void Listen(KestrelServerOptions kestrel, ServiceOptions options)
    {
        if (options.EmbeddedSocket is { } socket)
        {
            kestrel.ListenUnixSocket(socket, listen => listen.Protocols = HttpProtocols.Http2);
            return;
        }

        kestrel.Listen(IPAddress.Loopback, options.GrpcPort, listen => listen.Protocols = HttpProtocols.Http2);
        kestrel.Listen(IPAddress.Loopback, options.HttpPort, listen => listen.Protocols = HttpProtocols.Http1);
    }

    private static Bakehouse Open(DataFolder folder, SourceKeys sources)
    {
        var (pantry, phrases) = (PantryFiles.Read(folder, sources), PhraseFile.Read(folder));
        var acidity = new Acidity(AcidFiles.Read(folder, sources, pantry), ForecastFiles.ReadAcidity(folder, sources));
        var balances = BalanceFiles.Read(folder, sources);
        return new Bakehouse(
            pantry,
            balances,
            phrases,
            PracticeFile.Read(folder, sources),
            new Rise(acidity, ForecastFiles.ReadRise(folder, sources), phrases),
            new Bake(BakeFile.Read(folder, sources), phrases),
            GoalFile.Read(folder, sources, balances));
    }

    private static void AddRooms(IServiceCollection services, ServiceOptions options)
    {
        var folder = new DataFolder(options.DataPath);
        var sources = SourceKeys.Read(folder);
        var bakehouse = Open(folder, sources);
        services.AddSingleton(TimeProvider.System);
        services.AddSingleton(options);
        services.AddScoped<Caller>();
        services.AddSingleton<ISolver>(new OrToolsSolver());
        var measures = MeasureFiles.Read(folder, sources, bakehouse.Pantry);
        var foods = new FoodIngredient(FoodRulesFile.Read(folder, sources), bakehouse.Pantry.Allergens, new FoodWords(bakehouse.Phrases));
        var measuring = MeasuringFile.Read(folder, sources);
        var panels = PanelRulesFile.Read(folder, sources);
        services.AddSingleton(panels);
        var laws = LawFiles.Read(folder, sources, panels);
        services.AddSingleton(new CardRoom(laws, PhraseFile.ReadCard(folder), measures, OvenDialFile.Read(folder, sources), LocaleFile.Read(folder, sources, laws)));
        services.AddSingleton<CardPrinter>();
        services.AddSingleton(new FoodTable(foods.Rules, TableRulesFile.Read(folder, sources), bakehouse.Pantry));
        services.AddSingleton(_ => new KitchenRecords(options.RecordsPath));
        services.AddSingleton(provider => new KitchenShelf(
            bakehouse, measures, foods, measuring, LearningFile.Read(folder, sources), provider.GetRequiredService<KitchenRecords>(), provider.GetRequiredService<ISolver>()));
        services.AddSingleton(StoredFormulas.Read(options.DataPath));
        services.AddSingleton(new IngredientWriter(sources));
        services.AddSingleton<SolveRoom>();
        services.AddSingleton<Adding>();
        services.AddSingleton<Importing>();
        services.AddSingleton<AnswerStore>();
        // A call sees one state of the kitchen from start to end.
        services.AddScoped(provider => provider.GetRequiredService<Caller>().SeesOnlyPublished
            ? provider.GetRequiredService<KitchenShelf>().OnlyShipped
            : provider.GetRequiredService<KitchenShelf>().Today());
        services.AddScoped(provider => provider.GetRequiredService<KitchenToday>().Search with { Bags = new Bags() });
        services.AddScoped(provider => provider.GetRequiredService<KitchenToday>().Pantry);
        services.AddScoped(provider => provider.GetRequiredService<KitchenToday>().Lines);
        services.AddScoped<FormulaLibrary>();
        services.AddSingleton<RequestReader>();
        services.AddScoped<KitchenLearning>();
        services.AddScoped<KitchenAnchor>();
        services.AddScoped<Subject>();
        services.AddScoped<AnswerCache>();
    }
}
