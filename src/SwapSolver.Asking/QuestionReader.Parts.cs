using System.Collections.Immutable;
using System.Text.RegularExpressions;
using SwapSolver.Asking.Text;
using SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Asking;

/// <content>A question that is not understood as a whole, and is without one of its sentences: that is answered, and what was left
/// away is told word for word.</content>
public sealed partial class QuestionReader
{
    /// <summary>Classes of words that no part may have that is left away: whoever sees no more than the answer could be hurt.</summary>
    private static readonly ImmutableArray<string> NeverLeftAway =
        ["allergy", "bodily", "free", "diet", "raw", "animals", "claim", "illness", "contains", "hurts", "praise", "tale"];

    /// <summary>Of what holds no more than this nobody is told to keep away by a friend's word; many vinegars do.</summary>
    private const string Sulphites = "sulphites";

    /// <summary>Classes of words with which something is asked for; without one a remark may be all there is.</summary>
    private static readonly ImmutableArray<string> Asking = ["ask", "please", "how", "wish", "out", "what"];

    /// <summary>What hangs on all that is said of the loaf.</summary>
    private static readonly ImmutableArray<QuestionKind> NeverOfPart = [QuestionKind.Bake, QuestionKind.Figures, QuestionKind.Convert, QuestionKind.Rise, QuestionKind.NotUnderstood];

    /// <summary>Classes of words that turn what stands before a comma or a 'but': left away, that would say something else.</summary>
    private static readonly ImmutableArray<string> Turning =
        ["not", "out", "lack", "andno", "instead", "hard", "only", "sole", "keep", "hold", Lexeme.Count];

    /// <summary>Reads a question without the sentences, or without the reasons or remarks within them, that are not understood by themselves; null
    /// where nothing is understood so either.</summary>
    private Understanding? ReadPart(string question, Formula formula) =>
        ReadWithout(question, Sentences(), isApart: true, formula)
        ?? ReadWithout(question, Reasons(), isApart: true, formula)
        ?? ReadWithout(question, Remarks(), isApart: false, formula);

    /// <summary>Reads a question without some of its parts.</summary>
    /// <param name="question">The question.</param>
    /// <param name="cuts">Where it is cut.</param>
    /// <param name="isApart">Whether each part is a thought of its own, that may name things and deny something.</param>
    /// <param name="formula">The formula.</param>
    private Understanding? ReadWithout(string question, Regex cuts, bool isApart, Formula formula)
    {
        var parts = cuts.Split(question).Select(part => part.Trim()).Where(part => part.Length > 0).ToList();
        if (parts.Count < 2)
        {
            return null;
        }

        var kept = parts.Where(part => ReadWhole(part, formula, isPart: true).Kind != QuestionKind.NotUnderstood).ToList();
        var away = parts.Except(kept).Where(SaysSomething).ToList();
        if (kept.Count == 0 || away.Count == 0 || !(question.Contains('?', StringComparison.Ordinal) || lexemes.In(question).Lexemes.Any(lexeme => Asking.Any(lexeme.Is))) || away.Any(part => !MayBeLeftAway(part, isApart, kept.Any(IsVegan))) || (away.Any(IsQuestion) && !kept.Any(IsQuestion) && (isApart || !Reason().IsMatch(away.Last(IsQuestion)))))
        {
            return null;
        }

        var read = ReadWhole(string.Join(" ; ", kept), formula, isPart: true);
        // What a single word beside a swap is of, nobody knows: it may be what is to come in.
        return NeverOfPart.Contains(read.Kind) || (!isApart && read is { Kind: QuestionKind.Replace, To: "" }) ? null : read with
        {
            Problem = string.Join(
                ' ',
                away.Select(part => sentences.Say("asked-part-not-read", ("words", part.TrimEnd('.', '!', '?'))))
                    .Append(away.Any(IsOfHealth) ? sentences.Say("asked-health") : string.Empty)
                    .Append(read.Problem)
                    .Where(said => said.Length > 0)),
        };
    }

    private bool IsVegan(string part) => lexemes.In(part).Lexemes.Any(lexeme => lexeme.Is("diet") && lexeme.Means("diet") == "VEGAN");

    private bool SaysSomething(string part) => lexemes.In(part).Lexemes.Any(lexeme => !lexeme.MayBeUnread && !lexeme.MayBeSkipped);

    private bool MayBeLeftAway(string part, bool isApart, bool isVegan)
    {
        var said = lexemes.In(part).Lexemes;
        return !said.Any(lexeme => NeverLeftAway.Any(lexeme.Is))
            && !said.Any(lexeme => lexeme.Thing is { } thing && !(isVegan && thing.LeftOut is "egg" or "milk") && (thing.LeftOut is not null || thing.Ingredient?.Allergens is { Us.IsEmpty: false } || thing.Ingredient?.Allergens.Eu.Any(id => id != Sulphites) is true))
            && !Corrections().IsMatch(part)
            && (isApart || !said.Any(lexeme => lexeme.Thing is not null || Turning.Any(lexeme.Is)));
    }

    private bool IsOfHealth(string part) => lexemes.In(part).Lexemes.Any(lexeme => lexeme.Is("health"));

    private static bool IsQuestion(string part) => part.EndsWith('?') || Questions().IsMatch(part);

    /// <summary>Where sentences end. What stands in brackets is a sentence of its own.</summary>
    [GeneratedRegex(@"(?<=[.!?])\s+|[;\n()]+|(?<!\d)\s+[-\u2013\u2014]+\s+|\s+[-\u2013\u2014]+\s+(?!\d)|\.\.+|\u2026|,?\s+(?=and\s+(?:do|does|can|could|should|will|would|is|are|how|what|which)\s)", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Sentences();

    /// <summary>Where sentences end, or a reason begins.</summary>
    [GeneratedRegex(@"(?<=[.!?])\s+|[;\n()]+|(?<!\d)\s+[-\u2013\u2014]+\s+|\s+[-\u2013\u2014]+\s+(?!\d)|\.\.+|\u2026|,?\s+(?=(?:because|cause|cos|since|seeing|so that|now that)\s)", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Reasons();

    /// <summary>Where sentences end, or a remark may begin or end.</summary>
    [GeneratedRegex(@"(?<=[.!?])\s+|[;\n()]+|(?<!\d)\s+[-\u2013\u2014]+\s+|\s+[-\u2013\u2014]+\s+(?!\d)|\.\.+|\u2026|,\s+|\s+(?=(?:because|cause|cos|since|seeing|so|but)\s)", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Remarks();

    /// <summary>Words that a reason begins with.</summary>
    [GeneratedRegex(@"^(?:because|cause|cos|since|seeing|so that|now that)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Reason();

    /// <summary>Words that a question begins with.</summary>
    [GeneratedRegex(@"^(?:and\s+)?(?:do|does|did|can|could|should|shall|will|would|may|might|must|is|are|how|what|which|any)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Questions();

    /// <summary>Words with which somebody takes back what was said before.</summary>
    [GeneratedRegex(@"^\W*(?:no|nah|nope|actually|wait|sorry|rather|or|not|ah|oh)\b|\b(?:leave|keep) (?:it|them) in\b|\b(?:scratch that|i mean|meant|typo|correction|oops|forget that|second thoughts?|should have said|never mind)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Corrections();
}
