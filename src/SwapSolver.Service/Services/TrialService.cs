using System.Globalization;
using Google.Rpc;
using Grpc.Core;
using SwapSolver.Forecasts;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Records.Trials;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Learned;
using SwapSolver.Service.Records;
using SwapSolver.Service.Solves;
using SwapSolver.Service.Stored;
using SwapSolver.Service.Translation;
using SwapSolver.V1;
using Domain = SwapSolver.Kitchen.Formulas;
using Fact = SwapSolver.Kitchen.Ingredients.Fact;
using Reason = SwapSolver.V1.CallFault.Types.Reason;

namespace SwapSolver.Service.Services;

/// <summary>Keeps trials, and tells what the kitchen learned from them.</summary>
internal sealed class TrialService(
    FormulaLibrary library, KitchenShelf shelf, KitchenToday kitchen, KitchenLearning learning, RequestReader requests, Subject subject, SolveRoom room) : V1.TrialService.TrialServiceBase
{
    private const string Trials = "/trials/";

    private readonly LearnedWriter writer = new(shelf.Phrases);

    private Solving.Bakehouse Bakehouse => kitchen.Search.Bakehouse;

    /// <inheritdoc/>
    public override async Task<Trial> AddTrial(AddTrialRequest request, ServerCallContext context)
    {
        var problems = new ProblemList();
        var trial = new Trial(request.Trial ?? new Trial()) { Foretold = null };
        var name = trial.Revision > 0 ? ResourceName.OfRevision(ResourceName.FormulaId(request.Parent), trial.Revision) : request.Parent;
        var found = library.Find(name);
        if (found.Revision is not { } revision)
        {
            throw FormulaRefusal.Shipped(request.Parent);
        }

        var baked = new TrialReader(kitchen.Pantry, kitchen.Lines, Bakehouse.Bake, shelf.Measuring, problems).Read(trial, found.Formula);
        var asked = requests.Read(request.RequestId, request, problems, request.ValidateOnly);
        problems.ThrowIfAny();
        trial.Revision = (int)revision.Number;
        trial.Foretold = await room.Run(context, (_, _) => Foretell(trial, baked!));
        var written = await shelf.Records.Trials.AddAsync(new StoredTrial(revision.Formula, 0, revision.Number, TrialDocument.Write(trial), asked.At), asked)
            ?? throw library.NotThere(request.Parent);
        return written.Document.Length > 0 ? TrialDocument.Read(written) : throw FormulaRefusal.OtherRequest();
    }

    /// <inheritdoc/>
    public override Task<Trial> GetTrial(GetTrialRequest request, ServerCallContext context)
    {
        var (formula, number) = Parts(request.Name);
        return Task.FromResult(TrialDocument.Read(shelf.Records.Trials.Find(formula, number)
            ?? throw RichFault.Of(Code.NotFound, $"'{request.Name}' is no trial of this kitchen; see them with ListTrials (trial list)", RichFault.Info(Reason.NotFound, ("name", request.Name)))));
    }

    /// <inheritdoc/>
    public override Task<ListTrialsResponse> ListTrials(ListTrialsRequest request, ServerCallContext context)
    {
        var problems = new ProblemList();
        var pages = new PageReader(request.Parent, problems);
        var (size, last) = (pages.Size(request.PageSize), pages.Last(request.PageToken));
        long before = 0;
        if (last.Length > 0 && !long.TryParse(last, NumberStyles.None, CultureInfo.InvariantCulture, out before))
        {
            problems.Add("pageToken", request.PageToken, "is no token of this list", "give the nextPageToken of the page before");
        }

        problems.ThrowIfAny();
        _ = library.Find(request.Parent);
        var listed = shelf.Records.Trials.List(ResourceName.FormulaId(request.Parent), last.Length == 0 ? null : before, size + 1);
        var response = new ListTrialsResponse { NextPageToken = listed.Count > size ? pages.Token(listed[size - 1].Number.ToString(CultureInfo.InvariantCulture)) : string.Empty };
        response.Trials.AddRange(listed.Take(size).Select(TrialDocument.Read));
        return Task.FromResult(response);
    }

    /// <inheritdoc/>
    public override Task<ListLearnedFactsResponse> ListLearnedFacts(ListLearnedFactsRequest request, ServerCallContext context)
    {
        var (facts, next) = new PageReader("learned", new ProblemList()).Of(
            [.. learning.All().Select(LearnedWriter.Write)], request.PageSize, request.PageToken, fact => fact.Name);
        var response = new ListLearnedFactsResponse { NextPageToken = next };
        response.Facts.AddRange(facts);
        return Task.FromResult(response);
    }

    /// <inheritdoc/>
    public override async Task<LearnedFact> ChooseLearnedFact(ChooseLearnedFactRequest request, ServerCallContext context)
    {
        var problems = new ProblemList();
        if (request.Choice == ChooseLearnedFactRequest.Types.Choice.Unspecified)
        {
            problems.Add("choice", string.Empty, "nothing is chosen", "give USE, TURN_OFF or FORGET");
        }

        var asked = requests.Read(string.Empty, request, problems);
        problems.ThrowIfAny();
        var id = LearnedWriter.IdOf(request.Name);
        var known = learning.Find(id) ?? throw RichFault.Of(
            Code.NotFound, $"nothing was learned of '{request.Name}'; see what was with ListLearnedFacts (trial learned)", RichFault.Info(Reason.NotFound, ("name", request.Name)));
        var before = shelf.Records.Trials.Choices().GetValueOrDefault(id) ?? new LearnedChoice(id, 0, string.Empty);
        var chosen = request.Choice switch
        {
            ChooseLearnedFactRequest.Types.Choice.Use => before with { IsOff = 0 },
            ChooseLearnedFactRequest.Types.Choice.TurnOff => before with { IsOff = 1 },
            _ => before with { ForgottenBefore = asked.At },
        };
        await shelf.Records.Trials.ChooseAsync(chosen);
        return LearnedWriter.Write(learning.Find(id) ?? known with { Evidence = [], IsUsed = chosen.IsOff == 0 });
    }

    /// <inheritdoc/>
    public override Task<SuggestTrialsResponse> SuggestTrials(SuggestTrialsRequest request, ServerCallContext context)
    {
        var problems = new ProblemList();
        var read = subject.Read(request.Name, request.Formula, problems);
        problems.ThrowIfAny();
        var response = new SuggestTrialsResponse();
        response.Suggestions.AddRange(new NextTests(shelf.Learning, learning.All(), shelf.Untouched).For(request.Name, read!.Formula).Select(test => writer.Write(test, read.Formula)));
        return Task.FromResult(response);
    }

    /// <summary>What is foretold of this bake without anything learned, so that what was measured can be held against it.</summary>
    private Foretold Foretell(Trial trial, Domain.Formula baked)
    {
        var foretold = new Foretold();
        var altitude = new Metres(trial.AltitudeMetres);
        if (trial is { HasMinutes: true, HasCoreCelsius: true } && baked.States(Fact.Water)
            && Bakehouse.Bake.Foretell(baked, new BakeConditions(altitude, new Celsius(trial.CoreCelsius), trial.ColdStart), Draws.Typical) is { TimeToCore: { } time } forecast
            && Math.Abs(forecast.Target.Value - trial.CoreCelsius) < 0.05)
        {
            foretold.Minutes = time.Value.Value;
        }

        if (trial.HasHeightMm && baked.Shape is Domain.Tin tin)
        {
            var width = trial.HasWidthMm ? trial.WidthMm : tin.Width.Value;
            foretold.LoafMillilitres = tin.Length.Value * width * trial.HeightMm / 1000 * shelf.Learning.Loaf.DomeShare;
            if (baked.Lines.All(line => line.Ingredient.RangeOf(Fact.Acid) is not null && line.Ingredient.RangeOf(Fact.Base) is not null && line.Ingredient.RangeOf(Fact.Water) is not null))
            {
                foretold.GasMillilitres = Bakehouse.Rise.Foretell(baked, RiseConditions.Usual(Bakehouse.Rise.Practice, altitude), Draws.Typical).VolumeAtSetting.Value;
            }
        }

        return foretold;
    }

    private static (string Formula, long Number) Parts(string name)
    {
        var place = name.LastIndexOf(Trials, StringComparison.Ordinal);
        return place > 0 && long.TryParse(name[(place + Trials.Length)..], NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? (ResourceName.FormulaId(name[..place]), number)
            : (name, 0);
    }
}
