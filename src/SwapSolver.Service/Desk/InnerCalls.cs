using System.Diagnostics.CodeAnalysis;
using Grpc.Core;
using SwapSolver.Service.Access;
using SwapSolver.Service.Records;
using SwapSolver.V1;

namespace SwapSolver.Service.Desk;

/// <summary>Asks the other questions of the service from within, each in a scope of its own, as the same caller and of the same kitchen.</summary>
internal sealed class InnerCalls(IServiceScopeFactory scopes, Caller caller, KitchenToday kitchen)
{
    /// <summary>How often a question waits for a place where all are taken, each time a little longer.</summary>
    private const int MostTries = 30;

    private static readonly TimeSpan FirstWait = TimeSpan.FromMilliseconds(50);

    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(2);

    public Task<VaryFormulaResponse> Vary(VaryFormulaRequest request, ServerCallContext context) =>
        In<Services.SubstitutionService, VaryFormulaResponse>(service => service.VaryFormula(request, context), context);

    public Task<ReplaceIngredientResponse> Replace(ReplaceIngredientRequest request, ServerCallContext context) =>
        In<Services.SubstitutionService, ReplaceIngredientResponse>(service => service.ReplaceIngredient(request, context), context);

    /// <summary>A reader is answered in words and grams: of the readings goes out whether each is kept, and no range.</summary>
    public Task<CheckSwapResponse> Check(CheckSwapRequest request, ServerCallContext context) =>
        In<Services.BalanceService, CheckSwapResponse>(service => service.CheckSwap(request, context, withRanges: false), context);

    public Task<BalanceFormulaResponse> Balance(BalanceFormulaRequest request, ServerCallContext context) =>
        In<Services.BalanceService, BalanceFormulaResponse>(service => service.BalanceFormula(request, context), context);

    public Task<ResizeFormulaResponse> Resize(ResizeFormulaRequest request, ServerCallContext context) =>
        In<Services.ReformulationService, ResizeFormulaResponse>(service => service.ResizeFormula(request, context), context);

    public Task<ReformulateFormulaResponse> Reformulate(ReformulateFormulaRequest request, ServerCallContext context) =>
        In<Services.ReformulationService, ReformulateFormulaResponse>(service => service.ReformulateFormula(request, context), context);

    public Task<BakeFormulaResponse> Bake(BakeFormulaRequest request, ServerCallContext context) =>
        In<Services.BakingService, BakeFormulaResponse>(service => service.BakeFormula(request, context), context);

    public Task<PredictRiseResponse> Rise(PredictRiseRequest request, ServerCallContext context) =>
        In<Services.BakingService, PredictRiseResponse>(service => service.PredictRise(request, context), context);

    public Task<ConvertLinesResponse> Convert(ConvertLinesRequest request, ServerCallContext context) =>
        In<Services.MeasureService, ConvertLinesResponse>(service => service.ConvertLines(request, context), context);

    private async Task<TResponse> In<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicConstructors)] TService, TResponse>(Func<TService, Task<TResponse>> ask, ServerCallContext context)
    {
        for (var tried = 1; ; tried++)
        {
            try
            {
                await using var scope = scopes.CreateAsyncScope();
                var inner = scope.ServiceProvider.GetRequiredService<Caller>();
                (inner.Role, inner.Kitchen) = (caller.Role, kitchen);
                return await ask(Made<TService>.By(scope.ServiceProvider, []));
            }
            catch (RpcException fault) when (fault.StatusCode == StatusCode.ResourceExhausted && tried < MostTries)
            {
                var wait = FirstWait * tried;
                await Task.Delay(wait < LongestWait ? wait : LongestWait, context.CancellationToken);
            }
        }
    }

    /// <summary>How a service is made; what it needs is looked up once.</summary>
    private static class Made<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicConstructors)] TService>
    {
        public static readonly ObjectFactory<TService> By = ActivatorUtilities.CreateFactory<TService>([]);
    }
}
