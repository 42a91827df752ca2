using System.Collections.Immutable;
using SwapSolver.Asking.Text;

namespace SwapSolver.Asking.Grammar;

/// <summary>Of what a part is to go, as in 'almond flour for half of the hazelnut flour': the swap is read as if all of it went, and
/// how much goes is kept beside it.</summary>
internal static class Shares
{
    /// <summary>Class of words for a share; they stand for a number, 0 to 1.</summary>
    private const string Share = "share";

    /// <summary>Class of words that are one where they stand behind an 'instead of'.</summary>
    private const string Some = "someof";

    private const double Half = 0.5;

    /// <summary>Classes of words one of which must be there: half the butter is no swap.</summary>
    private static readonly ImmutableArray<string> OfASwap = ["swap", "swapped", "subbed", "put", "replaces", "standin", "instead", "arrow", "for", "by", "use", "where"];

    /// <summary>Classes of words that stand behind a share of what was named before: butter half replaced by ghee.</summary>
    private static readonly ImmutableArray<string> BehindShare = ["swapped", "subbed", "replaces", "by", "for"];

    /// <summary>The question without the shares, and the shares.</summary>
    public static (ImmutableArray<Lexeme> Lexemes, ImmutableArray<Share> Shares) TakenOut(ImmutableArray<Lexeme> lexemes)
    {
        var shares = ImmutableArray.CreateBuilder<Share>();
        var left = ImmutableArray.CreateBuilder<Lexeme>();
        for (var place = 0; place < lexemes.Length; place++)
        {
            // Instead of some flax is instead of a part of it; some flax is flax.
            var name = lexemes[place].Is(Some) && place > 0 && lexemes[place - 1].Is("instead") ? Some : Share;
            if (lexemes[place].Is(name) && ThingOf(lexemes, place) is { } thing)
            {
                // Only half of it is half of it.
                while (left.Count > 0 && (left[^1].Is("only") || left[^1].Is("narrow")) && left[^1].Thing is null)
                {
                    left.RemoveAt(left.Count - 1);
                }

                shares.Add(new Share(thing, lexemes[place].Number(name), null, $"{lexemes[place].Text} {thing.Text}"));
            }
            else
            {
                left.Add(lexemes[place]);
            }
        }

        if (shares.Count == 0 && lexemes.Any(lexeme => lexeme.Is(Lexeme.Fifty)) && lexemes.Where(lexeme => lexeme.Thing is not null).ToList() is [var one, var other])
        {
            var words = lexemes.First(lexeme => lexeme.Is(Lexeme.Fifty)).Text;
            return ([.. lexemes.Where(lexeme => !lexeme.Is(Lexeme.Fifty))], [new Share(one, Half, null, $"{words} {one.Text}"), new Share(other, Half, null, $"{words} {other.Text}")]);
        }

        var isSwap = lexemes.Where(lexeme => lexeme.Thing is not null).Skip(1).Any() && (shares.Count == 2 || lexemes.Any(lexeme => OfASwap.Any(lexeme.Is)));
        return shares.Count is 1 or 2 && isSwap ? (left.ToImmutable(), shares.ToImmutable()) : (lexemes, []);
    }

    private static Lexeme? ThingOf(ImmutableArray<Lexeme> lexemes, int place)
    {
        var next = lexemes.Skip(place + 1).FirstOrDefault(lexeme => !lexeme.MayBeSkipped || lexeme.Is(Lexeme.Stop));
        return next?.Thing is not null ? next
            : next is not null && BehindShare.Any(next.Is) && place > 0 ? lexemes[place - 1] is { Thing: not null } before ? before : null
            : null;
    }
}

/// <summary>How much of something is meant.</summary>
/// <param name="Of">Its name in the question.</param>
/// <param name="Part">The share, 0 to 1; null where grams are named.</param>
/// <param name="Grams">The grams; null where a share is named.</param>
/// <param name="Words">Both as they were written.</param>
internal sealed record Share(Lexeme Of, double? Part, double? Grams, string Words);
