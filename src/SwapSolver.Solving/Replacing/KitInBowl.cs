using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Replacing;

/// <summary>Puts a kit into a formula: the line goes out or down, the doses come in, soda or acid beyond what went out is taken off
/// other lines, and the liquids make up for the water.</summary>
/// <param name="Bakehouse">Everything that is known.</param>
/// <param name="Habits">How the kitchen weighs.</param>
internal sealed record KitInBowl(Bakehouse Bakehouse, Habits Habits)
{
    /// <summary>Share of a surplus that the other lines must bear for a kit to do [1]: the band of the leavening judges the rest.</summary>
    private const double BorneByOthers = 0.9;

    /// <summary>Water from which the liquids make up for it [g]: less is lost among the eggs, and a powder's damp is no better known.</summary>
    public const double LeastWater = 2;

    /// <summary>The formula with the kit; null where the soda or acid that a powder brings cannot be taken off elsewhere.</summary>
    /// <param name="reference">The formula, one line an ingredient.</param>
    /// <param name="from">What goes out.</param>
    /// <param name="kept">How much of it stays [g].</param>
    /// <param name="kit">What comes in.</param>
    public (Formula Formula, Grams WaterMore, Grams WaterLeft)? Put(Formula reference, Ingredient from, Grams kept, LeaveningKit kit)
    {
        var lines = reference.Lines.ToDictionary(line => line.Ingredient, line => line.Grams.Value);
        lines[from] = kept.Value;
        foreach (var dose in kit.Doses)
        {
            lines[dose.Ingredient] = lines.GetValueOrDefault(dose.Ingredient) + dose.Weighed.Value;
        }

        if (!TakeOff(lines, kit, kit.BaseTooMuch.Value, Role.Base, Fact.Base) || !TakeOff(lines, kit, kit.AcidTooMuch.Value, Role.Acid, Fact.Acid))
        {
            return null;
        }

        var more = Water(lines) - Water(reference.Lines.ToDictionary(line => line.Ingredient, line => line.Grams.Value));
        var left = Math.Abs(more) >= LeastWater ? MakeUp(lines, more) : more;
        return (Made(reference, lines), new Grams(more), new Grams(left));
    }

    private static double Water(Dictionary<Ingredient, double> lines) => lines.Sum(line => line.Key.Typical[Fact.Water] * line.Value);

    /// <summary>Takes millimoles off the other lines of a role, the driest first, in steps of the scale.</summary>
    private bool TakeOff(Dictionary<Ingredient, double> lines, LeaveningKit kit, double millimoles, Role role, Fact fact)
    {
        var left = millimoles;
        var others = lines.Keys
            .Where(one => one.Role == role && one.Typical[fact] > 0 && kit.Doses.All(dose => !dose.Ingredient.Equals(one)))
            .OrderBy(one => one.Typical[Fact.Water])
            .ToList();
        foreach (var other in others.TakeWhile(_ => left > 0))
        {
            var grams = Math.Min(left / other.Typical[fact], lines[other]);
            var kept = FormulaModel.OnStep(lines[other] - grams, Habits.StepOf(other).Value).Value;
            // What would hardly be worth weighing is left out whole.
            kept = kept < other.Usage.SensibleMinimum.Value ? 0 : kept;
            left -= (lines[other] - kept) * other.Typical[fact];
            lines[other] = kept;
        }

        return millimoles <= 0 || left <= (1 - BorneByOthers) * millimoles;
    }

    /// <summary>Takes water out of the liquids, plain water first, or adds it to them; what is left could not be made up for [g].</summary>
    private double MakeUp(Dictionary<Ingredient, double> lines, double more)
    {
        var left = more;
        var liquids = lines.Keys
            .Where(one => one.Role == Role.Liquid && one.Typical[Fact.Water] > 0)
            .OrderByDescending(one => one.Typical[Fact.Water])
            .ToList();
        if (liquids.Count == 0 && left < 0 && PlainWater() is { } water)
        {
            liquids.Add(water);
        }

        foreach (var liquid in liquids)
        {
            var share = liquid.Typical[Fact.Water];
            var before = lines.GetValueOrDefault(liquid);
            var after = FormulaModel.OnStep(Math.Max(0, before - (left / share)), Habits.StepOf(liquid).Value).Value;
            lines[liquid] = after;
            left += (after - before) * share;
            if (left <= 0 || after > 0)
            {
                break;
            }
        }

        return left;
    }

    /// <summary>The water of the pantry; null where it has none.</summary>
    public Ingredient? PlainWater() => Bakehouse.Pantry.Offered.FirstOrDefault(one =>
        one.Role == Role.Liquid && Bakehouse.Balances.Know(one) && one.Typical[Fact.Water] >= Bakehouse.Practice.PlainWater.Share);

    private static Formula Made(Formula reference, Dictionary<Ingredient, double> lines) => reference with
    {
        Lines =
        [
            // A line that keeps its grams stays as it stands, eggs by the piece.
            .. reference.Lines.Where(line => lines[line.Ingredient] > 0)
                .Select(line => line.Grams.Value == lines[line.Ingredient] ? line : new Line(line.Ingredient, new Grams(lines[line.Ingredient]))),
            .. lines.Where(line => line.Value > 0 && reference.MassOf(line.Key) == Grams.None)
                .Select(line => new Line(line.Key, new Grams(line.Value))),
        ],
    };
}
