using System.Collections.Immutable;
using SwapSolver.Asking.Text;

namespace SwapSolver.Asking.Grammar;

/// <summary>How old somebody is, behind a comma or in brackets: my son, 4, is allergic; that is no number of slices.</summary>
internal static class Ages
{
    /// <summary>Nobody is older [years].</summary>
    private const double Oldest = 110;

    /// <summary>Classes of words of what somebody may not eat, or how somebody is: of whom that is said is named with an age, and not with a number of rolls.</summary>
    private static readonly ImmutableArray<string> OfEating = ["bodily", "cannothave", "ailment", "allergy", "health", "diet", "hurts"];

    /// <summary>A question in which ages are passed over.</summary>
    public static ImmutableArray<Lexeme> PassedOver(ImmutableArray<Lexeme> lexemes)
    {
        var read = lexemes;
        for (var place = 2; place + 1 < lexemes.Length; place++)
        {
            var isParted = (lexemes[place - 1].Is("comma") && lexemes[place + 1].Is("comma")) || (lexemes[place - 1].Text == "(" && lexemes[place + 1].Text == ")");
            if (isParted && lexemes[place..].TakeWhile(lexeme => !lexeme.Is(Lexeme.Stop)).Any(lexeme => OfEating.Any(lexeme.Is)) && lexemes[place - 2].Is("kin") && lexemes[place].Is(Lexeme.Count) && lexemes[place].Number(Lexeme.Count) <= Oldest)
            {
                read = read.SetItem(place, lexemes[place].As(Lexeme.Filler));
            }
        }

        return read;
    }
}
