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
        ReadWithout(question, parts.Sentences, isApart: true, formula)
        ?? ReadWithout(question, parts.Reasons, isApart: true, formula)
        ?? ReadWithout(question, parts.Remarks, isApart: false, formula);

    /// <summary>Reads a question without some of its parts.</summary>
    /// <param name="question">The question.</param>
    /// <param name="cuts">Where it is cut.</param>
    /// <param name="isApart">Whether each part is a thought of its own, that may name things and deny something.</param>
    /// <param name="formula">The formula.</param>
    private Understanding? ReadWithout(string question, Regex cuts, bool isApart, Formula formula)
    {
        var said = cuts.Split(question).Select(part => part.Trim()).Where(part => part.Length > 0).ToList();
        if (said.Count < 2)
        {
            return null;
        }

        var kept = said.Where(part => ReadWhole(part, formula, isPart: true).Kind != QuestionKind.NotUnderstood).ToList();
        var away = said.Except(kept).Where(SaysSomething).ToList();
        var isAsked = question.Contains('?', StringComparison.Ordinal) || lexemes.In(question).Lexemes.Any(lexeme => Asking.Any(lexeme.Is));
        // Where what is left away is the question, what is kept is none; the question mark behind a reason is that of the whole sentence.
        var isLost = away.Any(parts.IsQuestion) && !kept.Any(parts.IsQuestion) && (isApart || !parts.IsReason(away.Last(parts.IsQuestion)));
        if (kept.Count == 0 || away.Count == 0 || !isAsked || isLost || away.Any(part => !MayBeLeftAway(part, isApart, kept.Any(IsVegan))))
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
                    .Where(problem => problem.Length > 0)),
        };
    }

    private bool IsVegan(string part) => lexemes.In(part).Lexemes.Any(lexeme => lexeme.Is("diet") && lexeme.Means("diet") == "VEGAN");

    private bool SaysSomething(string part) => lexemes.In(part).Lexemes.Any(lexeme => !lexeme.MayBeUnread && !lexeme.MayBeSkipped);

    private bool MayBeLeftAway(string part, bool isApart, bool isVegan)
    {
        var said = lexemes.In(part).Lexemes;
        return !said.Any(lexeme => NeverLeftAway.Any(lexeme.Is))
            && !said.Any(lexeme => lexeme.Thing is { } thing && !(isVegan && thing.LeftOut is "egg" or "milk") && (thing.LeftOut is not null || thing.Ingredient?.Allergens is { Us.IsEmpty: false } || thing.Ingredient?.Allergens.Eu.Any(id => id != Sulphites) is true))
            && !parts.IsTakingBack(part)
            && (isApart || !said.Any(lexeme => lexeme.Thing is not null || Turning.Any(lexeme.Is)));
    }

    private bool IsOfHealth(string part) => lexemes.In(part).Lexemes.Any(lexeme => lexeme.Is("health"));
}
