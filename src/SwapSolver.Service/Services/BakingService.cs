using Grpc.Core;
using SwapSolver.Forecasts;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Learned;
using SwapSolver.Service.Solves;
using SwapSolver.Service.Translation;
using SwapSolver.Solving.Answers;
using SwapSolver.V1;
using Domain = SwapSolver.Kitchen.Formulas;
using Fact = SwapSolver.Kitchen.Ingredients.Fact;

namespace SwapSolver.Service.Services;

/// <summary>Forecasts how formulas rise and bake.</summary>
internal sealed class BakingService(AnswerSearch search, Subject subject, SolveRoom room, AnswerCache cache, KitchenAnchor ownBakes)
    : V1.BakingService.BakingServiceBase
{
    private const double MostWaitMinutes = 240;

    private Rise Rise => search.Bakehouse.Rise;

    /// <inheritdoc/>
    public override Task<PredictRiseResponse> PredictRise(PredictRiseRequest request, ServerCallContext context)
    {
        var problems = new ProblemList();
        var read = subject.Read(request.Name, request.Formula, problems);
        var formula = read?.Formula;
        RequireKnown(formula, problems);
        var conditions = ReadConditions(request, problems);
        problems.ThrowIfAny();
        return cache.Get(request, async () =>
        {
            var forecast = await room.Run(context, (_, _) => Rise.Foretell(formula!, conditions, Draws.Typical));
            var written = RiseWriter.Write(forecast);
            written.LinesRead.AddRange(read!.LinesRead);
            return (written, false);
        });
    }

    /// <inheritdoc/>
    public override Task<BakeFormulaResponse> BakeFormula(BakeFormulaRequest request, ServerCallContext context)
    {
        var problems = new ProblemList();
        var read = subject.Read(request.Name, request.Formula, problems);
        var formula = read?.Formula;
        var bake = search.Bakehouse.Bake;
        var reader = new BakeReader(bake, problems);
        reader.RequireWater(formula, "formula.lines");
        var altitude = reader.Altitude(request.HasAltitudeMetres ? request.AltitudeMetres : null);
        var core = reader.Core(request.HasCoreCelsius ? request.CoreCelsius : null, "coreCelsius");
        var anchor = request.Anchor is { } known ? subject.Read(known.Name, known.Formula, problems, "anchor.formula") : null;
        reader.RequireWater(anchor?.Formula, "anchor.formula.lines");
        var conditions = new BakeConditions(altitude, core, request.ColdStart, reader.Known(request.Anchor, anchor?.Formula, altitude));
        problems.ThrowIfAny();
        var own = request.Anchor is null && !request.WithoutTrials ? ownBakes.For(request.Name, formula!, conditions) : null;
        conditions = own is null ? conditions : conditions with { Known = own.Bake };
        return cache.Get(request, async () =>
        {
            var forecast = await room.Run(context, (_, _) => bake.Foretell(formula!, conditions, Draws.Typical));
            var written = BakeWriter.Write(formula!, forecast);
            written.AnchorTrial = own?.Trial ?? string.Empty;
            written.LinesRead.AddRange(read!.LinesRead.Concat(anchor?.LinesRead ?? []));
            return (written, false);
        });
    }

    private RiseConditions ReadConditions(PredictRiseRequest request, ProblemList problems)
    {
        var altitude = new BakeReader(search.Bakehouse.Bake, problems).Altitude(request.HasAltitudeMetres ? request.AltitudeMetres : null);
        if (request.HasWaitMinutes && !(request.WaitMinutes is >= 0 and <= MostWaitMinutes))
        {
            problems.Add("waitMinutes", request.WaitMinutes, "is no wait that can be forecast", $"give 0 to {MostWaitMinutes} minutes");
        }

        var usual = RiseConditions.Usual(Rise.Practice, altitude);
        return request.HasWaitMinutes ? usual with { Bench = new Minutes(request.WaitMinutes) } : usual;
    }

    private static void RequireKnown(Domain.Formula? formula, ProblemList problems)
    {
        foreach (var ingredient in formula?.Lines.Select(line => line.Ingredient).Distinct() ?? [])
        {
            Fact[] unknown = [.. new[] { Fact.Acid, Fact.Base, Fact.Water }.Where(fact => ingredient.RangeOf(fact) is null)];
            if (unknown.Length > 0)
            {
                problems.Add(
                    "formula.lines", ResourceName.Of(ingredient), $"cannot be forecast with: {string.Join(", ", unknown.Select(fact => fact.Id))} is not known", "add it to the table or packet that the ingredient came from, or name another ingredient");
            }
        }
    }
}
