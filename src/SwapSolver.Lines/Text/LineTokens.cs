using Superpower;
using Superpower.Model;
using Superpower.Parsers;
using Superpower.Tokenizers;

namespace SwapSolver.Lines.Text;

/// <summary>Cuts a line of text into its words, numbers and signs. Any text can be cut.</summary>
internal static class LineTokens
{
    private static readonly TextParser<TextSpan> Digits = Span.WithAll(char.IsAsciiDigit);

    private static readonly TextParser<TextSpan> Number = Span.MatchedBy(
        Digits.Then(_ => Character.In('.', ',').IgnoreThen(Digits).Try().OptionalOrDefault())
            .Or(Character.In('.', ',').IgnoreThen(Digits)));

    private static readonly TextParser<TextSpan> Percentage = Span.MatchedBy(Number.Then(_ => Character.EqualTo('%')));

    // Dots that lead the eye to an amount are no decimal point.
    private static readonly TextParser<TextSpan> Leaders = Span.EqualTo("..").IgnoreThen(Span.MatchedBy(Character.EqualTo('.').Many()));

    // 40 °C, 105F, 38-40 °C: a heat is no amount. Without a degree sign only two or three digits right before the letter are one.
    private static readonly TextParser<TextSpan> Heat = Span.Regex(@"(\d+([.,]\d+)?(\s?[-–]\s?\d+([.,]\d+)?)?\s?[°º]\s?([CFcf]\b)?|\d{2,3}[CF]\b)");

    // 2x100g, 2 x 100 g.
    private static readonly TextParser<TextSpan> Times = Span.MatchedBy(
        Character.In('x', 'X').Then(sign => Parse.Not(Parse.Not(Character.EqualTo(' ').OptionalOrDefault().IgnoreThen(Character.Digit))).Value(sign)));

    private static readonly TextParser<TextSpan> Word = Span.MatchedBy(
        Character.Matching(letter => char.IsLetter(letter) || letter == '°', "letter").IgnoreThen(
            Character.Matching(letter => char.IsLetterOrDigit(letter) || IsMark(letter), "letter or digit").Many()));

    // The size of an egg, one word to the cook.
    private static readonly TextParser<TextSpan> ExtraLarge = Span.EqualToIgnoreCase("x-large");

    private static readonly Tokenizer<LineToken> Tokenizer = new TokenizerBuilder<LineToken>()
        .Ignore(Character.Matching(char.IsWhiteSpace, "space"))
        .Match(Leaders.Try(), LineToken.Other)
        .Match(Heat.Try(), LineToken.Other)
        .Match(Percentage.Try(), LineToken.Word)
        .Match(Number.Try(), LineToken.Number)
        .Match(Character.Matching(IsVulgar, "fraction"), LineToken.Vulgar)
        .Match(ExtraLarge.Try(), LineToken.Word)
        .Match(Times.Try(), LineToken.Times)
        .Match(Word, LineToken.Word)
        .Match(Character.In('-', '\u2010', '\u2011', '\u2012', '–', '—', '−'), LineToken.Dash)
        .Match(Character.In('/', '\u2044', '\u2215'), LineToken.Slash)
        .Match(Character.In('+', '&'), LineToken.Plus)
        .Match(Character.In(',', ';'), LineToken.Comma)
        .Match(Character.In('×', '*'), LineToken.Times)
        .Match(Character.In('(', '[', '{'), LineToken.Open)
        .Match(Character.In(')', ']', '}'), LineToken.Close)
        .Match(Character.AnyChar, LineToken.Other)
        .Build();

    /// <summary>The parts of a line, in order.</summary>
    public static TokenList<LineToken> Of(string line) => Tokenizer.Tokenize(line);

    private static bool IsVulgar(char letter) =>
        char.GetUnicodeCategory(letter) == System.Globalization.UnicodeCategory.OtherNumber && char.GetNumericValue(letter) is > 0 and < 1;

    // An apostrophe or an accent that stands behind its letter belongs to the word.
    private static bool IsMark(char letter) =>
        letter is '\'' or '’' || char.GetUnicodeCategory(letter) == System.Globalization.UnicodeCategory.NonSpacingMark;
}
