namespace SwapSolver.Service.Watching;

/// <summary>The service's log, on standard error: plain lines for a person, one JSON object a line for a machine.</summary>
internal static class Logging
{
    /// <summary>Sets it up; levels may be changed in the section <c>Logging</c> of the configuration.</summary>
    public static void Add(ILoggingBuilder logging, bool asJson)
    {
        logging.ClearProviders();
        logging.SetMinimumLevel(LogLevel.Warning);
        // The framework calls every broken message an error of the service: whoever sends junk would fill the log. Our own faults are logged by us.
        logging.AddFilter("Grpc.AspNetCore.Server.ServerCallHandler", LogLevel.None);
        if (asJson)
        {
            logging.AddJsonConsole(json =>
            {
                json.IncludeScopes = true;
                json.UseUtcTimestamp = true;
                json.TimestampFormat = "O";
            });
            logging.Configure(options => options.ActivityTrackingOptions = ActivityTrackingOptions.TraceId | ActivityTrackingOptions.SpanId);
        }
        else
        {
            logging.AddSimpleConsole();
        }

        logging.Services.Configure<Microsoft.Extensions.Logging.Console.ConsoleLoggerOptions>(console => console.LogToStandardErrorThreshold = LogLevel.Trace);
    }
}
