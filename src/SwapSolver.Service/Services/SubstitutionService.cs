using System.Collections.Immutable;
using Grpc.Core;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Solves;
using SwapSolver.Service.Translation;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Questions;
using SwapSolver.Solving.Wishes;
using SwapSolver.V1;
using Diet = SwapSolver.Solving.Wishes.Diet;

namespace SwapSolver.Service.Services;

/// <summary>Solves variants of formulas, replaces ingredients, and charts what may stand in for what.</summary>
internal sealed class SubstitutionService(AnswerSearch search, Subject subject, SolveRoom room, AnswerCache cache)
    : V1.SubstitutionService.SubstitutionServiceBase
{
    private const int MostWishes = 50;

    private readonly AnswerWriter writer = new(search.Bakehouse);

    /// <inheritdoc/>
    public override Task<VaryFormulaResponse> VaryFormula(VaryFormulaRequest request, ServerCallContext context)
    {
        var problems = new ProblemList();
        var read = subject.Read(request.Name, request.Formula, problems);
        var formula = read?.Formula;
        KnownFacts.Require(search.Bakehouse.Balances, formula, problems);
        var reader = new HabitsReader(search.Bakehouse, problems);
        var habits = formula is null ? null : reader.Read(request.Habits, formula);
        var wishes = ReadWithout(request, problems).AddRange(reader.ReadLimits(request.Habits));
        if (request.Without.Count == 0 && wishes.IsEmpty)
        {
            problems.Add("without", string.Empty, "no wish is given", "name what to leave out, a diet, or a limit");
        }

        KnownFacts.RequireLimits(wishes, formula, [], problems);
        problems.ThrowIfAny();
        return cache.Get(request, context, async () =>
        {
            var outcomes = await room.Run(
                context, (clock, cancel) => new Variant(formula!, wishes, habits!).Answer(search, clock, cancel));
            OutOfTime.ThrowIf(outcomes.RanOutOfTime);
            return (Write(read!, outcomes), outcomes.EndedEarly);
        });
    }

    /// <inheritdoc/>
    public override Task ChartSwaps(ChartSwapsRequest request, IServerStreamWriter<ChartSwapsResponse> responseStream, ServerCallContext context)
    {
        var problems = new ProblemList();
        var chart = new ChartReader(search.Bakehouse, subject, problems).Read(request);
        problems.ThrowIfAny();
        var pairs = chart!.Pairs(search.Bakehouse);
        return room.Stream(
            context,
            (clock, cancel) => chart.Trace(search, pairs, clock, cancel).Select((charted, index) => ChartWriter.Write(charted, index + 1, pairs.Length)),
            responseStream);
    }

    /// <inheritdoc/>
    public override Task<ReplaceIngredientResponse> ReplaceIngredient(ReplaceIngredientRequest request, ServerCallContext context)
    {
        var problems = new ProblemList();
        var reader = new ReplacementReader(search.Bakehouse, subject, problems);
        var replacement = reader.Read(request);
        problems.ThrowIfAny();
        return cache.Get(request, context, async () =>
        {
            var outcomes = await room.Run(context, (clock, cancel) => replacement!.Answer(search, clock, cancel));
            OutOfTime.ThrowIf(outcomes.RanOutOfTime);
            var written = new ReplaceIngredientResponse { Nearest = outcomes.Nearest is null ? null : writer.Write(outcomes.Nearest) };
            written.Answers.AddRange(outcomes.Answers.Select(writer.Write));
            written.Conflict.AddRange(outcomes.Conflict.Select(AnswerWriter.Write));
            written.Further.AddRange(outcomes.Further.Select(ReplacementWriter.Write));
            written.LinesRead.AddRange(reader.LinesRead);
            return (written, outcomes.EndedEarly);
        });
    }

    private ImmutableArray<Hold> ReadWithout(VaryFormulaRequest request, ProblemList problems)
    {
        if (request.Without.Count > MostWishes)
        {
            problems.Add("without", request.Without.Count.ToString(System.Globalization.CultureInfo.InvariantCulture), "wishes are too many", $"give at most {MostWishes}");
            return [];
        }

        var leavingOut = new LeavingOut(search.Bakehouse.Pantry, search.Bakehouse.Phrases);
        var wishes = ImmutableArray.CreateBuilder<Hold>();
        for (var index = 0; index < request.Without.Count; index++)
        {
            var word = ResourceName.IngredientId(request.Without[index].Trim().ToLowerInvariant());
            if (leavingOut.Of(word) is { } wish)
            {
                wishes.Add(wish);
            }
            else
            {
                problems.Add($"without[{index}]", request.Without[index], "is no allergen, group or ingredient that is known", NearestNames.WayOut(word, leavingOut.KnownWords));
            }
        }

        if (DietOf(request, problems) is { } diet)
        {
            wishes.Add(leavingOut.Of(diet));
        }

        return [.. wishes.DistinctBy(wish => wish.Id)];
    }

    private static Diet? DietOf(VaryFormulaRequest request, ProblemList problems)
    {
        switch (request.Diet)
        {
            case VaryFormulaRequest.Types.Diet.Unspecified:
                return null;
            case VaryFormulaRequest.Types.Diet.Vegetarian:
                return Diet.Vegetarian;
            case VaryFormulaRequest.Types.Diet.Vegan:
                return Diet.Vegan;
            case VaryFormulaRequest.Types.Diet.DairyFree:
                return Diet.DairyFree;
            default:
                problems.Add("diet", request.Diet.ToString(), "is no diet that is known", "give VEGETARIAN, VEGAN or DAIRY_FREE");
                return null;
        }
    }

    private VaryFormulaResponse Write(ReadFormula read, Outcomes outcomes)
    {
        var written = new VaryFormulaResponse
        {
            Nearest = outcomes.Nearest is null ? null : writer.Write(outcomes.Nearest),
        };
        written.Answers.AddRange(outcomes.Answers.Select(writer.Write));
        written.Conflict.AddRange(outcomes.Conflict.Select(AnswerWriter.Write));
        written.LinesRead.AddRange(read.LinesRead);
        return written;
    }
}
