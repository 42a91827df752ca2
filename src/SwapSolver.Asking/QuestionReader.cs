using System.Collections.Immutable;
using System.Text.RegularExpressions;
using SwapSolver.Asking.Grammar;
using SwapSolver.Asking.Text;
using SwapSolver.Asking.Things;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Wording;
using SwapSolver.Lines.Names;

namespace SwapSolver.Asking;

/// <summary>Reads questions of readers in words. It never guesses in silence: what it did not read it says, and what it took
/// for granted too.</summary>
public sealed partial class QuestionReader
{
    /// <summary>Longest question that is read [characters].</summary>
    public const int MostLetters = 1000;

    private readonly LexemeFinder lexemes;

    private readonly ClauseReader clauses;

    private readonly PartCutter parts;

    private readonly ThingWords things;

    private readonly QuestionWords words;

    private readonly OvenDials dials;

    private readonly Phrases sentences;

    /// <summary>Makes a reader.</summary>
    /// <param name="words">The words and patterns of questions.</param>
    /// <param name="names">The names of ingredients.</param>
    /// <param name="pantry">The ingredients.</param>
    /// <param name="dials">How ovens are set by other dials.</param>
    /// <param name="sentences">The sentences.</param>
    public QuestionReader(QuestionWords words, SpokenNames names, Pantry pantry, OvenDials dials, Phrases sentences)
    {
        this.words = words;
        this.dials = dials;
        this.sentences = sentences;
        things = new ThingWords(words, names, pantry);
        lexemes = new LexemeFinder(words, things, names, sentences);
        clauses = new ClauseReader(words);
        parts = new PartCutter(words);
    }

    /// <summary>How a question is understood.</summary>
    /// <param name="question">The question; any text.</param>
    /// <param name="formula">The formula asked about.</param>
    public Understanding Read(string question, Formula formula)
    {
        if (question.Length > MostLetters)
        {
            return new Understanding { Problem = sentences.Say("asked-too-long", ("limit", MostLetters.ToString(System.Globalization.CultureInfo.InvariantCulture))) };
        }

        var whole = ReadWhole(question, formula, isPart: false);
        return whole.Kind == QuestionKind.NotUnderstood ? ReadPart(question, formula) ?? whole : whole;
    }

    private Understanding ReadWhole(string question, Formula formula, bool isPart)
    {
        var plain = LoneDash().Replace(OneToOne().Replace(LonePoint().Replace(question, "0."), "1 to 1"), " ; ");
        var (found, spelt) = lexemes.In(parts.BeforeConclusion.Replace(plain, " ;"));
        var meaning = new ThingMeaning(things, formula, sentences);
        var named = Ages.PassedOver(WelcomeAndNot.Read(meaning.WithOfferedAsked(meaning.WithOwnNamed(found))));
        var (whole, shares) = Shares.TakenOut(named);
        var inPart = shares.IsEmpty ? null : Read(whole, shares);
        return inPart is { Kind: not QuestionKind.NotUnderstood } ? inPart : Read(named, []);

        Understanding Read(ImmutableArray<Lexeme> said, ImmutableArray<Share> shares)
        {
            var (weighed, amounts) = Amounts.TakenOut(said);
            var (read, unread) = clauses.Read(weighed);
            return new Reading(words, dials, sentences, meaning.Anew(), formula, question, weighed, read, unread, spelt, amounts, shares).Understand(isPart);
        }
    }

    /// <summary>As much of one as of another, which is no two sentences: swap them 1:1.</summary>
    [GeneratedRegex(@"(?<![\w:.])1:1(?![\w:.])", RegexOptions.CultureInvariant)]
    private static partial Regex OneToOne();

    /// <summary>The point of a figure that has nothing before it: .5 g.</summary>
    [GeneratedRegex(@"(?<![\w.])\.(?=\d)", RegexOptions.CultureInvariant)]
    private static partial Regex LonePoint();

    /// <summary>A dash that stands alone and in no range parts two thoughts: out of butter - ghee?</summary>
    [GeneratedRegex(@"(?<!\d)\s+[-\u2013\u2014]\s+|\s+[-\u2013\u2014]\s+(?!\d)", RegexOptions.CultureInvariant)]
    private static partial Regex LoneDash();
}
