using System.Globalization;

namespace SwapSolver.Service;

/// <summary>How the service is started.</summary>
/// <param name="GrpcPort">Loopback port for gRPC over HTTP/2 without TLS.</param>
/// <param name="HttpPort">Loopback port for HTTP/JSON.</param>
/// <param name="EmbeddedSocket">Unix socket to listen on instead of the ports; null where the ports are used.</param>
/// <param name="DataPath">Folder of facts, bands and words.</param>
/// <param name="RecordsPath">Folder of what this kitchen writes down.</param>
internal sealed record ServiceOptions(int GrpcPort, int HttpPort, string? EmbeddedSocket, string DataPath, string RecordsPath)
{
    private const int UsualGrpcPort = 5081;

    private const int UsualHttpPort = 5080;

    private const string Usage =
        "usage: SwapSolver.Service [--grpc-port N] [--http-port N] [--data PATH] [--records PATH] [--embedded-socket PATH]";

    /// <summary>The user's own data folder, where this machine names one, else the working folder.</summary>
    private static string UsualRecords => Path.Combine(
        Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify), "swapsolver");

    /// <summary>Reads the command line.</summary>
    /// <param name="args">The words.</param>
    /// <param name="wrong">What is wrong with them; empty where nothing is.</param>
    public static ServiceOptions? Read(string[] args, out string wrong)
    {
        var options = new ServiceOptions(UsualGrpcPort, UsualHttpPort, null, Path.Combine(AppContext.BaseDirectory, "data"), UsualRecords);
        wrong = string.Empty;
        for (var index = 0; index < args.Length; index += 2)
        {
            var value = index + 1 < args.Length ? args[index + 1] : null;
            options = (args[index], value) switch
            {
                ("--grpc-port", { } port) when PortOf(port) is { } number => options with { GrpcPort = number },
                ("--http-port", { } port) when PortOf(port) is { } number => options with { HttpPort = number },
                ("--embedded-socket", { Length: > 0 } path) => options with { EmbeddedSocket = path },
                ("--data", { Length: > 0 } path) => options with { DataPath = path },
                ("--records", { Length: > 0 } path) => options with { RecordsPath = path },
                _ => null,
            };
            if (options is null)
            {
                wrong = $"'{args[index]} {value}' is not understood{Environment.NewLine}{Usage}";
                return null;
            }
        }

        return options;
    }

    private static int? PortOf(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var port) && port is >= 0 and <= 65_535 ? port : null;
}
