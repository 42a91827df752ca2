using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Wording;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Questions;

/// <summary>A formula solved again so that some of its readings move where they are wanted, with the least change.</summary>
/// <param name="Formula">The formula; it has every reading that is to move.</param>
/// <param name="Goals">What it is to become, in bakers' words.</param>
/// <param name="Targets">Where readings are to lie, in figures.</param>
/// <param name="Limits">Limits on readings that are kept besides.</param>
/// <param name="Habits">How the kitchen wants its answers.</param>
public sealed record Reformulate(
    Formula Formula, ImmutableArray<Goal> Goals, ImmutableArray<Hold> Targets, ImmutableArray<Hold> Limits, Habits Habits)
{
    /// <summary>Answers the question.</summary>
    /// <param name="search">The solving.</param>
    /// <param name="clock">Time left.</param>
    /// <param name="cancel">Stops the search.</param>
    public Reformulated Answer(AnswerSearch search, Deadline clock, CancellationToken cancel)
    {
        var bakehouse = search.Bakehouse;
        var strict = Problem(bakehouse);
        var reference = strict.Reference;
        var targets = Wished(bakehouse, reference);
        using var samples = new FactSamples(reference.Lines.Select(line => line.Ingredient), drawn: search.Bags);
        var before = Readings.Of(targets.Select(target => target.Balance), targets, reference, reference, samples);
        ImmutableArray<string> notes = [.. Goals.Select(goal => Told(bakehouse.Phrases, goal))];
        if (!Recheck.BrokenHolds(strict.Holds, reference, reference, Draws.Typical).Any())
        {
            notes = notes.Add(bakehouse.Phrases.Say("note-unchanged"));
            return new Reformulated(
                new Outcomes([search.Explain(Formula, new Way(strict, 0, notes), reference, isBestSoFar: false)], [], null, false), before);
        }

        var loose = strict with { LinesKeepTheirRoom = false };
        return new Reformulated(
            search.Find(
                Formula,
                [new Way(strict, 0, notes), new Way(loose, Weights.RoomOutgrown, notes.Add(bakehouse.Phrases.Say("note-room-outgrown")))],
                clock,
                cancel),
            before);
    }

    /// <summary>The problem that this question is, put strictly.</summary>
    public FormulaProblem Problem(Bakehouse bakehouse)
    {
        var reference = Formula.InOrderOfIds();
        var wishes = new Targets(bakehouse.Balances, reference);
        var targets = Wished(bakehouse, reference);
        var holds = wishes.Among(targets, Limits);
        return new FormulaProblem(
            reference,
            reference,
            holds,
            bakehouse.Balances.Anchored,
            bakehouse.Balances.NetCarbohydrate,
            new Candidates(bakehouse) { Named = Habits.Named }.For(reference, holds, wishes.NewRoles(targets.Select(target => target.Balance))),
            Habits,
            bakehouse.Practice);
    }

    private ImmutableArray<Hold> Wished(Bakehouse bakehouse, Formula reference)
    {
        var wishes = new Targets(bakehouse.Balances, reference);
        return wishes.Joined([.. Targets, .. Goals.SelectMany(wishes.Of)]);
    }

    /// <summary>What a goal is taken as: a baker may mean something else by the word.</summary>
    private static string Told(Phrases phrases, Goal goal) => phrases.Say(
        "note-goal",
        ("goal", $"'{goal.Title}'"),
        ("aims", Phrases.List(goal.Aims.Select(aim => phrases.Say(
            aim.Share switch { { Low: null } => "aim-ceiling", { High: null } => "aim-floor", _ => "aim-band" },
            ("balance", aim.Balance.Settings.Title),
            ("low", NumberWords.Percent(aim.Share.Low)),
            ("high", NumberWords.Percent(aim.Share.High)))))));
}
