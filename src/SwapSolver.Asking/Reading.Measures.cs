using System.Collections.Immutable;
using SwapSolver.Asking.Text;

namespace SwapSolver.Asking;

/// <content>What a measure of something weighs.</content>
internal sealed partial class Reading
{
    /// <summary>Classes of words with which something is done with a measure of something, and not asked what it weighs.</summary>
    private static readonly ImmutableArray<string> OfDoing = ["use", "addto", "put", "out", "more", "less", "partly"];

    /// <summary>Classes of words by which it is certain that a weight is asked for.</summary>
    private static readonly ImmutableArray<string> OfWeighing = ["convert", "howmuch", "how", "mass", "what"];

    private bool IsMeasure() =>
        (All("MEASURE").Any() && (All("CONVERT").Any() || !lexemes.Any(lexeme => OfDoing.Any(lexeme.Is)) && clauses.All(clause => clause.Means is "MEASURE" or "BAKE_WORD" || (IsAsked && clause.Means is "MASS"))))
        || (All("CONVERT").Any() && told.From.Length == 0 && told.Without.IsEmpty && OnlyThingUnread() is not null);

    /// <summary>The name of what is measured: of several vinegars it is the one of this formula, which is told.</summary>
    private string NameOf(Lexeme measured)
    {
        if (measured.Thing!.Ingredient is not null || meaning.LineOf(measured) is not { } own)
        {
            return measured.Text;
        }

        assumed.Add(sentences.Say("asked-own-line", ("thing", measured.Text), ("ingredient", own.Name)));
        return own.Name;
    }

    private QuestionKind ReadMeasure()
    {
        if (All("MEASURE").FirstOrDefault() is { } clause)
        {
            var isWeighed = clause.First("mass") is not null;
            if (isWeighed)
            {
                assumed.Add(sentences.Say("asked-one-measure", ("words", clause.Words), ("measure", clause.First("measure")!.Means("measure"))));
            }
            else if (!lexemes.Any(lexeme => OfWeighing.Any(lexeme.Is)))
            {
                // A tablespoon of cocoa in it?
                assumed.Add(sentences.Say("asked-measure", ("words", clause.Words)));
            }

            // A fraction was cut at its stroke.
            var many = isWeighed ? "1" : clause.First(Lexeme.Count)?.Text.Replace(" / ", "/", StringComparison.Ordinal) ?? "1";
            var measure = clause.First("measure")!.Means("measure");
            var named = NameOf(clause.First("thing")!);
            told = told with { Text = char.IsAsciiDigit(measure[0]) ? $"{measure} {named}" : $"{many} {measure} {named}" };
            return QuestionKind.Convert;
        }

        var thing = OnlyThingUnread()!;
        var count = unread.FirstOrDefault(lexeme => lexeme.Is(Lexeme.Count));
        if (count is null && (meaning.IsWeighed(thing) || lexemes.Any(lexeme => lexeme.Is("wholly"))))
        {
            // How many grams of butter it takes stands in the formula.
            return Refused("asked-unsupported", thing.Text);
        }

        unread.Remove(thing);
        unread.RemoveAll(lexeme => lexeme == count);
        told = told with { Text = $"{count?.Text ?? "1"} {thing.Text}" };
        return QuestionKind.Convert;
    }
}
