using System.Collections.Immutable;
using Grpc.Core;
using SwapSolver.Service.Access;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Records;
using SwapSolver.Service.Translation;
using SwapSolver.V1;
using Kind = SwapSolver.V1.AskedFor.Types.Kind;
using Verdict = SwapSolver.V1.AnswerQuestionResponse.Types.Verdict;

namespace SwapSolver.Service.Desk;

/// <summary>Answers a reader's question: reads it, asks the service, and puts the answer in words.</summary>
internal sealed class QuestionDesk(KitchenToday kitchen, QuestionReaders readers, Subject subject, IServiceScopeFactory scopes, Caller caller)
{
    private const int MostMark = 64;

    private readonly DeskWords words = new(kitchen.Search.Bakehouse.Phrases);

    /// <summary>The answer.</summary>
    /// <param name="request">The question.</param>
    /// <param name="context">The call.</param>
    /// <param name="understood">Is told how the question was understood, before it is asked: it may fail then.</param>
    /// <exception cref="RpcException">INVALID_ARGUMENT or NOT_FOUND for the formula or the row; other ends as those of the questions asked.</exception>
    public async Task<AnswerQuestionResponse> Answer(AnswerQuestionRequest request, ServerCallContext context, Action<AskedFor>? understood = null)
    {
        var problems = new ProblemList();
        if (request.Mark.Length > MostMark)
        {
            problems.Add("mark", request.Mark, "is too long", $"give at most {MostMark} characters");
        }

        if (request.Question.Length == 0 && request.Fields is null)
        {
            problems.Add("question", string.Empty, "nothing is asked", "write a 'question' in words, or give 'fields'");
        }

        if (request.Fields is { } given)
        {
            AskedFields.Check(given, problems);
        }

        var read = subject.ReadAsGiven(request.Name, request.Formula, problems);
        problems.ThrowIfAny();
        var formula = read!.Formula;
        var answer = new AnswerQuestionResponse { Row = request.Row, Mark = request.Mark };
        ImmutableArray<string> without;
        if (request.Fields is { } fields)
        {
            answer.UnderstoodAs = AskedForWriter.WithKind(fields);
            without = [.. fields.Without];
        }
        else
        {
            var told = readers.For(kitchen).Read(request.Question, formula);
            answer.UnderstoodAs = AskedForWriter.Write(told);
            answer.Problem = told.Problem;
            without = [.. told.Without.Select(wish => wish.Word)];
        }

        understood?.Invoke(answer.UnderstoodAs);
        if (answer.UnderstoodAs.Kind == Kind.NotUnderstood)
        {
            answer.Verdict = Verdict.NotUnderstood;
            answer.Problem = answer.Problem.Length > 0 ? answer.Problem : words.Say("asked-what-can-be");
            answer.Reply = words.Say("desk-not-understood", ("reason", answer.Problem));
            return answer;
        }

        answer.UnderstoodAs.Assumed.AddRange(TinWords.Of(kitchen.Search.Bakehouse, formula, answer.UnderstoodAs.Tin));
        var steps = new DeskSteps(new InnerCalls(scopes, caller, kitchen), new TargetLimits(kitchen.Search.Bakehouse), answer.UnderstoodAs, formula, context);
        // Names and counts of the formula's own lines as they were weighed.
        await Fill(answer, steps, FormulaWriter.Write(formula), without);
        // Whoever gets the reply must see what of the question it does not answer.
        var unanswered = answer.Verdict == Verdict.Failed ? string.Empty : answer.Problem;
        answer.Reply = string.Join(
            ' ', new[] { answer.Reply, unanswered, DeskWords.Sentences(answer.UnderstoodAs.Assumed) }.Concat(answer.Cautions).Where(said => said.Length > 0));
        return answer;
    }

    private Task Fill(AnswerQuestionResponse answer, DeskSteps steps, Formula given, ImmutableArray<string> without) => answer.UnderstoodAs.Kind switch
    {
        Kind.Convert => Convert(answer, steps),
        Kind.Bake => Bake(answer, steps, given),
        Kind.Rise => Rise(answer, steps, given),
        Kind.Figures => Figures(answer, steps, given),
        Kind.Check when !steps.IsSized && !steps.IsWithout => Check(answer, steps, given),
        Kind.Reformulate => One(answer, given, () => steps.Reformulate(given)),
        Kind.Resize => One(answer, given, () => steps.Resize(given, withLimits: true)),
        _ => Solve(answer, steps, given, without),
    };

