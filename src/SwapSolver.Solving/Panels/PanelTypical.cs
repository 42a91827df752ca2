using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Panels;
using SwapSolver.Solving.Models;

namespace SwapSolver.Solving.Panels;

/// <summary>The composition in the middle: of all that fit, the one with the least sum of deviations from the printed
/// figures and from the like's typical ones, each in units of how far it may be out.</summary>
internal static class PanelTypical
{
    /// <summary>Weight of a gram that is missing to the whole food: less than that of a figure printed for 100 g, which
    /// stands as it is; more than that of a small serving's.</summary>
    private const double Whole = 1;

    /// <summary>Weight of what is only guessed: it decides where nothing else does.</summary>
    private const double Guess = 0.01;

    /// <summary>A figure is never taken to be surer than this share of itself, nor than this in its column's unit: weights
    /// that differ too much spoil a solver's numbers.</summary>
    private const double Surest = 0.001;

    private const double SurestUnit = 0.0001;

    /// <summary>The model whose best point is that composition for 100 g.</summary>
    public static Model Build(PanelCase given, PanelHolds holds, bool family)
    {
        var model = new PanelModel(given, holds, PanelNorm.HundredGrams, family);
        var servings = 100 / given.Serving.Typical;
        foreach (var line in holds.Lines.Order())
        {
            var interval = given.IntervalOf(line);
            // In column units the salt line is a part of a gram of sodium; its weight is by its own gram, which is as good.
            Near(
                model,
                line.ToString(),
                [.. model.OfLine(line), new Term(model.Servings, -interval.Typical)],
                0,
                Weight((interval.High - interval.Low) / 2 * servings, interval.Typical * servings));
        }

        if (given.Serving.High > given.Serving.Low)
        {
            var most = 100 / Math.Max(given.Serving.Low, given.Serving.Typical / 2);
            Near(model, "servings", [new Term(model.Servings, 1)], servings, Weight(most - servings, servings));
        }

        Near(model, "whole", model.Excess, 0, Whole);
        foreach (var fact in PanelFacts.Composition)
        {
            var unit = PanelModel.UnitOf(fact);
            if (given.FamilyOf(fact) is { } range)
            {
                Near(model, $"like_{fact.Id}", [model.Of(fact, unit)], range.Typical, Weight((range.High - range.Low) / 2, range.Typical));
            }
            else if (!given.IsPrinted(fact) && fact != Fact.Water && fact != Fact.Energy)
            {
                Near(model, $"guess_{fact.Id}", [model.Of(fact, unit)], fact == Fact.Ash ? given.Rules.UsualAsh.Value : 0, Guess / unit);
            }
        }

        if (!given.IsPrinted(Fact.Energy))
        {
            Near(model, "general_energy", [model.Of(Fact.Energy), .. EnergyTerms.General(given).Select(pair => model.Of(pair.Key, -pair.Value))], 0, Guess);
        }

        return model.Builder.Build();
    }

    private static double Weight(double either, double typical) => 1 / Math.Max(Math.Max(either, typical * Surest), SurestUnit);

    private static void Near(PanelModel model, string name, Term[] terms, double target, double weight)
    {
        var index = model.Builder.Column($"deviation_{name}", 0, 1e6, weight);
        model.Builder.Row($"above_{name}", [.. terms, new Term(index, -1)], double.NegativeInfinity, target);
        model.Builder.Row($"below_{name}", [.. terms, new Term(index, 1)], target, double.PositiveInfinity);
    }
}
