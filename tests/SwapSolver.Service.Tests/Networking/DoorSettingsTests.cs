using System.Net.Security;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Grpc.Net.Client;
using Microsoft.Extensions.Configuration;
using SwapSolver.Service.Limits;
using SwapSolver.Service.Networking;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Networking;

public sealed class DoorSettingsTests
{
    [Fact]
    public void Nothing_said_is_loopback_without_a_certificate()
    {
        var settings = DoorSettings.Read(With());
        Assert.Equal("127.0.0.1", settings.Address.ToString());
        Assert.Null(settings.Certificate);
    }

    [Theory]
    [InlineData("Listen:Address", "kitchen", "give an address")]
    [InlineData("Listen:Address", "0.0.0.0", "others could read along")]
    [InlineData("Listen:CertificateFile", "nowhere.pem", "give a readable PEM file")]
    [InlineData("Listen:KeyFile", "key.pem", "Listen:CertificateFile")]
    public void A_door_that_cannot_be_opened_so_is_named(string name, string value, string wayOut)
    {
        var fault = Assert.Throws<SettingFaultException>(() => DoorSettings.Read(With((name, value))));
        Assert.Contains($"setting {name}: '{value}'", fault.Message, StringComparison.Ordinal);
        Assert.Contains(wayOut, fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Behind_something_that_has_a_certificate_it_may_listen_without() =>
        Assert.Equal("0.0.0.0", DoorSettings.Read(With(("Listen:Address", "0.0.0.0"), ("Listen:WithoutTls", "true"))).Address.ToString());

    [Fact]
    public async Task With_a_certificate_calls_are_sealed()
    {
        var folder = Directory.CreateTempSubdirectory("kitchen-certificate-");
        try
        {
            using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
            var request = new CertificateRequest("CN=localhost", key, HashAlgorithmName.SHA256);
            using var own = request.CreateSelfSigned(DateTimeOffset.UtcNow.AddDays(-1), DateTimeOffset.UtcNow.AddDays(1));
            var (certificate, secret) = (Path.Combine(folder.FullName, "own.pem"), Path.Combine(folder.FullName, "own-key.pem"));
            await File.WriteAllTextAsync(certificate, own.ExportCertificatePem());
            await File.WriteAllTextAsync(secret, key.ExportPkcs8PrivateKeyPem());
            await using var service = await RunningService.Start(null, null, ("Listen:CertificateFile", certificate), ("Listen:KeyFile", secret));
            Assert.Equal("https", service.Http.BaseAddress!.Scheme);
            using var handler = new SocketsHttpHandler
            {
                SslOptions = new SslClientAuthenticationOptions
                {
                    RemoteCertificateValidationCallback = (_, shown, _, _) => shown?.GetCertHashString() == own.GetCertHashString(),
                },
            };
            using var channel = GrpcChannel.ForAddress(service.GrpcAddress, new GrpcChannelOptions { HttpHandler = handler });
            var butter = await new IngredientService.IngredientServiceClient(channel).GetIngredientAsync(new GetIngredientRequest { Name = "ingredients/butter" });
            Assert.Equal("ingredients/butter", butter.Name);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static IConfiguration With(params (string Name, string? Value)[] settings) =>
        new ConfigurationBuilder().AddInMemoryCollection(settings.Select(one => KeyValuePair.Create(one.Name, one.Value))).Build();
}
