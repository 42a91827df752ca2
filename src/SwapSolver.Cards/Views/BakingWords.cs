using SwapSolver.Cards.Texts;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Cards.Views;

/// <summary>How a loaf is shaped, baked and cooled, in sentences.</summary>
/// <param name="Words">Numbers and temperatures.</param>
internal sealed record BakingWords(CardWords Words)
{
    /// <summary>How many slices of which weight.</summary>
    public static string Yield(CardWords words, Formula formula)
    {
        var what = formula.Shape is Pieces ? "pieces" : "slices";
        var slices = words.Say(formula.Slices == 1 ? $"{what}-one" : $"{what}-more", ("count", words.Number(formula.Slices, "0")));
        return words.Say("yield", ("slices", slices), ("grams", words.Number((formula.BakedMass * (1.0 / formula.Slices)).Value, "0")));
    }

    /// <summary>The batter and what is left of it after the oven.</summary>
    public static string Batter(CardWords words, Formula formula) => formula.BakeLoss is null
        ? words.Say("batter-no-loss", ("total", words.Grams(formula.BatterMass)))
        : words.Say("batter", ("total", words.Grams(formula.BatterMass)), ("baked", words.Number(formula.BakedMass.Value, "0")));

    /// <summary>The sentences of a card.</summary>
    public IEnumerable<string> Of(Card card)
    {
        var formula = card.Formula;
        yield return formula.Oven is { } oven ? Words.Say("oven", ("temperature", Words.Oven(oven))) : Words.Say("oven-none");
        yield return Shape(formula.Shape);
        if (card.Rise?.WorkingWindow is { } window)
        {
            yield return Words.Say("window", ("value", Words.Minutes(window.Value)));
        }

        yield return Bake(card);
        if (card.Bake?.CoolToSlice is { } cooling)
        {
            yield return Words.Say("cool", Range(cooling));
        }
    }

    private string Bake(Card card)
    {
        if (card.Bake is not { } bake)
        {
            return Words.Say("bake-none");
        }

        return bake is { TimeToCore: { } time, ProbeFrom: { } probe }
            ? Words.Say("bake-time", [.. Range(time), ("temperature", Words.Food(bake.Target)), ("from", Words.Minutes(probe))])
            : Words.Say("bake-never", ("temperature", Words.Food(bake.Target)));
    }

    private string Shape(Shape? shape) => shape switch
    {
        Tin tin => Words.Say("tin", ("length", Side(tin.Length)), ("width", Side(tin.Width)), ("height", Side(tin.Height))),
        Pieces pieces => Words.Say("shape-pieces", ("count", Words.Number(pieces.Count, "0"))),
        FreeForm { Length: { } length, Width: { } width } => Words.Say("shape-free-size", ("length", Side(length)), ("width", Side(width))),
        FreeForm => Words.Say("shape-free"),
        _ => Words.Say("shape-none"),
    };

    private string Side(Millimetres side) => Words.Number(side.Value, "0.#");

    private (string Gap, string Filling)[] Range(MinuteRange range) =>
        [("value", Words.Minutes(range.Value)), ("low", Words.Minutes(range.Low)), ("high", Words.Minutes(range.High))];
}
