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
        ["allergy", "bodily", "free", "diet", "raw", "animals", "claim", "illness", "contains", "hurts", "praise", "tale", "keptout"];

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
        var said = cuts.Split(question).Select(part => part.Trim()).Where(part => part.Length > 0).Select(part => PartOf(part, formula)).ToList();
        var (kept, away) = (said.Where(part => part.IsUnderstood).ToList(), said.Where(part => !part.IsUnderstood && part.SaysSomething).ToList());
        var isAsked = question.Contains('?', StringComparison.Ordinal) || said.Any(part => Asking.Any(part.Has));
        // Where what is left away is the question, what is kept is none; the question mark behind a reason is that of the whole sentence.
        var isLost = away.LastOrDefault(part => parts.IsQuestion(part.Text)) is { } lost && !kept.Any(part => parts.IsQuestion(part.Text)) && (isApart || !parts.IsReason(lost.Text));
        var isVegan = kept.Any(part => part.Lexemes.Any(lexeme => lexeme.Is("diet") && lexeme.Means("diet") == "VEGAN"));
        if (kept.Count == 0 || away.Count == 0 || !isAsked || isLost || away.Any(part => !MayBeLeftAway(part, isApart, isVegan)))
        {
            return null;
        }

        var read = ReadWhole(string.Join(" ; ", kept.Select(part => part.Text)), formula, isPart: true);
        // What a single word beside a swap is of, nobody knows: it may be what is to come in.
        return NeverOfPart.Contains(read.Kind) || (!isApart && read is { Kind: QuestionKind.Replace, To: "" }) ? null : read with
        {
            Problem = string.Join(
                ' ',
                away.Select(part => sentences.Say("asked-part-not-read", ("words", part.Text.TrimEnd('.', '!', '?'))))
                    .Append(away.Any(part => part.Has("health")) ? sentences.Say("asked-health") : string.Empty)
                    .Append(read.Problem)
                    .Where(problem => problem.Length > 0)),
        };
    }

    private Part PartOf(string text, Formula formula) =>
        new(text, lexemes.In(text).Lexemes, ReadWhole(text, formula, isPart: true).Kind != QuestionKind.NotUnderstood);

    private bool MayBeLeftAway(Part part, bool isApart, bool isVegan) =>
        !NeverLeftAway.Any(part.Has)
        && !part.Lexemes.Any(lexeme => lexeme.Thing is { } thing && MayHurt(thing, isVegan))
        && !parts.IsTakingBack(part.Text)
        && (isApart || !(part.Lexemes.Any(lexeme => lexeme.Thing is not null) || Turning.Any(part.Has)));

    /// <summary>Whether somebody may have to keep away from what is named. A vegan loaf keeps away from egg and milk by itself.</summary>
    private static bool MayHurt(Thing thing, bool isVegan) =>
        !(isVegan && thing.LeftOut is "egg" or "milk")
        && (thing.LeftOut is not null || (thing.Ingredient is { Allergens: var carried } && carried.Us.Concat(carried.Eu).Any(id => id != Sulphites)));

    /// <summary>A part of a question.</summary>
    /// <param name="Text">It as it was written.</param>
    /// <param name="Lexemes">Its words.</param>
    /// <param name="IsUnderstood">Whether it is understood by itself.</param>
    private sealed record Part(string Text, ImmutableArray<Lexeme> Lexemes, bool IsUnderstood)
    {
        public bool SaysSomething => Lexemes.Any(lexeme => !lexeme.MayBeUnread && !lexeme.MayBeSkipped);

        public bool Has(string @class) => Lexemes.Any(lexeme => lexeme.Is(@class));
    }
}
