using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Measures;

/// <summary>Turns grams of an ingredient into the cups and spoons of one system: the way of <see cref="Weighing"/> backwards.</summary>
/// <param name="Tables">What is known of measures.</param>
/// <param name="System">Whose cups and spoons.</param>
public sealed record HouseholdMeasuring(MeasureTables Tables, MeasureSystem System)
{
    /// <summary>Parts that measuring cups come in; common practice.</summary>
    private static readonly ImmutableArray<(string Word, double Share)> OfCups =
        [("", 0), ("1/4", 1.0 / 4), ("1/3", 1.0 / 3), ("1/2", 1.0 / 2), ("2/3", 2.0 / 3), ("3/4", 3.0 / 4)];

    private static readonly ImmutableArray<(string Word, double Share)> OfTablespoons = [("", 0), ("1/2", 0.5)];

    private static readonly ImmutableArray<(string Word, double Share)> OfTeaspoons = [("", 0), ("1/8", 0.125), ("1/4", 0.25), ("1/2", 0.5), ("3/4", 0.75)];

    /// <summary>The measures from large to small, each with the least of it that is measured so; common practice. The United
    /// Kingdom has no cup of its own, and measures what is more than a few spoons on a scale or by the fluid ounce.</summary>
    private ImmutableArray<(string Unit, double Least, ImmutableArray<(string Word, double Share)> Parts)> Ladder => System == MeasureSystem.UkImperial
        ? [("fluid ounce", 2, OfTablespoons), ("tablespoon", 1, OfTablespoons), ("teaspoon", 0.125, OfTeaspoons)]
        : [("cup", 0.25, OfCups), ("tablespoon", 1, OfTablespoons), ("teaspoon", 0.125, OfTeaspoons)];

    /// <summary>The measure that comes nearest, with a rest in a smaller one where it would else miss by more than a
    /// fortieth; null where what a spoon of it weighs is not known, or it is less than the smallest spoon.</summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <param name="grams">Its mass [g].</param>
    public HouseholdAmount? Of(Ingredient ingredient, Grams grams)
    {
        var ladder = Ladder;
        for (var rung = 0; rung < ladder.Length; rung++)
        {
            var (id, least, parts) = ladder[rung];
            if (EachOf(ingredient, id) is not { } each || grams / each.Typical < least)
            {
                continue;
            }

            var count = grams / each.Typical;
            var nearest = Nearest(count, id, parts, each);
            return Math.Abs(nearest.Count.Middle - count) <= Miss * count ? nearest
                : WithRest(ingredient, grams, Below(count, id, parts, each), ladder.Skip(rung + 1)) ?? nearest;
        }

        return null;
    }

    /// <summary>How far a measure may miss the mass without a rest [share of it]; common practice.</summary>
    private const double Miss = 0.025;

    private HouseholdAmount? WithRest(
        Ingredient ingredient, Grams grams, HouseholdAmount most, IEnumerable<(string Unit, double Least, ImmutableArray<(string Word, double Share)> Parts)> smaller)
    {
        var left = grams - most.Weighs.Typical;
        foreach (var (id, _, parts) in smaller)
        {
            if (EachOf(ingredient, id) is { } each && left / each.Typical >= parts[1].Share)
            {
                var rest = Nearest(left / each.Typical, id, parts, each);
                return most with { Weighs = most.Weighs + rest.Weighs, Rest = rest };
            }
        }

        return null;
    }

    private GramRange? EachOf(Ingredient ingredient, string id)
    {
        if (Tables.Volumes.FirstOrDefault(unit => unit.Id == id) is not { } unit || unit.In(System) is null)
        {
            return null;
        }

        var weighed = new Weighing(Tables, System).Weigh(new Measured(Amount.One, unit, System, null, []), ingredient);
        return weighed.Grams is { } each && each.Typical > Grams.None ? each : null;
    }

    private static HouseholdAmount Nearest(double count, string id, ImmutableArray<(string Word, double Share)> parts, GramRange each) =>
        Choices(count, parts).OrderBy(choice => Math.Abs(choice.Whole + choice.Share - count)).Select(choice => Made(choice.Whole, choice.Word, choice.Share, id, each)).First();

    /// <summary>The most that is not too much; there is one, since no less is measured than the smallest part.</summary>
    private static HouseholdAmount Below(double count, string id, ImmutableArray<(string Word, double Share)> parts, GramRange each) =>
        Choices(count, parts).Where(choice => choice.Whole + choice.Share <= count).OrderByDescending(choice => choice.Whole + choice.Share)
            .Select(choice => Made(choice.Whole, choice.Word, choice.Share, id, each)).First();

    private static HouseholdAmount Made(int whole, string word, double share, string id, GramRange each) =>
        new(whole, word, Amount.Of(whole + share), id, each * Amount.Of(whole + share));

    private static IEnumerable<(int Whole, string Word, double Share)> Choices(double count, ImmutableArray<(string Word, double Share)> parts)
    {
        var low = (int)Math.Floor(count);
        return parts.Select(part => (low, part.Word, part.Share)).Append((low + 1, string.Empty, 0)).Where(choice => choice.Item1 + choice.Item3 > 0);
    }
}
