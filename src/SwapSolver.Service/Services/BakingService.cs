using Grpc.Core;
using SwapSolver.Forecasts;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Solves;
using SwapSolver.Service.Translation;
using SwapSolver.Solving.Answers;
using SwapSolver.V1;
using Domain = SwapSolver.Kitchen.Formulas;
using Fact = SwapSolver.Kitchen.Ingredients.Fact;

namespace SwapSolver.Service.Services;

/// <summary>Forecasts how formulas rise.</summary>
internal sealed class BakingService(AnswerSearch search, Subject subject, SolveRoom room, AnswerCache cache)
    : V1.BakingService.BakingServiceBase
{
    private const double MostWaitMinutes = 240;

    private Rise Rise => search.Bakehouse.Rise;

    /// <inheritdoc/>
    public override Task<PredictRiseResponse> PredictRise(PredictRiseRequest request, ServerCallContext context)
    {
        var problems = new ProblemList();
        var formula = subject.Read(request.Name, request.Formula, problems);
        RequireKnown(formula, problems);
        var conditions = ReadConditions(request, problems);
        problems.ThrowIfAny();
        return cache.Get(request, async () =>
        {
            var forecast = await room.Run(context, (_, _) => Rise.Foretell(formula!, conditions, Draws.Typical));
            return (RiseWriter.Write(forecast), false);
        });
    }

    private RiseConditions ReadConditions(PredictRiseRequest request, ProblemList problems)
    {
        var (lowest, highest) = (StandardAtmosphere.Lowest.Value, StandardAtmosphere.Highest.Value);
        if (request.HasAltitudeMetres && !(request.AltitudeMetres >= lowest && request.AltitudeMetres <= highest))
        {
            problems.Add("altitudeMetres", request.AltitudeMetres, "is no height of a kitchen", $"give {lowest} to {highest} m above the sea");
        }

        if (request.HasWaitMinutes && !(request.WaitMinutes is >= 0 and <= MostWaitMinutes))
        {
            problems.Add("waitMinutes", request.WaitMinutes, "is no wait that can be forecast", $"give 0 to {MostWaitMinutes} minutes");
        }

        var usual = RiseConditions.Usual(Rise.Practice, new Metres(request.HasAltitudeMetres ? request.AltitudeMetres : 0));
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
