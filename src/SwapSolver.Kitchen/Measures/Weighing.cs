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
    /// <summary>The piece that is the thing itself, as a whole egg or lemon.</summary>
    private const string WholePiece = "whole";

    /// <summary>The mass of a measure of an ingredient, with what was assumed; or the problem.</summary>
    public Weighed Weigh(Measured measured, Ingredient ingredient) => measured.Unit switch
    {
        MassUnit mass => OnTheScale(measured, mass),
        VolumeUnit volume => new VolumeWeighing(tables, kitchen).Weigh(measured, volume, ingredient),
        PieceUnit piece => ByThePiece(measured, piece, ingredient),
        _ => Counted(measured, ingredient),
    };

    private Weighed OnTheScale(Measured measured, MassUnit unit)
    {
        var each = unit.In(measured.System ?? kitchen ?? MeasureSystem.UsCustomary);
        var low = each * measured.Amount.Low - tables.Fillings.Scale;
        return Weighed.As(new GramRange(low < Grams.None ? Grams.None : low, each * measured.Amount.Middle, each * measured.Amount.High + tables.Fillings.Scale));
    }

    private Weighed ByThePiece(Measured measured, PieceUnit piece, Ingredient ingredient)
    {
        if (ingredient.CountedUnits.Length > 0 && piece.Id == WholePiece)
        {
            return Counted(measured, ingredient);
        }

        if (piece.Of.FirstOrDefault(weight => weight.IngredientId == ingredient.Id) is { } known)
        {
            return Weighed.As(known.Each * measured.Amount, $"a {piece.Id} of {known.Each.Typical.Value:0.##} g");
        }

        if (RowOf(ingredient, piece.Names) is { } row)
        {
            return Weighed.As(tables.Fillings.Of(ingredient, measured.Filling).Of(row.Each) * measured.Amount);
        }

        if (piece.Volume is not { } volume)
        {
            return Weighed.Refused($"what a {piece.Id} of {ingredient.Name} weighs is not known; give grams");
        }

        var weighing = new VolumeWeighing(tables, kitchen);
        if (weighing.DensestRow(ingredient, measured) is not { } dense)
        {
            return Weighed.Refused(VolumeWeighing.NoDensity(ingredient));
        }

        var weighs = dense.Estimate ?? new GramRange(dense.Each, dense.Each, dense.Each);
        double Of(Millilitres millilitres) => millilitres / VolumeWeighing.OfRow(dense);
        var each = new GramRange(weighs.Low * Of(volume.Low), weighs.Typical * Of(volume.Typical), weighs.High * Of(volume.High));
        each = measured.Filling is not { } filling ? each : new GramRange(each.Low * filling.Low.Share, each.Typical * filling.Typical.Share, each.High * filling.High.Share);
        var practice = $"a {piece.Id} of {volume.Typical.Value:0.##} mL, as is common practice";
        return dense.Estimate is null
            ? Weighed.As(each * measured.Amount, practice)
            : Weighed.As(each * measured.Amount, practice, VolumeWeighing.IsEstimate(ingredient));
    }

    private Weighed Counted(Measured measured, Ingredient ingredient)
    {
        if (ingredient.CountedUnits.IsEmpty)
        {
            if (ingredient.HouseholdMeasures.Length > 0 && RowOf(ingredient, measured.Words) is { } row)
            {
                return Weighed.As(tables.Fillings.Of(ingredient, null).Of(row.Each) * measured.Amount);
            }

            return measured.Unit is null && tables.Pieces.SelectMany(piece => piece.Id == WholePiece ? piece.Of : []).FirstOrDefault(weight => weight.IngredientId == ingredient.Id) is { } whole
                ? Weighed.As(whole.Each * measured.Amount, $"one gives {whole.Each.Typical.Value:0.##} g of {ingredient.Name}")
                : Weighed.Refused($"so many of {ingredient.Name} cannot be weighed: the unit is missing; give grams, or a spoon or cup");
        }

        var (size, assumed) = new EggWords(tables.Eggs, measured.System ?? kitchen).SizeOf(measured.Words);
        return Formulas.Line.UnitOf(ingredient, size) is { } each
            ? new Weighed(tables.Eggs.Of(size).Around(each) * measured.Amount, size, assumed, null)
            : Weighed.Refused($"what {ingredient.Name} of that size weighs is not known; give grams");
    }

    private HouseholdRow? RowOf(Ingredient ingredient, ImmutableArray<string> words) =>
        HouseholdRow.Of(ingredient, tables.Volumes)
            .FirstOrDefault(row => row.Unit is null && words.Any(word => IsOneOf(row.Head, word)));

    private static bool IsOneOf(string head, string word) =>
        head.Split(' ').Any(part => part == word || part == $"{word}s" || $"{part}s" == word || (part.Length > 3 && word.EndsWith(part, StringComparison.Ordinal)));
}
