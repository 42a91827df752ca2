using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;

namespace SwapSolver.Console.Arguments;

/// <summary>The options that every verb takes.</summary>
internal sealed class SharedOptions
{
    private const string KeyVariable = "SWAPSOLVER_KEY";
    private const double DefaultDeadlineSeconds = 30;
    private const double DefaultStreamSeconds = 300;
    private const double LongestDeadlineSeconds = 3600;

    private readonly Option<bool> json = new("--json")
    {
        Description = "Print the response as JSON and nothing else.",
        Recursive = true,
    };

    private readonly Option<Uri?> server = new("--server")
    {
        Description = "Ask the service at this address. Without it a service is started for the call and stopped after it.",
        HelpName = "URL",
        Recursive = true,
        CustomParser = ParseServer,
    };

    private readonly Option<string?> key = new("--key")
    {
        Description = $"Key to the service at --server. Without it: what the variable {KeyVariable} holds, which other users of this machine cannot see.",
        HelpName = "KEY",
        Recursive = true,
    };

    private readonly Option<string?> records = new("--records")
    {
        Description = "Folder of the kitchen's own records, or a PostgreSQL database as \"Host=localhost;Database=kitchen\". Without it: the user's own data folder.",
        HelpName = "PATH",
        Recursive = true,
    };

    private readonly FigureOption deadline = new("--deadline", "SECONDS", "Longest wait for an answer. Without it: 30 seconds, and 300 for a frontier or a chart.", OutOfRange)
    {
        Recursive = true,
    };

    private readonly Option<bool> noColour = new("--no-color")
    {
        Description = "Print without colour.",
        Recursive = true,
    };

    /// <summary>Says what does not go together.</summary>
    public void Check(CommandResult result)
    {
        if (result.GetResult(server) is not null && result.GetResult(records) is not null)
        {
            result.AddError("--records has no use beside --server: that service has its own records.");
        }

        if (result.GetResult(key) is not null && result.GetResult(server) is null)
        {
            result.AddError("--key has no use without --server: your own records need no key.");
        }
    }

    /// <summary>Offers the options under every verb of a command.</summary>
    public void AddTo(RootCommand root)
    {
        root.Add(json);
        root.Add(server);
        root.Add(key);
        root.Add(records);
        root.Add(deadline);
        root.Add(noColour);
    }

    /// <summary>What the command line says.</summary>
    public SharedSettings Read(ParseResult parse) => new(
        parse.GetValue(json),
        parse.GetValue(server),
        parse.GetValue(key) ?? Environment.GetEnvironmentVariable(KeyVariable),
        parse.GetValue(records) is { } place ? RecordsOption.Resolve(place) : null,
        TimeSpan.FromSeconds(parse.GetValue(deadline) ?? DefaultDeadlineSeconds),
        TimeSpan.FromSeconds(parse.GetValue(deadline) ?? DefaultStreamSeconds),
        parse.GetValue(noColour));

    private static Uri? ParseServer(ArgumentResult result)
    {
        var text = result.Tokens[0].Value;
        if (Uri.TryCreate(text, UriKind.Absolute, out var address)
            && (address.Scheme == Uri.UriSchemeHttp || address.Scheme == Uri.UriSchemeHttps)
            && address.PathAndQuery == "/")
        {
            return address;
        }

        result.AddError($"--server '{text}' is not an address. Write http://HOST:PORT, as http://localhost:5081.");
        return null;
    }

    private static string? OutOfRange(double seconds) => seconds is > 0 and <= LongestDeadlineSeconds
        ? null
        : string.Create(CultureInfo.InvariantCulture, $"{seconds} is out of range. Write seconds above 0, at most {LongestDeadlineSeconds}.");
}
