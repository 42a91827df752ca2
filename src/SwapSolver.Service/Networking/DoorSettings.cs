using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using SwapSolver.Service.Limits;

namespace SwapSolver.Service.Networking;

/// <summary>Where the service listens, from the section <c>Listen</c> of its configuration: loopback and nothing else, unless a
/// certificate is given or the caller says that something before it has one.</summary>
/// <param name="Address">Address to listen on.</param>
/// <param name="Certificate">Certificate with its key; null without TLS.</param>
internal sealed record DoorSettings(IPAddress Address, X509Certificate2? Certificate)
{
    /// <summary>Name of the section.</summary>
    public const string Section = "Listen";

    /// <summary>Reads the settings.</summary>
    /// <exception cref="SettingFaultException">A setting cannot be what it says.</exception>
    public static DoorSettings Read(IConfiguration configuration)
    {
        var section = configuration.GetSection(Section);
        var text = section["Address"];
        if (!IPAddress.TryParse(string.IsNullOrEmpty(text) ? "127.0.0.1" : text, out var address))
        {
            throw new SettingFaultException($"{Section}:Address", text, "give an address of this machine, as 127.0.0.1 or 0.0.0.0");
        }

        var certificate = CertificateOf(section["CertificateFile"], section["KeyFile"]);
        if (certificate is null && !IPAddress.IsLoopback(address) && section["WithoutTls"] != "true")
        {
            throw new SettingFaultException(
                $"{Section}:Address",
                text,
                $"others could read along; give {Section}:CertificateFile and {Section}:KeyFile, or {Section}:WithoutTls=true where something before it has TLS");
        }

        return new DoorSettings(address, certificate);
    }

    private static X509Certificate2? CertificateOf(string? certificate, string? key)
    {
        if (string.IsNullOrEmpty(certificate))
        {
            return string.IsNullOrEmpty(key)
                ? null
                : throw new SettingFaultException($"{Section}:KeyFile", key, $"give {Section}:CertificateFile with it");
        }

        try
        {
            return X509Certificate2.CreateFromPemFile(certificate, string.IsNullOrEmpty(key) ? null : key);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or CryptographicException or ArgumentException)
        {
            throw new SettingFaultException($"{Section}:CertificateFile", certificate, "give a readable PEM file, and its key's PEM file as Listen:KeyFile");
        }
    }
}
