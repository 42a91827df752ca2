using Grpc.Core;
using SwapSolver.Service.Access;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Solves;
using SwapSolver.Service.Translation;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Questions;
using SwapSolver.Solving.Wishes;
using SwapSolver.V1;
using Diet = SwapSolver.V1.VaryFormulaRequest.Types.Diet;
using Habits = SwapSolver.Solving.Wishes.Habits;

namespace SwapSolver.Service.Jobs;

/// <summary>Solves what is asked of one formula, as the question of the same kind would be answered: with the kitchen as it is known
/// when it is begun, and with the usual habits.</summary>
internal sealed class CatalogueSolve : IDisposable
{
    private readonly IServiceScope scope;

    private readonly string name;

    private readonly AnswerSearch search;

    private readonly Subject subject;

    private readonly ReadFormula? read;

    private readonly Habits habits = Habits.Usual;

    /// <summary>Reads the formula.</summary>
    /// <param name="scopes">Opens the kitchen.</param>
    /// <param name="name">Resource name of the formula or of a revision.</param>
    public CatalogueSolve(IServiceScopeFactory scopes, string name)
    {
        this.name = name;
        scope = scopes.CreateScope();
        // Whoever may begin a job sees all of the kitchen's own.
        scope.ServiceProvider.GetRequiredService<Caller>().Role = Role.Reader;
        search = scope.ServiceProvider.GetRequiredService<AnswerSearch>();
        subject = scope.ServiceProvider.GetRequiredService<Subject>();
        try
        {
            var problems = new ProblemList();
            read = subject.Read(name, null, problems);
            KnownFacts.Require(search.Bakehouse.Balances, read?.Formula, problems);
            if (read is not null)
            {
                habits = new HabitsReader(search.Bakehouse, problems).Read(new V1.Habits { Answers = 1 }, read.Formula);
            }

            problems.ThrowIfAny();
        }
        catch (RpcException fault) when (fault.StatusCode is StatusCode.InvalidArgument or StatusCode.NotFound)
        {
            Problem = fault.Status.Detail;
        }
    }

    /// <summary>Why nothing can be asked of the formula; empty where it can.</summary>
    public string Problem { get; } = string.Empty;

    /// <summary>The pairs of its chart.</summary>
    public IEnumerable<CatalogueItem> Pairs() => Chart.Pairs(search.Bakehouse).Select(pair => CatalogueItem.OfPair(pair.From.Id, pair.To?.Id ?? string.Empty));

    /// <summary>What becomes of an item.</summary>
    /// <param name="item">The item.</param>
    /// <param name="clock">Time left for it.</param>
    /// <param name="cancel">Stops the solve.</param>
    public JobItem Answer(CatalogueItem item, Deadline clock, CancellationToken cancel)
    {
        var answer = item.Named(name);
        if (Problem.Length > 0 || item == CatalogueItem.Unread)
        {
            answer.Problem = Problem.Length > 0 ? Problem : "the formula could not be read when the job was counted; it can now: begin a job for it";
        }
        else if (item.From.Length > 0)
        {
            Judge(item, answer, clock, cancel);
        }
        else
        {
            Vary(item, answer, clock, cancel);
        }

        return answer;
    }

    /// <inheritdoc/>
    public void Dispose() => scope.Dispose();

    private SwapChart Chart => new(subject.AsGiven!.Formula, [], habits);

    private void Vary(CatalogueItem item, JobItem answer, Deadline clock, CancellationToken cancel)
    {
        var leavingOut = new LeavingOut(search.Bakehouse.Pantry, search.Bakehouse.Phrases);
        var wish = item.Diet switch
        {
            Diet.Vegetarian => leavingOut.Of(Solving.Wishes.Diet.Vegetarian),
            Diet.Vegan => leavingOut.Of(Solving.Wishes.Diet.Vegan),
            Diet.DairyFree => leavingOut.Of(Solving.Wishes.Diet.DairyFree),
            _ => leavingOut.Of(item.Without),
        };
        if (wish is null)
        {
            answer.Problem = $"'{item.Without}' is no longer known; begin a job that does not name it";
            return;
        }

        var outcomes = new Variant(read!.Formula, [wish], habits).Answer(search, clock, cancel);
        if (outcomes.RanOutOfTime)
        {
            answer.Problem = OutOfTime;
            return;
        }

        var writer = new AnswerWriter(search.Bakehouse);
        var variant = new VaryFormulaResponse { Nearest = outcomes.Nearest is null ? null : writer.Write(outcomes.Nearest) };
        variant.Answers.AddRange(outcomes.Answers.Select(writer.Write));
        variant.Conflict.AddRange(outcomes.Conflict.Select(AnswerWriter.Write));
        answer.Variant = new CallersOrder(subject.AsGiven!).Given(variant);
    }

    private void Judge(CatalogueItem item, JobItem answer, Deadline clock, CancellationToken cancel)
    {
        var pantry = search.Bakehouse.Pantry;
        if (!pantry.TryGet(item.From, out var from) || (item.To.Length > 0 && !pantry.Knows(item.To)))
        {
            answer.Problem = $"'{(pantry.Knows(item.From) ? item.To : item.From)}' is no longer in the pantry; begin a job anew";
            return;
        }

        _ = pantry.TryGet(item.To, out var to);
        var charted = Chart.Trace(search, [new ChartPair(from, to)], clock, cancel).FirstOrDefault();
        if (charted is null)
        {
            answer.Problem = OutOfTime;
            return;
        }

        answer.Pair = ChartWriter.Write(charted, 1, 1);
    }

    private const string OutOfTime = "time ran out before anything was found; ask about it by itself with a later deadline";
}
