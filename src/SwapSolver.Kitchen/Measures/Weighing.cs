using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Measures;

/// <summary>A household measure of an ingredient, as a line says it.</summary>
/// <param name="Amount">How many.</param>
/// <param name="Unit">Of what; null for things that are counted.</param>
/// <param name="System">Whose measure it is; null where that is not said.</param>
/// <param name="Filling">How it was filled; null where that is not said.</param>
/// <param name="Words">All other words of the line, in small letters: a form such as <c>ground</c>, or a size of egg.</param>
public sealed record Measured(Amount Amount, Unit? Unit, MeasureSystem? System, Filling? Filling, ImmutableArray<string> Words)
{
    /// <summary>The form that is meant where the words say none, as <c>whole</c>; empty where nothing says so.</summary>
    public ImmutableArray<string> UsualForm { get; init; } = [];
}

/// <summary>What a measure of an ingredient weighs, or why that cannot be said.</summary>
/// <param name="Grams">The mass [g]; null where there is a problem.</param>
/// <param name="Egg">The size of egg that it was counted in; null where it was not.</param>
/// <param name="Assumed">What was taken for granted.</param>
/// <param name="Problem">Why it cannot be said; null where it can.</param>
public sealed record Weighed(GramRange? Grams, EggSize? Egg, ImmutableArray<string> Assumed, string? Problem)
{
    internal static Weighed As(GramRange grams, params ImmutableArray<string> assumed) => new(grams, null, assumed, null);

    internal static Weighed Refused(string problem) => new(null, null, [], problem);
}

/// <summary>Turns a measure of an ingredient into grams. A volume never becomes grams without an ingredient.</summary>
/// <param name="tables">What is known of measures.</param>
/// <param name="kitchen">Whose cups stand in this kitchen; null where that is not said.</param>
public sealed class Weighing(MeasureTables tables, MeasureSystem? kitchen)
{
    /// <summary>The mass of a measure of an ingredient, with what was assumed; or the problem.</summary>
    public Weighed Weigh(Measured measured, Ingredient ingredient) => measured.Unit switch
    {
        MassUnit mass => OnTheScale(measured, mass, ingredient),
        VolumeUnit volume => new VolumeWeighing(tables, kitchen).Weigh(measured, volume, ingredient),
        PieceUnit piece => new PieceWeighing(tables, kitchen).Weigh(measured, piece, ingredient),
        _ => new PieceWeighing(tables, kitchen).Weigh(measured, ingredient),
    };

    private Weighed OnTheScale(Measured measured, MassUnit unit, Ingredient ingredient)
    {
        if (unit.Id == "ounce" && measured.Words.Contains("volume"))
        {
            return Weighed.Refused("ounces by volume; write fl oz");
        }

        var each = unit.In(measured.System ?? kitchen ?? MeasureSystem.UsCustomary);
        var low = each * measured.Amount.Low - tables.Fillings.Scale;
        var grams = new GramRange(low < Grams.None ? Grams.None : low, each * measured.Amount.Middle, each * measured.Amount.High + tables.Fillings.Scale);
        return unit.Id == "ounce" && ingredient.Role == Role.Liquid
            ? Weighed.As(grams, "ounces by weight, not fluid ounces")
            : Weighed.As(grams);
    }
}
