using System.Collections.Immutable;
using SwapSolver.Kitchen.Acids;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts;

/// <summary>A formula as a forecast reads it. A forecast is worked out some dozens of times, with one figure in doubt moved each time: what
/// does not move is looked up once.</summary>
/// <param name="Lines">What is in the bowl, one line an ingredient.</param>
/// <param name="Water">All its water [g].</param>
/// <param name="LostWater">Water that the oven takes [g].</param>
internal sealed record Batter(ImmutableArray<BatterLine> Lines, double Water, double LostWater)
{
    private LeaveningPortions? typical;

    /// <summary>Its acid and its bicarbonate. They hang on no other doubts than those of the two facts.</summary>
    /// <param name="chemistry">What is known of acids and bases.</param>
    /// <param name="doubts">Which figure is moved.</param>
    public LeaveningPortions Portions(LeaveningChemistry chemistry, Doubts doubts) => doubts.Concern(Fact.Acid) || doubts.Concern(Fact.Base)
        ? LeaveningPortions.Of(Lines, chemistry, doubts)
        : typical ??= LeaveningPortions.Of(Lines, chemistry, Doubts.None());

    /// <summary>Looks a formula up.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="chemistry">What is known of acids, bases and buffers.</param>
    /// <param name="draw">Which facts are looked at.</param>
    public static Batter Of(Formula formula, LeaveningChemistry chemistry, Draw draw) => new(
        LinesOf(formula, chemistry, draw),
        formula.Lines.Sum(line => draw(line.Ingredient)[Fact.Water] * line.Grams.Value),
        formula.BatterMass.Value - formula.BakedMass.Value);

    /// <summary>Its lines alone, for what does not hang on the water.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="chemistry">What is known of acids, bases and buffers.</param>
    /// <param name="draw">Which facts are looked at.</param>
    public static ImmutableArray<BatterLine> LinesOf(Formula formula, LeaveningChemistry chemistry, Draw draw)
    {
        var lines = ImmutableArray.CreateBuilder<BatterLine>(formula.Lines.Length);
        foreach (var line in formula.Merged().Lines)
        {
            if (line.Grams > Grams.None)
            {
                var known = chemistry.TryGet(line.Ingredient, out var leavener);
                lines.Add(new BatterLine(draw(line.Ingredient), line.Grams.Value, leavener, known ? null : chemistry.Buffers.GetValueOrDefault(line.Ingredient.Id)));
            }
        }

        return lines.DrainToImmutable();
    }
}
