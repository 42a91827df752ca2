using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Formulas;

/// <summary>A weighed recipe.</summary>
/// <param name="DisplayName">What the baker calls it.</param>
/// <param name="Lines">What goes into the bowl, in order; one or more.</param>
/// <param name="Slices">How many slices or pieces it yields, 1 or more.</param>
/// <param name="Shape">What it is baked in; null where not said.</param>
/// <param name="Oven">The oven setting; null where not said.</param>
/// <param name="BakeLoss">Water lost in the oven, of the batter; null where not known, and then none is counted.</param>
public sealed record Formula(
    string DisplayName,
    ImmutableArray<Line> Lines,
    int Slices,
    Shape? Shape,
    Oven? Oven,
    Percent? BakeLoss)
{
    /// <summary>Free words about it.</summary>
    public string Description { get; init; } = string.Empty;

    /// <summary>What the baker does, step by step; empty where it is not said.</summary>
    public ImmutableArray<string> Steps { get; init; } = [];

    /// <summary>Batter mass: the sum of all lines [g].</summary>
    public Grams BatterMass => new(Lines.Sum(line => line.Grams.Value));

    /// <summary>Mass after the oven [g].</summary>
    public Grams BakedMass => BatterMass * (1 - (BakeLoss?.Share ?? 0));

    /// <summary>Whether a fact is known of every ingredient that is in the bowl. Unknown is not zero.</summary>
    public bool States(Fact fact) =>
        Lines.All(line => line.Grams == Grams.None || line.Ingredient.RangeOf(fact) is not null);

    /// <summary>Mass of all lines with a role [g].</summary>
    public Grams MassOf(Role role) => new(Lines.Where(line => line.Ingredient.Role == role).Sum(line => line.Grams.Value));

    /// <summary>Mass of all lines of an ingredient [g].</summary>
    public Grams MassOf(Ingredient ingredient) =>
        new(Lines.Where(line => line.Ingredient.Equals(ingredient)).Sum(line => line.Grams.Value));

    /// <summary>Baker's percentage of a line: grams by the mass of all flours; null where the formula has no flour.</summary>
    public Percent? BakersPercentage(Line line)
    {
        var flours = MassOf(Role.Flour);
        return flours > Grams.None ? new Percent(line.Grams / flours * 100) : null;
    }

    /// <summary>The same formula with every line times a factor; slices, shape and oven stay.</summary>
    public Formula Scaled(double factor) =>
        this with { Lines = [.. Lines.Select(line => line with { Grams = line.Grams * factor })] };

    /// <summary>The same formula with one line an ingredient, in the order of first appearance.</summary>
    public Formula Merged() => !HasTwins ? this : this with
    {
        Lines =
        [
            .. Lines.GroupBy(line => line.Ingredient)
                .Select(group => group.First() with
                {
                    Grams = new Grams(group.Sum(line => line.Grams.Value)),
                    Size = group.All(line => line.Size == group.First().Size) ? group.First().Size : null,
                }),
        ],
    };

    /// <summary>Whether two lines are of one ingredient.</summary>
    private bool HasTwins
    {
        get
        {
            for (var line = 1; line < Lines.Length; line++)
            {
                for (var before = 0; before < line; before++)
                {
                    if (Lines[line].Ingredient.Equals(Lines[before].Ingredient))
                    {
                        return true;
                    }
                }
            }

            return false;
        }
    }

    /// <summary>The same formula with one line an ingredient, in the order of ids: the last digits of no sum hang on the order of
    /// writing, and so neither does which of two equal answers is found.</summary>
    public Formula InOrderOfIds()
    {
        var merged = Merged();
        return merged with { Lines = [.. merged.Lines.OrderBy(line => line.Ingredient.Id, StringComparer.Ordinal)] };
    }
}
