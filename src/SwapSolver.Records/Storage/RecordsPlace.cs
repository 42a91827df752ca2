namespace SwapSolver.Records.Storage;

/// <summary>Tells a folder from a server.</summary>
public static class RecordsPlace
{
    /// <summary>Settings of a connection string that name its server.</summary>
    private static readonly string[] Hosts = ["Host", "Server"];

    /// <summary>Whether a place is the connection string of a server, as <c>Host=localhost;Database=kitchen</c>, and no folder.</summary>
    public static bool IsServer(string place) => place.Split(';').Any(setting =>
        setting.Split('=', 2) is [var name, _] && Hosts.Contains(name.Trim(), StringComparer.OrdinalIgnoreCase));
}
