using System.Collections.Immutable;
using System.Text.RegularExpressions;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Asking.Text;

/// <summary>Cuts a question into sentences, reasons and remarks, by the words that begin them.</summary>
internal sealed class PartCutter
{
    private const string Reason = "partreason";

    private const string ReasonBehindComma = "partreasonbehindcomma";

    private const string Remark = "partremark";

    private const string Asks = "partasks";

    private const string Therefore = "parttherefore";

    private const string NoConclusion = "partnoconclusion";

    private const string Age = "weare";

    private const string TakenBack = "parttakenback";

    private const string TakenBackAnywhere = "parttakenbackanywhere";

    /// <summary>Where sentences end. What stands in brackets is a sentence of its own, and so is what stands behind a lone dash, but for a range.</summary>
    private const string Ends = @"(?<=[.!?])\s+|[;\n()]+|(?<!\d)\s+[-\u2013\u2014]+\s+|\s+[-\u2013\u2014]+\s+(?!\d)|\.\.+|\u2026";

    private readonly Regex reason;

    private readonly Regex asks;

    private readonly Regex takenBack;

    /// <summary>Finds these words.</summary>
    public PartCutter(QuestionWords words)
    {
        string Of(params ReadOnlySpan<string> classes)
        {
            var wanted = classes.ToArray();
            return $"(?:{string.Join('|', words.Words.Where(word => wanted.Contains(word.Class)).Select(word => Regex.Escape(word.Phrase)))})";
        }

        var conclusion = $@",(?=\s+{Of(Therefore)}\s)(?!\s+{Of(NoConclusion)}\s)";
        BeforeConclusion = Made($@"{conclusion}|(?<=\b{WithApostrophes(Of(Age))}\s+\d+)\s*,");
        Sentences = Made($@"{Ends}|,?\s+(?=and\s+{Of(Asks)}\s)|{conclusion}");
        Reasons = Made($@"{Ends}|,?\s+(?={Of(Reason)}\s)|,\s+(?={Of(ReasonBehindComma)}\s)");
        Remarks = Made($@"{Ends}|,\s+|\s+(?={Of(Reason, Remark)}\s)");
        reason = Made($@"^{Of(Reason, ReasonBehindComma)}\b");
        asks = Made($@"^(?:and\s+)?{Of(Asks)}\b");
        takenBack = Made($@"^\W*{Of(TakenBack)}\b|\b{Of(TakenBackAnywhere)}\b");
    }

    /// <summary>Classes of words that say where a question may be cut, and nothing of what is asked.</summary>
    public static ImmutableArray<string> Classes { get; } = [Reason, ReasonBehindComma, Remark, Asks, Therefore, NoConclusion, TakenBack, TakenBackAnywhere];

    /// <summary>A comma before what is asked because of what was said: I watch my salt, so can it be under 150 mg of sodium? Or one behind an age:
    /// my daughter is 6, can it have less sugar?</summary>
    public Regex BeforeConclusion { get; }

    /// <summary>Where sentences end.</summary>
    public Regex Sentences { get; }

    /// <summary>Where sentences end, or a reason begins.</summary>
    public Regex Reasons { get; }

    /// <summary>Where sentences end, or a remark may begin or end.</summary>
    public Regex Remarks { get; }

    /// <summary>Whether a part gives a reason.</summary>
    public bool IsReason(string part) => reason.IsMatch(part);

    /// <summary>Whether a part asks something.</summary>
    public bool IsQuestion(string part) => part.EndsWith('?') || asks.IsMatch(part);

    /// <summary>Whether a part takes back what was said before it.</summary>
    public bool IsTakingBack(string part) => takenBack.IsMatch(part);

    /// <summary>Phrases as a reader writes them: im is I'm, and shes she's.</summary>
    private static string WithApostrophes(string phrases) => Regex.Replace(phrases, "(?<=[a-z])([ms])\\b", "['\u2019]?$1");

    private static Regex Made(string pattern) => new(pattern, RegexOptions.CultureInvariant | RegexOptions.IgnoreCase);
}
