using System.Collections.Immutable;
using Superpower;
using Superpower.Model;
using Superpower.Parsers;
using Superpower.Tokenizers;

namespace SwapSolver.Asking.Text;

/// <summary>What a question is made of.</summary>
internal enum CutKind
{
    /// <summary>Digits, with a decimal point or comma.</summary>
    Number,

    /// <summary>A word, its apostrophes taken out.</summary>
    Word,

    /// <summary>The end of a sentence.</summary>
    Stop,

    /// <summary>Any other sign.</summary>
    Sign,
}

/// <summary>A piece of a question.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Text">It in small letters.</param>
internal sealed record Cut(CutKind Kind, string Text);

/// <summary>Cuts a question into words, numbers and signs. Any text can be cut.</summary>
internal static class WordCutter
{
    private static readonly TextParser<TextSpan> Digits = Span.WithAll(char.IsAsciiDigit);

    private static readonly TextParser<TextSpan> Number = Span.MatchedBy(
        Digits.Then(_ => Character.In('.', ',').IgnoreThen(Digits).Try().OptionalOrDefault()));

    // A 70th birthday counts nothing. Of one digit it may be the lower part of a fraction, as in 1/4th.
    private static readonly TextParser<TextSpan> Ordinal = Span.Regex("[0-9]{2,}(?:st|nd|rd|th)(?![a-z])", System.Text.RegularExpressions.RegexOptions.IgnoreCase);

    private static readonly TextParser<TextSpan> Word = Span.MatchedBy(
        Character.Matching(char.IsLetter, "letter").IgnoreThen(
            Character.Matching(letter => char.IsLetter(letter) || IsMark(letter), "letter").Many()));

    private static readonly Tokenizer<CutKind> Tokenizer = new TokenizerBuilder<CutKind>()
        .Ignore(Character.Matching(char.IsWhiteSpace, "space"))
        .Match(Ordinal, CutKind.Word)
        .Match(Number, CutKind.Number)
        .Match(Word, CutKind.Word)
        .Match(Character.In('.', '!', '?', ';', ':', '\u2026'), CutKind.Stop)
        .Match(Character.AnyChar, CutKind.Sign)
        .Build();

    /// <summary>The pieces of a text, in order.</summary>
    public static ImmutableArray<Cut> Of(string text) =>
    [
        .. Tokenizer.Tokenize(text).Select(token => new Cut(token.Kind, Plain(token.ToStringValue()))).Where(cut => cut.Text.Length > 0),
    ];

    private static string Plain(string text) =>
        string.Concat(text.Where(letter => !IsMark(letter))).ToLowerInvariant();

    // Doesn't and doesnt are one word, and so is what an accent stands behind.
    private static bool IsMark(char letter) =>
        letter is '\'' or '’' or '‘' or '`' || char.GetUnicodeCategory(letter) is System.Globalization.UnicodeCategory.NonSpacingMark or System.Globalization.UnicodeCategory.Format;
}
