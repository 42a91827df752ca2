using SwapSolver.Asking.Grammar;
using SwapSolver.Asking.Text;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Asking;

/// <content>How much of a line goes out, where that is not all of it.</content>
internal sealed partial class Reading
{
    /// <summary>Two shares of one whole are that within this [1]: thirds are written with four digits.</summary>
    private const double WholeWithin = 0.01;

    /// <summary>Half almond, half hazelnut: one of them is what the formula has, and the other comes in for its share; null where that is not said.</summary>
    private Clause? MixOfTwo()
    {
        if (shares is not [{ Part: { } one } first, { Part: { } other } second] || Math.Abs(one + other - 1) > WholeWithin || meaning.IsOwn(first.Of.Thing!) == meaning.IsOwn(second.Of.Thing!))
        {
            return null;
        }

        var (own, newcomer) = meaning.IsOwn(first.Of.Thing!) ? (first.Of, second.Of) : (second.Of, first.Of);
        if (!meaning.DoesTheSame(newcomer, own))
        {
            return null;
        }

        unread.RemoveAll(lexeme => ReferenceEquals(lexeme, own) || ReferenceEquals(lexeme, newcomer));
        return new Clause("REPLACE", [new Filled("from", own), new Filled("to", newcomer)], IsNegated: false);
    }

    /// <summary>A share of what goes out, or grams of it; the same share of what comes in stands for it.</summary>
    private void ReadGoing(Lexeme goes, Lexeme? comes, Ingredient? goesOut)
    {
        var all = goesOut is null ? 0 : formula.MassOf(goesOut).Value;
        if (all == 0)
        {
            return;
        }

        var share = shares.FirstOrDefault(one => ReferenceEquals(one.Of, comes)) ?? shares.FirstOrDefault(one => ReferenceEquals(one.Of, goes));
        var weighed = amounts.FirstOrDefault(amount => ReferenceEquals(amount.Of, goes) && amount.Grams is not null);
        var grams = share is { Part: { } part } ? Math.Round(all * part, 1) : weighed?.Grams;
        // Half an egg is not half of the eggs.
        if (grams > all || (share is not null && IsOneOfSeveral(goes, goesOut!)))
        {
            return;
        }

        going = share ?? weighed;
        if (grams is { } some && some < all)
        {
            told = told with { FromGrams = some };
            assumed.Add(sentences.Say("asked-going", ("words", going!.Words), ("grams", Said(some)), ("thing", goesOut!.Name)));
        }
    }
}
