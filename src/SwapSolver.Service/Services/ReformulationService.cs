using System.Globalization;
using Grpc.Core;
using SwapSolver.Forecasts;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Learned;
using SwapSolver.Service.Solves;
using SwapSolver.Service.Translation;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Questions;
using SwapSolver.V1;
using Domain = SwapSolver.Kitchen.Formulas;
using Fact = SwapSolver.Kitchen.Ingredients.Fact;

namespace SwapSolver.Service.Services;

/// <summary>Solves formulas in other sizes, towards targets and along trade-offs.</summary>
internal sealed class ReformulationService(AnswerSearch search, Subject subject, SolveRoom room, AnswerCache cache, KitchenAnchor ownBakes)
    : V1.ReformulationService.ReformulationServiceBase
{
    private const double LeastFactor = 0.05;

    private const double MostFactor = 100;

    private const int UsualPoints = 9;

    private const int MostPoints = 50;

    private readonly AnswerWriter writer = new(search.Bakehouse);

    private Bake Bake => search.Bakehouse.Bake;

    /// <inheritdoc/>
    public override Task<ResizeFormulaResponse> ResizeFormula(ResizeFormulaRequest request, ServerCallContext context)
    {
        var problems = new ProblemList();
        var read = subject.Read(request.Name, request.Formula, problems);
        var formula = read?.Formula;
        KnownFacts.Require(search.Bakehouse.Balances, formula, problems);
        problems.ThrowIfAny();
        var reader = new HabitsReader(search.Bakehouse, problems);
        var habits = reader.Read(request.Habits, formula!);
        var limits = reader.ReadLimits(request.Habits);
        var size = ReadSize(request, formula!, problems);
        KnownFacts.RequireLimits(limits, formula, [], problems);
        var conditions = ReadConditions(request, formula!, problems);
        problems.ThrowIfAny();
        var own = conditions.Known is null ? ownBakes.For(request.Name, formula!, conditions) : null;
        subject.Remember(own?.Trial);
        conditions = own is null ? conditions : conditions with { Known = own.Bake };
        var resize = new Resize(formula!, size!, limits, habits) { Notes = [.. TinWords.Of(search.Bakehouse, formula!, request.Tin)] };
        return cache.Get(request, context, async () =>
        {
            var (outcomes, change) = await room.Run(context, (clock, cancel) =>
            {
                var found = resize.Answer(search, clock, cancel);
                return (found, ChangeOf(formula!, found, conditions));
            });
            OutOfTime.ThrowIf(outcomes.RanOutOfTime);
            var written = Write(read!, outcomes, size!.Factor);
            written.Bake = BakeWriter.Write(change);
            written.AnchorTrial = change is null ? string.Empty : own?.Trial ?? string.Empty;
            return (written, outcomes.EndedEarly);
        });
    }

    /// <inheritdoc/>
    public override Task<ReformulateFormulaResponse> ReformulateFormula(ReformulateFormulaRequest request, ServerCallContext context)
    {
        var problems = new ProblemList();
        var read = subject.Read(request.Name, request.Formula, problems);
        var formula = read?.Formula;
        KnownFacts.Require(search.Bakehouse.Balances, formula, problems);
        var reader = new HabitsReader(search.Bakehouse, problems);
        var habits = formula is null ? null : reader.Read(request.Habits, formula);
        var limits = reader.ReadLimits(request.Habits);
        KnownFacts.RequireLimits(limits, formula, [], problems);
        var (goals, targets) = new TargetReader(search.Bakehouse, formula, problems).Read(request.Targets);
        problems.ThrowIfAny();
        var reformulate = new Reformulate(formula!, goals, targets, limits, habits!);
        return cache.Get(request, context, async () =>
        {
            var reformulated = await room.Run(context, (clock, cancel) => reformulate.Answer(search, clock, cancel));
            OutOfTime.ThrowIf(reformulated.Outcomes.RanOutOfTime);
            return (Write(read!, reformulated), reformulated.Outcomes.EndedEarly);
        });
    }

    /// <inheritdoc/>
    public override Task TraceFrontier(TraceFrontierRequest request, IServerStreamWriter<TraceFrontierResponse> responseStream, ServerCallContext context)
    {
        var problems = new ProblemList();
        var formula = subject.Read(request.Name, request.Formula, problems)?.Formula;
        KnownFacts.Require(search.Bakehouse.Balances, formula, problems);
        var reader = new HabitsReader(search.Bakehouse, problems);
        var habits = formula is null ? null : reader.Read(request.Habits, formula);
        var limits = reader.ReadLimits(request.Habits);
        KnownFacts.RequireLimits(limits, formula, [], problems);
        reader.RefuseRanking(request.Habits);
        var trade = new TargetReader(search.Bakehouse, formula, problems).Read(request.Trades);
        var points = request.HasMostPoints ? request.MostPoints : UsualPoints;
        if (points is < 2 or > MostPoints)
        {
            problems.Add("mostPoints", points, "points make no curve", $"give 2 to {MostPoints}");
        }

        problems.ThrowIfAny();
        var frontier = new Frontier(formula!, trade!.Value.First, trade.Value.Second, points, limits, habits!);
        var written = new FrontierWriter(frontier, writer);
        var order = new CallersOrder(subject.AsGiven!);
        return room.Stream(
            context,
            (clock, cancel) => frontier.Trace(search, clock, cancel).Select((point, index) => order.Given(written.Write(point, index + 1))),
            responseStream);
    }

    private BakeConditions ReadConditions(ResizeFormulaRequest request, Domain.Formula formula, ProblemList problems)
    {
        var reader = new BakeReader(Bake, problems);
        var conditions = new BakeConditions(
            reader.Altitude(request.HasAltitudeMetres ? request.AltitudeMetres : null),
            reader.Core(request.HasCoreCelsius ? request.CoreCelsius : null, "coreCelsius"));
        return request.HasKnownMinutes
            ? conditions with { Known = new Forecasts.KnownBake(formula, reader.Baked(request.KnownMinutes, "knownMinutes"), Bake.TargetOf(formula, conditions)) }
            : conditions;
    }

    /// <summary>How the best answer bakes beside the formula that the caller gave; null where that cannot be told.</summary>
    private Forecasts.BakeChange? ChangeOf(Domain.Formula formula, Outcomes outcomes, BakeConditions conditions) =>
        outcomes.Answers.Length > 0 && formula.States(Fact.Water) && outcomes.Answers[0].Formula.States(Fact.Water)
            ? Bake.Compare(formula, outcomes.Answers[0].Formula, conditions, Draws.Typical)
            : null;

    private NewSize? ReadSize(ResizeFormulaRequest request, Domain.Formula formula, ProblemList problems)
    {
        if (request.HasSlices && request.Slices is < 1 or > FormulaReader.MostSlices)
        {
            problems.Add("slices", request.Slices, "slices cannot be", $"give 1 to {FormulaReader.MostSlices}");
            return null;
        }

        var (field, value, size) = ReadKind(request, formula, problems);
        if (size is not null && !(size.Factor is >= LeastFactor and <= MostFactor))
        {
            problems.Add(field, value, "is no size that this formula can be made in", string.Create(CultureInfo.InvariantCulture, $"give a size between {LeastFactor} and {MostFactor} times the formula's own"));
        }

        return request.HasSlices ? size?.CutInto(request.Slices) : size;
    }

    private (string Field, string Value, NewSize? Size) ReadKind(
        ResizeFormulaRequest request, Domain.Formula formula, ProblemList problems)
    {
        switch (request.SizeCase)
        {
            case ResizeFormulaRequest.SizeOneofCase.MassGrams:
                return ("massGrams", Plain(request.MassGrams), NewSize.OfMass(formula, new Grams(request.MassGrams)));
            case ResizeFormulaRequest.SizeOneofCase.Factor:
                return ("factor", Plain(request.Factor), NewSize.Times(formula, request.Factor));
            case ResizeFormulaRequest.SizeOneofCase.Tin:
                var tin = ShapeReader.ReadTin(request.Tin, "tin", problems);
                return (
                    "tin",
                    $"{Plain(tin.Length.Value)} x {Plain(tin.Width.Value)} x {Plain(tin.Height.Value)} mm",
                    formula.Shape is Domain.Tin own ? NewSize.OfTin(formula, own, tin) : NewSize.OfFirstTin(formula, tin, Bake.WellFilling(tin)));
            default:
                if (request.HasSlices)
                {
                    return ("slices", Plain(request.Slices), NewSize.OfSlices(formula, request.Slices));
                }

                problems.Add("size", string.Empty, "the new size is missing", "give massGrams, factor, tin or slices");
                return ("size", string.Empty, null);
        }
    }

    private static string Plain(double value) => value.ToString(CultureInfo.InvariantCulture);

    private ReformulateFormulaResponse Write(ReadFormula read, Reformulated reformulated)
    {
        var outcomes = reformulated.Outcomes;
        var written = new ReformulateFormulaResponse { Nearest = outcomes.Nearest is null ? null : writer.Write(outcomes.Nearest) };
        written.Answers.AddRange(outcomes.Answers.Select(writer.Write));
        written.Conflict.AddRange(outcomes.Conflict.Select(AnswerWriter.Write));
        written.Before.AddRange(reformulated.Before.Select(ReadingWriter.Write));
        written.LinesRead.AddRange(read.LinesRead);
        return written;
    }

    private ResizeFormulaResponse Write(ReadFormula read, Outcomes outcomes, double factor)
    {
        var written = new ResizeFormulaResponse
        {
            Nearest = outcomes.Nearest is null ? null : writer.Write(outcomes.Nearest),
            Factor = factor,
        };
        written.Answers.AddRange(outcomes.Answers.Select(writer.Write));
        written.Conflict.AddRange(outcomes.Conflict.Select(AnswerWriter.Write));
        written.LinesRead.AddRange(read.LinesRead);
        return written;
    }
}
