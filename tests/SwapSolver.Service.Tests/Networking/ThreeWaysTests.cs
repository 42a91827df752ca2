using System.Net;
using System.Net.Http.Headers;
using System.Text;
using Google.Protobuf;
using Grpc.Core;
using Grpc.Net.Client;
using Grpc.Net.Client.Web;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Networking;

/// <summary>The same question over gRPC, gRPC-Web and HTTP/JSON is answered alike, whether or not it was asked before.</summary>
[Collection(OpenKitchen.Name)]
public sealed class ThreeWaysTests(OpenKitchen kitchen)
{
    private static readonly Formula Loaf = Bakes.Hazelnut;

    private static readonly Dictionary<string, (string Method, IMessage Request, MessageParser Answer)> Questions = new()
    {
        ["formulas:balance"] = ("BalanceService/BalanceFormula", new BalanceFormulaRequest { Formula = Loaf }, BalanceFormulaResponse.Parser),
        ["formulas:check"] = ("BalanceService/CheckSwap", Bakes.SodaSwap(Loaf), CheckSwapResponse.Parser),
        ["formulas:variant"] = ("SubstitutionService/VaryFormula", Bakes.WithoutTreeNuts(Loaf), VaryFormulaResponse.Parser),
        ["formulas:replace"] = ("SubstitutionService/ReplaceIngredient", new ReplaceIngredientRequest { Formula = Loaf, Ingredient = "ingredients/baking-soda" }, ReplaceIngredientResponse.Parser),
        ["formulas:resize"] = ("ReformulationService/ResizeFormula", new ResizeFormulaRequest { Formula = Loaf, Factor = 1.5 }, ResizeFormulaResponse.Parser),
        ["formulas:reformulate"] = ("ReformulationService/ReformulateFormula", new ReformulateFormulaRequest { Formula = Loaf, Targets = { new Target { Name = "less-salt" } } }, ReformulateFormulaResponse.Parser),
        ["formulas:bake"] = ("BakingService/BakeFormula", new BakeFormulaRequest { Formula = Loaf }, BakeFormulaResponse.Parser),
        ["formulas:rise"] = ("BakingService/PredictRise", new PredictRiseRequest { Formula = Loaf }, PredictRiseResponse.Parser),
        ["formulas:card"] = ("CardService/PrintCard", new PrintCardRequest { Formula = Loaf }, PrintCardResponse.Parser),
    };

    public static TheoryData<string> Paths => [.. Questions.Keys];

    [Theory]
    [MemberData(nameof(Paths))]
    public async Task A_question_is_answered_alike_over_every_way_in(string path)
    {
        var (method, request, answer) = Questions[path];
        using var web = GrpcChannel.ForAddress(
            kitchen.Service.Http.BaseAddress!,
            new GrpcChannelOptions { HttpHandler = new GrpcWebHandler(GrpcWebMode.GrpcWeb, new HttpClientHandler()), HttpVersion = HttpVersion.Version11 });
        var overGrpc = await Ask(kitchen.Service.Channel.CreateCallInvoker(), method, request);
        var overWeb = await Ask(web.CreateCallInvoker(), method, request);
        using var body = new StringContent(JsonFormatter.Default.Format(request), Encoding.UTF8, new MediaTypeHeaderValue("application/json"));
        using var response = await kitchen.Service.Http.PostAsync(new Uri($"/v1/{path}", UriKind.Relative), body);
        var text = await response.Content.ReadAsStringAsync();
        Assert.True(response.IsSuccessStatusCode, text);

        Assert.NotEmpty(overGrpc);
        Assert.Equal(overGrpc, overWeb);
        Assert.Equal(answer.ParseFrom(overGrpc), answer.ParseJson(text));
    }

    private async Task<byte[]> Ask(CallInvoker invoker, string method, IMessage request)
    {
        var raw = Marshallers.Create<byte[]>(bytes => bytes, bytes => bytes);
        var names = method.Split('/');
        var asked = new Method<byte[], byte[]>(MethodType.Unary, $"swapsolver.v1.{names[0]}", names[1], raw, raw);
        return await invoker.AsyncUnaryCall(asked, null, new CallOptions(new Metadata { { "authorization", $"Bearer {kitchen.Service.Key}" } }), request.ToByteArray());
    }
}
