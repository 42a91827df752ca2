using System.Collections.Immutable;
using SwapSolver.Asking.Text;

namespace SwapSolver.Asking.Grammar;

/// <summary>How much of an ingredient a reader would put in another's place, as in '30 g of flax for the psyllium': the dose is worked
/// out here, so the amount is taken out before the question is read, and the reader is told.</summary>
internal static class Amounts
{
    /// <summary>Classes of words one of which must be there: without a swap an amount is what is asked about.</summary>
    private static readonly ImmutableArray<string> OfASwap = ["swap", "put", "replaces", "standin", "standinafter", "instead", "alone", "arrow"];

    /// <summary>The question without such amounts, and the amounts.</summary>
    public static (ImmutableArray<Lexeme> Lexemes, ImmutableArray<Share> Amounts) TakenOut(ImmutableArray<Lexeme> lexemes)
    {
        if (!lexemes.Any(lexeme => OfASwap.Any(lexeme.Is)))
        {
            return (lexemes, []);
        }

        var left = ImmutableArray.CreateBuilder<Lexeme>();
        var amounts = ImmutableArray.CreateBuilder<Share>();
        for (var place = 0; place < lexemes.Length; place++)
        {
            var behind = BehindAmount(lexemes, place);
            if (behind > place)
            {
                var words = string.Join(' ', lexemes[place..behind].Where(lexeme => !lexeme.MayBeSkipped).Select(lexeme => lexeme.Text));
                var grams = lexemes[place].Is(Lexeme.Count) && lexemes[place + 1].Is("mass") ? lexemes[place].Number(Lexeme.Count) * lexemes[place + 1].Number("mass") : (double?)null;
                amounts.Add(new Share(lexemes[behind], null, grams, words));
                place = behind - 1;
            }
            else
            {
                left.Add(lexemes[place]);
            }
        }

        return (left.ToImmutable(), amounts.ToImmutable());
    }

    /// <summary>Where the thing stands of which a number and a unit of mass, or a household measure with or without number, begin here,
    /// with nothing but idle words between; the place itself where none does.</summary>
    private static int BehindAmount(ImmutableArray<Lexeme> lexemes, int place)
    {
        var behind = place + (lexemes[place].Is(Lexeme.Count) ? 1 : 0);
        if (behind >= lexemes.Length || !(lexemes[behind].Is("measure") || (behind > place && lexemes[behind].Is("mass"))))
        {
            return place;
        }

        // Grams of sugar may be those that a slice has; spoons of it are not.
        var isMeasured = lexemes[behind].Is("measure");
        do
        {
            behind++;
        }
        while (behind < lexemes.Length && lexemes[behind].MayBeSkipped && !lexemes[behind].Is(Lexeme.Stop));

        return behind < lexemes.Length && lexemes[behind].Thing is not null && (isMeasured || !lexemes[behind].Is("reading")) ? behind : place;
    }
}