    /// <summary>Another size, then one thing in another's place, then what is left out; each on what the step before came to.</summary>
    private async Task Solve(AnswerQuestionResponse answer, DeskSteps steps, Formula given, ImmutableArray<string> without)
    {
        var done = new DeskAnswer(given, [], [], []);
        var changes = new List<Change>();
        if (steps.IsSized)
        {
            done = await steps.Resize(given, withLimits: false);
            changes.AddRange(done.Changes);
        }

        if (done.Formula is { } sized && answer.UnderstoodAs.From.Length > 0)
        {
            done = await steps.Replace(sized);
            changes.AddRange(done.Changes);
        }

        if (done.Formula is { } replaced && steps.IsWithout)
        {
            done = await steps.Vary(replaced, without);
            changes.AddRange(done.Changes);
        }

        Write(answer, done with { Changes = Together(given, done.Formula, changes) });
        if (answer.Verdict == Verdict.Yes)
        {
            answer.Reply = words.Say("desk-stands");
        }
    }

    private async Task One(AnswerQuestionResponse answer, Formula given, Func<Task<DeskAnswer>> ask)
    {
        var done = await ask();
        Write(answer, done with { Changes = Together(given, done.Formula, done.Changes) });
    }

    private void Write(AnswerQuestionResponse answer, DeskAnswer done)
    {
        answer.Formula = done.Formula;
        answer.Changes.AddRange(done.Changes);
        answer.Cautions.AddRange(done.Cautions);
        if (done.Formula is null)
        {
            answer.Verdict = Verdict.No;
            answer.Reply = words.Say("desk-no", ("reasons", done.Problems.Count > 0 ? DeskWords.Sentences(done.Problems) : words.Say("reply-nothing-found")));
            return;
        }

        answer.Verdict = done.Changes.Count == 0 ? Verdict.Yes : Verdict.YesWithChanges;
        var size = words.Size(answer.UnderstoodAs);
        answer.Reply = done.Changes.Count == 0 ? words.Say("desk-as-it-is")
            : size.Length > 0 ? words.Say("desk-for-size", ("size", size), ("changes", words.Of(done.Changes)))
            : words.Say("desk-with-changes", ("changes", words.Of(done.Changes)));
    }

    private async Task Check(AnswerQuestionResponse answer, DeskSteps steps, Formula given)
    {
        var checkedSwap = await steps.Check(given);
        answer.Verdict = checkedSwap.Verdict switch
        {
            CheckSwapResponse.Types.Verdict.Balances => Verdict.Yes,
            CheckSwapResponse.Types.Verdict.BalancesWithRepair => Verdict.YesWithChanges,
            _ => Verdict.No,
        };
        answer.Formula = checkedSwap.Verdict == CheckSwapResponse.Types.Verdict.Balances ? checkedSwap.Swapped : checkedSwap.Repair?.Formula;
        answer.Changes.AddRange(Together(given, answer.Formula, checkedSwap.Repair?.Changes ?? []));
        answer.Cautions.AddRange((checkedSwap.Repair?.Cautions ?? []).Union(checkedSwap.Cautions));
        answer.Reply = checkedSwap.Reply;
    }

    private async Task Bake(AnswerQuestionResponse answer, DeskSteps steps, Formula given)
    {
        var done = steps.IsSized ? await steps.Resize(given, withLimits: true) : new DeskAnswer(given, [], [], []);
        if (done.Formula is null && answer.UnderstoodAs is { HasFactor: true, Factor: < 1 })
        {
            // A batch shared among small loaves has its eggs whole, and each of them has not.
            done = await steps.Resize(given, withLimits: true, weighedEgg: true);
            answer.UnderstoodAs.Assumed.AddRange(done.Formula is null ? [] : [words.Say("desk-weighed-egg")]);
        }

        Write(answer, done with { Changes = Together(given, done.Formula, done.Changes) });
        if (done.Formula is not { } formula)
        {
            return;
        }

        var bake = await steps.Bake(formula);
        answer.Cautions.AddRange(bake.Cautions.Except(answer.Cautions));
        answer.Verdict = bake.TimeToCoreMinutes is null ? Verdict.No : done.Changes.Count == 0 ? Verdict.Yes : Verdict.YesWithChanges;
        var sized = done.Changes.Count > 0 ? answer.Reply + " " : string.Empty;
        answer.Reply = sized + (bake.TimeToCoreMinutes is not { } minutes
            ? words.Say("desk-never-baked", ("value", DeskWords.Number(Math.Round(bake.CoreTargetCelsius))))
            : words.Say("desk-bake", ("minutes", words.Minutes(minutes)), ("value", DeskWords.Number(Math.Round(bake.CoreTargetCelsius))), ("count", DeskWords.Number(bake.ProbeFromMinute))));
        if (bake.TimeToCoreMinutes is not null && bake.Formula.Oven is { } oven)
        {
            // An oven that is not stated is taken, and told among the cautions.
            answer.Reply += " " + words.Say(oven.Fan ? "desk-oven-fan" : "desk-oven", ("value", DeskWords.Number(Math.Round(oven.Celsius))));
        }
    }

