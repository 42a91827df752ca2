using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Solving.Models;

/// <summary>The rows of the balances, and the distance from the reference that the objective counts.</summary>
internal sealed class BandRows(FormulaProblem problem, ModelBuilder builder, ImmutableArray<LineColumn> lines)
{
    /// <summary>A small part of a row's scale by which a band is let out [1]. Whole grams often lie exactly on an end of
    /// a band; let out by more than a solver's tolerance and less than the recheck's, every solver takes them alike.</summary>
    private const double Margin = 1e-7;

    /// <summary>Adds the rows of every hold. What is left out has no column, so it needs no row.</summary>
    public ImmutableArray<BandRow> AddBands()
    {
        var bands = ImmutableArray.CreateBuilder<BandRow>();
        foreach (var hold in problem.Holds.Where(hold => hold.LeftOut is null))
        {
            var scale = ScaleOf(hold.Balance);
            foreach (var row in hold.Balance.Rows(problem.Reference, hold.Band, Draws.Typical))
            {
                // Rows are brought to one scale: a gas row in mmol and a mass row in grams then weigh alike.
                var terms = Terms(row.Coefficient, 1 / scale);
                if (problem.MayGiveWay.Contains(hold.Id))
                {
                    terms.Add(new Term(builder.Column($"gives_{hold.Id}_{row.Side}", 0, double.PositiveInfinity, Weights.BandGivenWay), 1));
                }

                if (builder.Row($"{hold.Id}_{row.Side}", terms, (row.Least / scale) - Margin, double.PositiveInfinity) is { } index)
                {
                    bands.Add(new BandRow(hold, row.Side, index));
                }
            }
        }

        return bands.ToImmutable();
    }

    /// <summary>Adds the rows of every kitchen in which bands must be kept too.</summary>
    public void AddScenarios()
    {
        foreach (var scenario in problem.Scenarios)
        {
            foreach (var hold in scenario.Holds)
            {
                var scale = ScaleOf(hold.Balance);
                foreach (var row in hold.Balance.Rows(problem.Reference, hold.Band, scenario.Draw))
                {
                    builder.Row($"{scenario.Name}_{hold.Id}_{row.Side}", Terms(row.Coefficient, 1 / scale, scenario.Draw), (row.Least / scale) - Margin, double.PositiveInfinity);
                }
            }
        }
    }

    /// <summary>Adds, for each anchored balance, how far the reading lies from the reference's, in half widths of its band.</summary>
    public void AddAnchors()
    {
        foreach (var balance in problem.Anchors)
        {
            if (balance.Read(problem.Reference, problem.Reference, Draws.Typical) is not { } own
                || problem.Holds.FirstOrDefault(hold => hold.Balance == balance)?.Band is not { } band)
            {
                continue;
            }

            var target = Math.Clamp(own.Value, band.Low?.Value ?? own.Value, Math.Max(band.High?.Value ?? own.Value, band.Low?.Value ?? own.Value));
            var halfWidth = ((band.High?.Value ?? target) - (band.Low?.Value ?? target)) / 2;
            if (halfWidth <= 0)
            {
                continue;
            }

            AddDistance(balance, target, halfWidth);
        }
    }

    /// <summary>Adds how far net carbohydrate a slice rises above the reference's own.</summary>
    public void AddNetCarbohydrateRise()
    {
        var balance = problem.NetCarbohydrate;
        if (balance.Read(problem.Reference, problem.Reference, Draws.Typical) is not { } own)
        {
            return;
        }

        var slices = problem.Reference.Slices;
        var step = Math.Max(own.Value * Weights.NetCarbohydrateStep, Weights.NetCarbohydrateLeastStep) * slices;
        var rise = builder.Column("rise_net_carbohydrate", 0, double.PositiveInfinity, Weights.NetCarbohydrateRise);
        var terms = Terms(balance.Numerator, 1 / step);
        terms.Add(new Term(rise, -1));
        builder.Row("rise_net_carbohydrate", terms, double.NegativeInfinity, own.Value * slices / step);
    }

    private void AddDistance(Balance balance, double target, double halfWidth)
    {
        var anchor = balance.Anchor(problem.Reference, Draws.Typical);
        var basis = balance.Basis(problem.Reference);
        var scale = halfWidth * BasisOfReference(balance);
        var above = builder.Column($"above_{balance.Id}", 0, double.PositiveInfinity, Weights.ReadingAtBandEnd);
        var below = builder.Column($"below_{balance.Id}", 0, double.PositiveInfinity, Weights.ReadingAtBandEnd);
        var terms = Terms(facts => new PerGram(anchor(facts).Value - (target * basis.PerGram(facts).Value)), 1 / scale);
        terms.Add(new Term(above, -1));
        terms.Add(new Term(below, 1));
        var level = target * basis.Constant / scale;
        builder.Row($"distance_{balance.Id}", terms, level, level);
    }

    private List<Term> Terms(Func<FactSheet, PerGram> coefficient, double factor) => Terms(coefficient, factor, Draws.Typical);

    private List<Term> Terms(Func<FactSheet, PerGram> coefficient, double factor, Draw draw) =>
    [
        .. lines.Select(line => new Term(
            line.Column,
            coefficient(draw(line.Ingredient)).Value * line.GramsPerUnit * factor)),
    ];

    /// <summary>Size of a row: the basis of the reference times its reading, or the basis where that is nothing.</summary>
    private double ScaleOf(Balance balance)
    {
        var basis = BasisOfReference(balance);
        var own = balance.Read(problem.Reference, problem.Reference, Draws.Typical)?.Value ?? 1;
        return basis * (own > 1e-6 ? own : 1);
    }

    private double BasisOfReference(Balance balance)
    {
        var basis = balance.Basis(problem.Reference);
        var sum = basis.Constant + problem.Reference.Lines.Sum(line => basis.PerGram(line.Ingredient.Typical).Value * line.Grams.Value);
        return sum > 0 ? sum : 1;
    }
}
