using System.Collections.Immutable;
using SwapSolver.Asking.Text;

namespace SwapSolver.Asking.Grammar;

/// <summary>What is fine beside what is not, or all but one thing: eggs are fine, dairy is not; everything is fine except sesame. The word that denies is
/// then one of leaving out, and the word that welcomes one of keeping.</summary>
internal static class WelcomeAndNot
{
    /// <summary>A question with its denying words named for what they do; the same question where it has none. What is asked with a question mark may be
    /// asked of the other thing, and stays as it is.</summary>
    public static ImmutableArray<Lexeme> Read(ImmutableArray<Lexeme> lexemes)
    {
        var read = lexemes;
        var begun = 0;
        while (begun < lexemes.Length)
        {
            var end = begun;
            while (end < lexemes.Length && !lexemes[end].Is(Lexeme.Stop))
            {
                end++;
            }

            read = Sentence(read, begun, end == lexemes.Length || lexemes[end].Text != "?" ? end : AskedFrom(lexemes, begun, end));
            begun = end + 1;
        }

        return read;
    }

    /// <summary>Where the asking begins behind a comma: butter is fine, flax is not, what could I use? What stands before is told; of a question without
    /// such a place nothing is.</summary>
    private static int AskedFrom(ImmutableArray<Lexeme> lexemes, int begun, int end)
    {
        var place = end - 1;
        while (place > begun && !(lexemes[place].Is("comma") && (lexemes[place + 1].Is("what") || lexemes[place + 1].Is("ask") || lexemes[place + 1].Is("how"))))
        {
            place--;
        }

        return Math.Max(place, begun);
    }

    private static ImmutableArray<Lexeme> Sentence(ImmutableArray<Lexeme> lexemes, int begun, int end)
    {
        for (var place = begun; place < end; place++)
        {
            if (!lexemes[place].Is("welcome"))
            {
                continue;
            }

            var isOfAll = lexemes[begun..end].Any(lexeme => lexeme.Is("everything"));
            if (isOfAll && Next(lexemes, place + 1, end, "allbut") is { } but && Name(lexemes, but + 1, end) is not null
                && !lexemes[begun..but].Any(lexeme => lexeme.Is("not")) && lexemes[(but + 1)..end].All(lexeme => lexeme.Thing is not null || lexeme.Is("join") || lexeme.MayBeSkipped))
            {
                return lexemes.SetItem(but, lexemes[but].As("out"));
            }

            if (!isOfAll && IsOfName(lexemes, place, begun, end) && Denied(lexemes, place + 1, end) is { } read)
            {
                return [.. read.Select((lexeme, other) => lexeme.Is("welcome") && other >= place && other < end && IsOfName(lexemes, other, begun, end) ? lexeme.As("hold") : lexeme)];
            }
        }

        return lexemes;
    }

    /// <summary>The sentence with what denies a name in it named so; null where nothing does.</summary>
    private static ImmutableArray<Lexeme>? Denied(ImmutableArray<Lexeme> lexemes, int from, int end)
    {
        if (Next(lexemes, from, end, "butnot") is { } butNot && Name(lexemes, butNot + 1, end) is not null)
        {
            return lexemes.SetItem(butNot, lexemes[butNot].As("out"));
        }

        if (Next(lexemes, from, end, "cannothave") is { } barred && Name(lexemes, barred + 1, end) is not null)
        {
            return lexemes;
        }

        // Other dairy is not all of it.
        if (Next(lexemes, from, end, "not") is not { } not || lexemes[from..not].LastOrDefault(lexeme => !lexeme.MayBeSkipped) is not { Thing: not null } || lexemes[from..not].Any(lexeme => lexeme.Is("likelyother")))
        {
            return null;
        }

        var last = not + 1 < end && lexemes[not + 1].Is("welcome") ? not + 1 : not;
        if (last + 1 < end && !lexemes[last + 1].Is("comma"))
        {
            return null;
        }

        var denied = lexemes.SetItem(not, lexemes[not].As("leftout"));
        return last == not ? denied : denied.SetItem(last, lexemes[last].As(Lexeme.Filler));
    }

    /// <summary>Whether a word of welcome is of something named: eggs are fine; she can have eggs.</summary>
    private static bool IsOfName(ImmutableArray<Lexeme> lexemes, int place, int begun, int end) =>
        (place > begun && lexemes[place - 1].Thing is not null) || Name(lexemes, place + 1, end) is not null;

    /// <summary>The place of what is named next, with nothing but articles before it; null where nothing is.</summary>
    private static int? Name(ImmutableArray<Lexeme> lexemes, int from, int end)
    {
        while (from < end && lexemes[from].Is("article"))
        {
            from++;
        }

        return from < end && lexemes[from].Thing is not null ? from : null;
    }

    private static int? Next(ImmutableArray<Lexeme> lexemes, int from, int end, string @class)
    {
        while (from < end && !lexemes[from].Is(@class))
        {
            from++;
        }

        return from < end ? from : null;
    }
}
