using SwapSolver.Asking.Text;
using SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Asking;

/// <content>What is to be baked as something else: buns of a loaf. Beside another wish it is told that only the loaf was looked at.</content>
internal sealed partial class Reading
{
    /// <summary>Class of what a dough may be baked as.</summary>
    private const string BakedAs = "bakeas";

    private void ReadOtherBake(QuestionKind kind)
    {
        unread.RemoveAll(IsMade);
        if (kind is not (QuestionKind.Variant or QuestionKind.Check or QuestionKind.Replace or QuestionKind.Reformulate) || told.IsSized)
        {
            return;
        }

        var other = lexemes.Where(IsOtherBake).Select(lexeme => lexeme.Text)
            .Concat(lexemes.Where(IsOtherTin).Select(lexeme => $"{JustBefore(lexeme)!.Text} {lexeme.Text}"));
        foreach (var said in other.Distinct())
        {
            problems.Add(sentences.Say("asked-other-bake", ("words", said)));
        }
    }

    /// <summary>Whether something else is to be made than the formula makes; who makes the rolls, or these, may call it what they like.</summary>
    private bool IsOtherBake(Lexeme lexeme) => IsMade(lexeme) && !OwnBakes().Contains(lexeme.Means(BakedAs));

    private bool IsMade(Lexeme lexeme) =>
        lexeme.Is(BakedAs) && Before(lexeme).LastOrDefault(before => !(before.Text is "a" or "an" or "some" || before.Is(Lexeme.Count))) is { } makes && makes.Is("makes");

    /// <summary>Whether a tin is to be baked in that the formula has not, or to be done without.</summary>
    private bool IsOtherTin(Lexeme lexeme) =>
        lexeme.Is("tin") && JustBefore(lexeme) is { } before && (formula.Shape is Tin ? before.Is("out") : before.Is("goesin"));

    /// <summary>What the formula is baked as, by its name; where that does not say, by its shape.</summary>
    private List<string> OwnBakes()
    {
        var name = $" {formula.DisplayName.ToLowerInvariant()} ";
        var own = words.Words.Where(word => word.Class == BakedAs && name.Contains($" {word.Phrase} ", StringComparison.Ordinal)).Select(word => word.Means).Distinct().ToList();
        return own.Count > 0 ? own : formula.Shape is Pieces ? ["rolls", "muffins", "brownies"] : formula.Shape is Tin ? ["loaf", "cake", "brownies"] : ["loaf"];
    }
}
