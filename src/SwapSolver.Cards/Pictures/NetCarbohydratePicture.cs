using System.Collections.Immutable;
using System.Xml.Linq;
using SwapSolver.Cards.Texts;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Cards.Pictures;

/// <summary>Where the net carbohydrate of a slice comes from: a filled bar for each ingredient that brings any, the most first.</summary>
/// <param name="Words">Numbers and words.</param>
/// <param name="Balance">The balance whose convention counts it.</param>
internal sealed record NetCarbohydratePicture(CardWords Words, NetCarbohydrate Balance)
{
    /// <summary>What prints as nothing is left out [g a slice].</summary>
    private const double LeastGrams = 0.005;

    private const double RowHeight = 36, Left = 10, BarTop = 18, BarHeight = 10, Longest = Pen.Width - 20;

    /// <summary>The picture; null where it cannot be counted or there is none.</summary>
    public Picture? Of(Formula formula)
    {
        if (!Balance.CanRead(formula))
        {
            return null;
        }

        var sources = formula.Lines.GroupBy(line => line.Ingredient)
            .Select(group => (Name: PlainWords.Of(group.Key.Name), Grams: group.Sum(line => line.Grams.Value * Balance.Numerator(group.Key.Typical).Value) / formula.Slices))
            .Where(source => source.Grams >= LeastGrams)
            .OrderByDescending(source => source.Grams)
            .ToList();
        var whole = sources.Sum(source => source.Grams);
        return sources.Count == 0 ? null : new Picture(
            Words.Say("picture-net-carbs"),
            Pen.Sheet((sources.Count * RowHeight) + 4, "picture-net-carbs", Words.Say("picture-net-carbs"), sources.SelectMany((source, row) => Draw(source.Name, source.Grams, whole, row))),
            [Words.Say("picture-ingredient"), Words.Say("picture-grams"), Words.Say("picture-share")],
            [.. sources.Select(source => ImmutableArray.Create(source.Name, Words.Number(source.Grams, "0.00"), Share(source.Grams, whole)))]);
    }

    private IEnumerable<XElement> Draw(string name, double grams, double whole, int row)
    {
        var top = row * RowHeight;
        return
        [
            Pen.Text(Left, top + 13, Words.Say("picture-source", ("ingredient", name), ("grams", Words.Number(grams, "0.00")), ("share", Share(grams, whole)))),
            Pen.Box(Left, top + BarTop, Longest, BarHeight, filled: false),
            Pen.Box(Left, top + BarTop, Longest * grams / whole, BarHeight, filled: true),
        ];
    }

    private string Share(double grams, double whole) => $"{Words.Number(100 * grams / whole, "0")} %";
}
