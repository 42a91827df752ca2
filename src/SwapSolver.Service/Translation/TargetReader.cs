using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Service.Faults;
using SwapSolver.Solving;
using SwapSolver.Solving.Questions;
using SwapSolver.Solving.Wishes;
using Domain = SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Service.Translation;

/// <summary>Reads which readings are to move, by their names or by the words of bakers.</summary>
internal sealed class TargetReader(Bakehouse bakehouse, Domain.Formula? formula, ProblemList problems)
{
    private const int MostTargets = 10;

    private const int Two = 2;

    private readonly BalanceList balances = bakehouse.Balances;

    private readonly GoalList goals = bakehouse.Goals;

    private IEnumerable<string> KnownWords => goals.Words.Concat(balances.Targetable.Select(balance => balance.Id));

    /// <summary>The targets of a reformulation; where problems were added they are not to be used.</summary>
    public (ImmutableArray<Goal> Goals, ImmutableArray<Hold> Targets) Read(IReadOnlyList<V1.Target> targets)
    {
        if (targets.Count is 0 or > MostTargets)
        {
            problems.Add("targets", targets.Count, "targets cannot be met", $"give 1 to {MostTargets}, as softer, or net-carbohydrate with a high of 1");
            return ([], []);
        }

        var words = ImmutableArray.CreateBuilder<Goal>();
        var figures = ImmutableArray.CreateBuilder<Hold>();
        for (var index = 0; index < targets.Count; index++)
        {
            Read(targets[index], $"targets[{index}]", words, figures);
        }

        return ([.. words.Distinct()], figures.ToImmutable());
    }

    /// <summary>The two readings of a trade-off; null where a problem was added.</summary>
    public (TradedReading First, TradedReading Second)? Read(IReadOnlyList<V1.Trade> trades)
    {
        if (trades.Count != Two)
        {
            problems.Add("trades", trades.Count, "readings cannot be traded", "give two, as net-carbohydrate and protein");
            return null;
        }

        var read = trades.Select((trade, index) => ReadTrade(trade, $"trades[{index}]")).ToList();
        if (read[0] is not { } first || read[1] is not { } second)
        {
            return null;
        }

        if (first.Balance == second.Balance)
        {
            problems.Add("trades[1].reading", trades[1].Reading, "is the same reading again", "a reading cannot be traded against itself: name another");
            return null;
        }

        return (first, second);
    }

    private void Read(V1.Target target, string path, ImmutableArray<Goal>.Builder words, ImmutableArray<Hold>.Builder figures)
    {
        if (goals.Find(target.Name) is { } goal)
        {
            if (target.HasLow || target.HasHigh)
            {
                problems.Add(path, target.Name, "says by itself how far", $"leave low and high away, or name a reading, as {goal.Aims[0].Balance.Id}");
            }

            foreach (var aim in goal.Aims)
            {
                KnownFacts.RequireReading(aim.Balance, formula, $"{path}.name", problems);
            }

            words.Add(goal);
            return;
        }

        if (target.Name.StartsWith(LineMass.Prefix, StringComparison.Ordinal))
        {
            ReadLine(target, path, figures);
            return;
        }

        if (balances.Find(target.Name) is not { } balance)
        {
            problems.Add($"{path}.name", target.Name, "is neither a reading nor a word for what a loaf is to become", NearestNames.WayOut(target.Name, KnownWords));
            return;
        }

        KnownFacts.RequireReading(balance, formula, $"{path}.name", problems);
        ReadFigures(balance, target, path, figures);
    }

    /// <summary>So many grams of one line of the formula.</summary>
    private void ReadLine(V1.Target target, string path, ImmutableArray<Hold>.Builder figures)
    {
        var ingredients = formula?.Lines.Select(line => line.Ingredient).Distinct().ToList() ?? [];
        if (ingredients.FirstOrDefault(one => LineMass.Prefix + one.Id == target.Name) is not { } ingredient)
        {
            problems.Add($"{path}.name", target.Name, "is no line of the formula", NearestNames.WayOut(target.Name, ingredients.Select(one => LineMass.Prefix + one.Id)));
            return;
        }

        ReadFigures(Targets.OfLine(ingredient, bakehouse.Phrases), target, path, figures);
    }

    private void ReadFigures(Balance balance, V1.Target target, string path, ImmutableArray<Hold>.Builder figures)
    {
        if (new BandReader(problems).Read(target.Name, target.HasLow ? target.Low : null, target.HasHigh ? target.High : null, path) is { } band)
        {
            figures.Add(Targets.Of(balance, band));
        }
    }

    private TradedReading? ReadTrade(V1.Trade trade, string path)
    {
        var goal = goals.Find(trade.Reading);
        if ((goal is { Aims.Length: 1 } ? goal.Aims[0].Balance : balances.Find(trade.Reading)) is not { } balance)
        {
            problems.Add($"{path}.reading", trade.Reading, goal is null ? "is no reading" : "stands for several readings", NearestNames.WayOut(trade.Reading, balances.Targetable.Select(known => known.Id)));
            return null;
        }

        if (balance is Gas or Leavening or RoleMass or BatterMass)
        {
            // Gas is the lesser of two sums, and the others are held against the reference: none of them is an aim.
            problems.Add($"{path}.reading", trade.Reading, "cannot be traded", "it is kept as the loaf that works has it: name another reading, as net-carbohydrate");
            return null;
        }

        KnownFacts.RequireReading(balance, formula, $"{path}.reading", problems);
        var better = trade.Better switch
        {
            V1.Trade.Types.Better.Lower => Better.Lower,
            V1.Trade.Types.Better.Higher => Better.Higher,
            _ when goal is { Aims: [{ Share.Low: null }] } => Better.Lower,
            _ when goal is not null => Better.Higher,
            _ => balance.Settings.Target.Better,
        };
        if (better != Better.Neither)
        {
            return new TradedReading(balance, better);
        }

        problems.Add($"{path}.better", trade.Reading, "is better neither lower nor higher by itself", $"say LOWER or HIGHER; on the command line {balance.Id}:higher");
        return null;
    }
}
