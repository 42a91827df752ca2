using System.Collections.Immutable;
using System.Globalization;
using Superpower;
using Superpower.Model;
using Superpower.Parsers;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Lines.Text;

/// <summary>The grammar of a line: numbers of every style, words, signs and brackets, which do not nest.</summary>
internal static class LineGrammar
{
    private static readonly TokenListParser<LineToken, AmountChunk> Plain =
        Token.EqualTo(LineToken.Number).Select(token => NumberOf(token.ToStringValue()));

    private static readonly TokenListParser<LineToken, AmountChunk> Whole =
        Token.EqualTo(LineToken.Number).Where(token => token.ToStringValue().All(char.IsAsciiDigit)).Select(token => NumberOf(token.ToStringValue()));

    private static readonly TokenListParser<LineToken, AmountChunk> Vulgar =
        Token.EqualTo(LineToken.Vulgar).Select(token => Exactly(char.GetNumericValue(token.ToStringValue()[0])));

    private static readonly TokenListParser<LineToken, AmountChunk> Fraction = Vulgar.Or((
        from over in Whole
        from slash in Token.EqualTo(LineToken.Slash)
        from under in Whole.Where(number => number.Amount.Low > 0)
        select Exactly(over.Amount.Low / under.Amount.Low) with { Thousands = MayHaveLostSpace(over.Amount.Low, under.Amount.Low) ? ThousandsSign.LostSpace : ThousandsSign.None }).Try());

    /// <summary>1.1/2, which is 1 1/2 to some.</summary>
    private static readonly TokenListParser<LineToken, AmountChunk> Pointed = (
        from over in Token.EqualTo(LineToken.Number).Where(token => !token.ToStringValue().All(char.IsAsciiDigit))
        from slash in Token.EqualTo(LineToken.Slash)
        from under in Whole.Where(number => number.Amount.Low > 1)
        select Exactly(NumberOf(over.ToStringValue()).Amount.Low / under.Amount.Low) with { Thousands = ThousandsSign.LostSpace }).Try();

    /// <summary>1 1/2, 1½, 1-1/2, 1 and 1/2, 1 + 1/2.</summary>
    private static readonly TokenListParser<LineToken, AmountChunk> Mixed = (
        from whole in Whole
        from between in Token.EqualTo(LineToken.Dash).Or(Token.EqualTo(LineToken.Plus)).Or(WordOf("and")).OptionalOrDefault()
        from part in Fraction.Where(fraction => fraction.Amount.Low < 1)
        select Exactly(whole.Amount.Low + part.Amount.Low)).Try();

    private static readonly TokenListParser<LineToken, AmountChunk> Single = Mixed.Or(Pointed).Or(Fraction).Or(Plain);

    /// <summary>Between 1 and 2.</summary>
    private static readonly TokenListParser<LineToken, Chunk> Between = (
        from between in WordOf("between")
        from low in Single
        from and in WordOf("and")
        from high in Single
        select (Chunk)Through(low, high)).Try();

    private static readonly TokenListParser<LineToken, Chunk> Range =
        from low in Single
        from high in Token.EqualTo(LineToken.Dash).Or(WordOf("to")).Or(WordOf("or")).Or(WordOf("à")).IgnoreThen(Single).Select(number => (AmountChunk?)number).Try().OptionalOrDefault()
        select (Chunk)(high is null ? low : Through(low, high));

    private static readonly TokenListParser<LineToken, Chunk> Word =
        Token.EqualTo(LineToken.Word).Select(token => (Chunk)new WordChunk(token.ToStringValue()));

    private static readonly TokenListParser<LineToken, Chunk> Sign =
        Token.Matching<LineToken>(kind => kind is not LineToken.Close, "sign").Select(token => (Chunk)new SignChunk(token.Kind));

    private static readonly TokenListParser<LineToken, Chunk> Flat = Between.Or(Range).Or(Word).Or(Sign);

    private static readonly TokenListParser<LineToken, Chunk> Bracket =
        from open in Token.EqualTo(LineToken.Open)
        from inside in Flat.Many()
        from close in Token.EqualTo(LineToken.Close).OptionalOrDefault()
        select (Chunk)new BracketChunk(Meaning(inside));

    private static readonly TokenListParser<LineToken, Chunk[]> Line =
        Bracket.Or(Flat).Or(Token.EqualTo(LineToken.Close).Select(token => (Chunk)new SignChunk(LineToken.Other))).Many().AtEnd();

    /// <summary>The pieces of a line, without signs that say nothing.</summary>
    public static ImmutableArray<Chunk> Read(string line) => Meaning(Line.Parse(WithoutTimes(BehindListNumber(LineTokens.Of(line)))));

    /// <summary>The line behind the number that it has in a list, as the 1) or 2. before it: that number is no amount.</summary>
    private static TokenList<LineToken> BehindListNumber(TokenList<LineToken> line)
    {
        Token<LineToken>[] tokens = [.. line];
        if (tokens is not [{ Kind: LineToken.Number, Span.Length: <= 2 } number, ..] || !number.ToStringValue().All(char.IsAsciiDigit))
        {
            return line;
        }

        var marks = tokens.Skip(1).TakeWhile((mark, place) => mark.ToStringValue() is "." or ")" or ":" && mark.Position.Absolute == number.Position.Absolute + number.Span.Length + place).Count();
        return marks > 0 ? new TokenList<LineToken>(tokens[(1 + marks)..]) : line;
    }

    /// <summary>The line without a times sign that only says how many there are, as in 4 x large eggs.</summary>
    private static TokenList<LineToken> WithoutTimes(TokenList<LineToken> line)
    {
        Token<LineToken>[] tokens = [.. line];
        return tokens is [{ Kind: LineToken.Number }, { Kind: LineToken.Word or LineToken.Times } sign, { Kind: LineToken.Word } name, ..]
            && sign.ToStringValue() is "x" or "X" or "×" && name.Position.Absolute > sign.Position.Absolute + 1
            ? new TokenList<LineToken>([tokens[0], .. tokens[2..]])
            : line;
    }

    private static ImmutableArray<Chunk> Meaning(IEnumerable<Chunk> chunks) =>
        [.. chunks.Where(chunk => chunk is not SignChunk { Kind: LineToken.Other or LineToken.Open })];

    private static TokenListParser<LineToken, Token<LineToken>> WordOf(string word) =>
        Token.EqualTo(LineToken.Word).Where(token => token.ToStringValue().Equals(word, StringComparison.OrdinalIgnoreCase));

    private static AmountChunk Through(AmountChunk low, AmountChunk high) =>
        new(new Amount(low.Amount.Low, high.Amount.High), low.Thousands == ThousandsSign.None ? high.Thousands : low.Thousands);

    private static AmountChunk Exactly(double number) => new(Amount.Of(number), ThousandsSign.None);

    // 11/2, 21/4: a whole number and a fraction below one, or one fraction.
    private static bool MayHaveLostSpace(double over, double under) => over >= 10 && under < 10 && over % 10 > 0 && over % 10 < under;

    private static AmountChunk NumberOf(string text)
    {
        var sign = text.IndexOfAny([',', '.']);
        var thousands = sign > 0 && text.Length - sign == 4 && text[0] != '0'
            ? text[sign] == ',' ? ThousandsSign.Comma : ThousandsSign.Point
            : ThousandsSign.None;
        var plain = thousands == ThousandsSign.Comma ? text.Replace(",", string.Empty, StringComparison.Ordinal) : text.Replace(',', '.');
        return new AmountChunk(Amount.Of(double.Parse(plain, NumberStyles.Float, CultureInfo.InvariantCulture)), thousands);
    }
}
