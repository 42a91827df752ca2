using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Measures;

/// <summary>Turns pieces of an ingredient into grams: eggs, lemons, nuts, sticks, packets, pinches.</summary>
internal sealed class PieceWeighing(MeasureTables tables, MeasureSystem? kitchen)
{
    /// <summary>The piece that is the thing itself, as a whole egg or lemon.</summary>
    private const string WholePiece = "whole";

    /// <summary>Sizes nearer than this are one size, rounded in two ways [g].</summary>
    private static readonly Grams SameSize = new(2);

    /// <summary>The mass of pieces that have a name, with what was assumed; or the problem.</summary>
    public Weighed Weigh(Measured measured, PieceUnit piece, Ingredient ingredient)
    {
        if (ingredient.CountedUnits.Length > 0 && piece.Id == WholePiece)
        {
            return Weigh(measured, ingredient);
        }

        if (piece.Of.FirstOrDefault(weight => weight.IngredientId == ingredient.Id) is { } known)
        {
            var one = known.EachOf(measured.Words);
            return Weighed.As(one * measured.Amount, $"a {piece.Id} of {one.Typical.Value:0.##} g");
        }

        var rows = RowsOf(ingredient, piece.Names, measured.Words);
        return rows.IsEmpty
            ? piece.Volume is { } volume ? ByVolume(measured, piece, volume, ingredient) : NotKnown(piece.Id, ingredient)
            : ByRow(measured, rows, ingredient, tables.Fillings.Of(ingredient, measured.Filling));
    }

    /// <summary>The mass of things that are counted, with what was assumed; or the problem.</summary>
    public Weighed Weigh(Measured measured, Ingredient ingredient)
    {
        if (!ingredient.CountedUnits.IsEmpty)
        {
            var (size, assumed) = new EggWords(tables.Eggs, measured.System ?? kitchen).SizeOf(measured.Words);
            return Formulas.Line.UnitOf(ingredient, size) is { } egg
                ? new Weighed(tables.Eggs.Of(size).Around(egg) * measured.Amount, size, assumed, null)
                : Weighed.Refused($"what {ingredient.Name} of that size weighs is not known; give grams");
        }

        var whole = tables.Pieces.SelectMany(piece => piece.Id == WholePiece ? piece.Of : []).FirstOrDefault(weight => weight.IngredientId == ingredient.Id);
        var rows = RowsOf(ingredient, measured.Words, measured.Words);
        if (measured.Unit is null && whole is not null && rows.All(row => row.Each == whole.Each.Typical))
        {
            var each = whole.EachOf(measured.Words);
            return Weighed.As(each * measured.Amount, $"one gives {each.Typical.Value:0.##} g of {ingredient.Name}");
        }

        return rows.IsEmpty
            ? Weighed.Refused($"so many of {ingredient.Name} cannot be weighed: the unit is missing; give grams, or a spoon or cup")
            : ByRow(measured, rows, ingredient, tables.Fillings.Of(ingredient, null));
    }

    private static Weighed NotKnown(string piece, Ingredient ingredient) => Weighed.Refused($"what a {piece} of {ingredient.Name} weighs is not known; give grams");

    private static Weighed ByRow(Measured measured, ImmutableArray<HouseholdRow> rows, Ingredient ingredient, Filling filling)
    {
        var all = rows.Select(row => row.Each).ToList();
        var sizes = all.Where((each, place) => !all.Take(place).Any(other => Math.Abs(other.Value - each.Value) < SameSize.Value)).ToList();
        return sizes is [var each]
            ? Weighed.As(filling.Of(each) * measured.Amount, $"{each.Value:0.##} g apiece")
            : Weighed.Refused($"{ingredient.Name} comes by the {rows[0].Head} in sizes of {string.Join(" and ", sizes.Select(size => $"{size.Value:0.#}"))} g; give grams");
    }

    private Weighed ByVolume(Measured measured, PieceUnit piece, PieceVolume volume, Ingredient ingredient)
    {
        var weighing = new VolumeWeighing(tables, kitchen);
        if (weighing.DensestRow(ingredient, measured) is not { } dense)
        {
            return Weighed.Refused(VolumeWeighing.NoDensity(ingredient));
        }

        var weighs = dense.Estimate ?? new GramRange(dense.Each, dense.Each, dense.Each);
        double Share(Millilitres millilitres) => millilitres / VolumeWeighing.OfRow(dense);
        var each = new GramRange(weighs.Low * Share(volume.Low), weighs.Typical * Share(volume.Typical), weighs.High * Share(volume.High));
        if (measured.Filling is { } filling)
        {
            each = new GramRange(each.Low * filling.Low.Share, each.Typical * filling.Typical.Share, each.High * filling.High.Share);
        }

        var practice = $"a {piece.Id} of {volume.Typical.Value:0.##} mL, as is common practice";
        return dense.Estimate is null
            ? Weighed.As(each * measured.Amount, practice)
            : Weighed.As(each * measured.Amount, practice, VolumeWeighing.IsEstimate(ingredient));
    }

    /// <summary>The rows of pieces that the words mean. A row with a form, as a small package, must have it said; and where
    /// words name both a piece and the food, as a wedge of lemon, the piece is meant.</summary>
    private ImmutableArray<HouseholdRow> RowsOf(Ingredient ingredient, ImmutableArray<string> heads, ImmutableArray<string> words)
    {
        var rows = HouseholdRow.Of(ingredient, tables.Volumes)
            .Where(row => row.Unit is null && row.Form.All(words.Contains) && heads.Any(head => IsOneOf(row.Head, head)))
            .ToImmutableArray();
        var others = rows.Where(row => !ingredient.Name.Split(' ').Any(own => IsOneOf(row.Head, own))).ToImmutableArray();
        return others.IsEmpty ? rows : others;
    }

    private static bool IsOneOf(string head, string word) =>
        head.Split(' ').Any(part => part == word || part == $"{word}s" || $"{part}s" == word || (part.Length > 3 && word.EndsWith(part, StringComparison.Ordinal)));
}