    private async Task Rise(AnswerQuestionResponse answer, DeskSteps steps, Formula given)
    {
        var rise = await steps.Rise(given);
        answer.Formula = given;
        answer.Cautions.AddRange(rise.Cautions);
        answer.Verdict = rise.WorkingWindow is null ? Verdict.No : Verdict.Yes;
        answer.Reply = rise.WorkingWindow is not { } window
            ? words.Say("desk-no-gas")
            : words.Say(
                "desk-rise", ("minutes", words.Minutes(window)), ("value", DeskWords.Number(Math.Round(rise.VolumeAtSettingMillilitres))), ("count", DeskWords.Number(Math.Round(rise.NeutralisedPercent?.Value ?? 0))));
    }

    private async Task Figures(AnswerQuestionResponse answer, DeskSteps steps, Formula given)
    {
        var cut = steps.Cut(given);
        var measured = await steps.Balance(cut);
        answer.Formula = cut;
        answer.Verdict = Verdict.Yes;
        answer.Cautions.AddRange(measured.Cautions);
        answer.Reply = words.Slice(measured.Nutrition);
    }

    private async Task Convert(AnswerQuestionResponse answer, DeskSteps steps)
    {
        var line = await steps.Convert();
        if (!line.HasGrams || line.Ingredient.Length == 0)
        {
            answer.Verdict = Verdict.Failed;
            answer.Problem = $"{answer.Problem} {line.Problem}".Trim();
            answer.Reply = words.Say("desk-not-understood", ("reason", DeskWords.Sentences([line.Problem])));
            return;
        }

        answer.Verdict = Verdict.Yes;
        answer.UnderstoodAs.Assumed.AddRange(line.Assumed);
        answer.Reply = words.Say(
            "desk-weighs", ("thing", line.Text), ("grams", DeskWords.Number(line.Grams)), ("low", DeskWords.Number(line.LowGrams)), ("high", DeskWords.Number(line.HighGrams)));
    }

    /// <summary>What differs between the formula as it was given and the last one, each with the reason that was given last.</summary>
    private IReadOnlyList<Change> Together(Formula given, Formula? last, IReadOnlyList<Change> changes)
    {
        if (last is null)
        {
            return [];
        }

        var (before, after) = (GramsOf(given), GramsOf(last));
        return
        [
            .. before.Keys.Concat(after.Keys.Where(id => !before.ContainsKey(id)))
                .Select(id => (id, Before: before.GetValueOrDefault(id), After: after.GetValueOrDefault(id)))
                .Where(pair => pair.Before != pair.After)
                .Select(pair => Together(pair.id, pair.Before, pair.After, changes.LastOrDefault(change => change.Ingredient == pair.id), last)),
        ];
    }

    /// <summary>What there is of each ingredient, in the order of the lines [g].</summary>
    private static OrderedDictionary<string, double> GramsOf(Formula formula)
    {
        var grams = new OrderedDictionary<string, double>(formula.Lines.Count, StringComparer.Ordinal);
        foreach (var line in formula.Lines)
        {
            grams[line.Ingredient] = grams.GetValueOrDefault(line.Ingredient) + line.Grams;
        }

        return grams;
    }

    private Change Together(string id, double before, double after, Change? known, Formula last)
    {
        var change = known is null ? new Change { Ingredient = id, DisplayName = DisplayName(id) } : new Change(known);
        change.BeforeGrams = before;
        change.AfterGrams = after;
        if (last.Lines.FirstOrDefault(line => line.Ingredient == id) is { HasCount: true } line)
        {
            change.AfterCount = line.Count;
        }

        return change;
    }

    private string DisplayName(string id) => kitchen.Pantry.TryGet(ResourceName.IngredientId(id), out var found) ? found.Name : id;
}
