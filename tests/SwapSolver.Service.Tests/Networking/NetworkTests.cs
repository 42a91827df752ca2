using System.Net;
using Grpc.Health.V1;
using Grpc.Net.Client;
using Grpc.Net.Client.Web;
using Grpc.Reflection.V1Alpha;
using SwapSolver.Service.Networking;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Networking;

[Collection(OpenKitchen.Name)]
public sealed class NetworkTests(OpenKitchen kitchen)
{
    [Fact]
    public async Task A_browser_asks_over_grpc_web_and_is_told_the_same()
    {
        using var channel = GrpcChannel.ForAddress(
            kitchen.Service.Http.BaseAddress!,
            new GrpcChannelOptions { HttpHandler = new GrpcWebHandler(GrpcWebMode.GrpcWebText, new HttpClientHandler()), HttpVersion = HttpVersion.Version11 });
        var asked = new VaryFormulaRequest { Formula = Bakes.Hazelnut, Without = { "tree-nuts" } };
        Assert.Equal(
            await kitchen.Service.Substitutions.VaryFormulaAsync(asked),
            await new SubstitutionService.SubstitutionServiceClient(channel).VaryFormulaAsync(asked));
    }

    [Fact]
    public async Task Who_asks_what_can_be_asked_is_given_every_service()
    {
        using var call = new ServerReflection.ServerReflectionClient(kitchen.Service.Channel).ServerReflectionInfo();
        await call.RequestStream.WriteAsync(new ServerReflectionRequest { ListServices = string.Empty });
        Assert.True(await call.ResponseStream.MoveNext(CancellationToken.None));
        var names = call.ResponseStream.Current.ListServicesResponse.Service.Select(service => service.Name).ToList();
        await call.RequestStream.CompleteAsync();
        var promised = new[] { BalanceServiceReflection.Descriptor, SubstitutionServiceReflection.Descriptor, ReformulationServiceReflection.Descriptor, BakingServiceReflection.Descriptor, IngredientServiceReflection.Descriptor, MeasureServiceReflection.Descriptor, CardServiceReflection.Descriptor }
            .SelectMany(file => file.Services).Select(service => service.FullName);
        Assert.Empty(promised.Append(Health.Descriptor.FullName).Except(names));
    }

    [Theory]
    [InlineData("/v1/formulas:vary")]
    [InlineData("/kitchens")]
    [InlineData("/%22%3E%3Cscript%3E")]
    public async Task Who_asks_at_an_address_that_is_none_is_told_where_the_addresses_stand(string address)
    {
        using var response = await kitchen.Service.Http.GetAsync(new Uri(address, UriKind.Relative));
        Assert.Equal(HttpStatusCode.NotFound, response.StatusCode);
        Assert.Equal("application/json", response.Content.Headers.ContentType?.MediaType);
        var told = Google.Protobuf.JsonParser.Default.Parse<Google.Rpc.Status>(await response.Content.ReadAsStringAsync());
        Assert.Equal(5, told.Code);
        Assert.Contains($"GET {address};", told.Message, StringComparison.Ordinal);
        Assert.Contains("/openapi/v1.json", told.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_page_that_was_not_built_says_in_a_sentence_how_to_build_it()
    {
        var builder = Microsoft.AspNetCore.Builder.WebApplication.CreateSlimBuilder();
        Microsoft.AspNetCore.Hosting.WebHostBuilderKestrelExtensions.ConfigureKestrel(builder.WebHost, kestrel => kestrel.Listen(IPAddress.Loopback, 0));
        await using var app = builder.Build();
        Pages.Map(app, Path.Combine(AppContext.BaseDirectory, "no-such-folder"));
        await app.StartAsync();
        using var client = new HttpClient { BaseAddress = new Uri(app.Urls.Single()) };
        foreach (var place in new[] { "/", "/kitchen" })
        {
            using var response = await client.GetAsync(new Uri(place, UriKind.Relative));
            Assert.Equal(HttpStatusCode.ServiceUnavailable, response.StatusCode);
            Assert.Contains("'npm ci' and 'npm run build' in clients/web", await response.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task An_answer_forbids_a_browser_to_take_it_for_a_page()
    {
        using var response = await kitchen.Service.Http.GetAsync(new Uri("/v1/ingredients/butter", UriKind.Relative));
        Assert.Equal("nosniff", response.Headers.GetValues("X-Content-Type-Options").Single());
        Assert.Contains("default-src 'none'", response.Headers.GetValues("Content-Security-Policy").Single(), StringComparison.Ordinal);
        Assert.False(response.Headers.Contains("Access-Control-Allow-Origin"));
        Assert.False(response.Headers.Contains("Server"));
    }

    [Fact]
    public async Task A_page_of_another_origin_gets_no_leave_to_ask()
    {
        using var request = new HttpRequestMessage(HttpMethod.Options, new Uri("/v1/formulas:balance", UriKind.Relative));
        request.Headers.Add("Origin", "http://bakery.example");
        request.Headers.Add("Access-Control-Request-Method", "POST");
        using var response = await kitchen.Service.Http.SendAsync(request);
        Assert.False(response.Headers.Contains("Access-Control-Allow-Origin"));
    }

    [Fact]
    public async Task A_foreign_name_for_this_machine_is_not_answered()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri("/v1/ingredients/butter", UriKind.Relative));
        request.Headers.Host = "bakery.example";
        using var response = await kitchen.Service.Http.SendAsync(request);
        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
    }

    [Fact]
    public async Task A_page_that_the_owner_named_may_ask()
    {
        await using var service = await RunningService.Start(null, null, ("AllowedOrigins", "http://bakery.example"));
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri("/v1/ingredients/butter", UriKind.Relative));
        request.Headers.Add("Origin", "http://bakery.example");
        using var response = await service.Http.SendAsync(request);
        Assert.Equal("http://bakery.example", response.Headers.GetValues("Access-Control-Allow-Origin").Single());
    }

    [Fact]
    public async Task A_kitchen_whose_solver_does_not_solve_lives_and_is_not_ready()
    {
        await using var service = await RunningService.Start(new StandInSolver { Instead = (_, _) => Solving.Models.Solution.None(Solving.Models.Outcome.OutOfTime) });
        Assert.Equal(HttpStatusCode.OK, (await service.Http.GetAsync(new Uri("/health/live", UriKind.Relative))).StatusCode);
        Assert.Equal(HttpStatusCode.ServiceUnavailable, (await service.Http.GetAsync(new Uri("/health/ready", UriKind.Relative))).StatusCode);
        var health = await service.Health.CheckAsync(new HealthCheckRequest());
        Assert.Equal(HealthCheckResponse.Types.ServingStatus.NotServing, health.Status);
    }
}
