using System.Collections.Immutable;
using SwapSolver.Asking.Grammar;
using SwapSolver.Asking.Text;

namespace SwapSolver.Asking;

/// <content>What somebody did, which is no wish: I left out the psyllium and got a brick.</content>
internal sealed partial class Reading
{
    /// <summary>Classes of words by which somebody may have to keep away from something.</summary>
    private static readonly ImmutableArray<string> MayHurtSomebody = ["allergy", "bodily", "hurts", "illness", "free", "diet", "contains"];

    /// <summary>What was done may be told by; another size, or a measure, is meant as it is said.</summary>
    private static readonly ImmutableArray<string> MayBeReported = ["REPLACE", "WITHOUT", "LACK", "TO", "EGGS", "EGGS_MOST", "GOAL", "LESS", "MORE", "LINE_LESS", "LINE_MORE", "LINE_TIMES"];

    /// <summary>What may be asked of what was done.</summary>
    private static readonly ImmutableArray<string> AsksOfIt = ["IDLE", "RISE", "BAKE", "HOW_LONG", "BAKE_WORD", "FIGURES"];

    /// <summary>Sizes: what was made in one is told of, where a wish is for what comes next.</summary>
    private static readonly ImmutableArray<string> Sizes = ["SLICES", "MASS", "FACTOR", "NAMED_TIN", "LONG_TIN", "TIN", "SQUARE", "ROUND", "BARE_TIN", "DEPTH", "PIECES", "SMALL_LOAVES"];

    /// <summary>Whether a number is of what somebody baked or ate, and asks for nothing: I've baked it twice.</summary>
    private bool IsTale(Clause clause) => SentenceBefore(clause).TakeWhile(lexeme => lexeme.Text != ",").Any(lexeme => lexeme.Is("tale"));

    /// <summary>Whether a size is that of a loaf that was made, and what is asked is how the next is to be: I doubled it and it was too dry.</summary>
    private bool IsOfAnotherTime(Clause size)
    {
        var before = SentenceBefore(size).ToList();
        if (before.Any(lexeme => lexeme.Is("ask") || lexeme.Is("please") || lexeme.Is("how") || lexeme.Is("what") || lexeme.Is("wish")))
        {
            return false;
        }

        var sentence = SentenceBehind(size);
        if (sentence.Any(lexeme => lexeme.Is("please")))
        {
            return false;
        }

        var said = before.AsEnumerable().Reverse().Concat(size.Parts.Select(part => part.Lexeme)).Concat(sentence).ToList();
        var wasSo = sentence.Where(lexeme => lexeme.Is("goal")).Any(goal => goal.Is("wasso") || said.TakeWhile(lexeme => !ReferenceEquals(lexeme, goal)).Any(lexeme => lexeme.Is("past")));
        var wasDone = said.Any(lexeme => lexeme.Is("done"));
        // Who says by whom it was done tells of it: made in a 2 lb tin may be a wish.
        var isTold = said.Zip(said.Skip(1)).Any(pair => pair.Second.Is("done") && (pair.First.Is("newthought") || pair.First.Is("ours"))) || said.Any(lexeme => lexeme.Is("donebyus"));
        return (wasSo && (wasDone || before.Any(lexeme => lexeme.Is("ours") || lexeme.Is("past")))) || (isTold && clauses.Any(clause => IsWishBeside(clause) && SentenceOf(clause.Parts[0].Lexeme) != SentenceOf(size.Parts[0].Lexeme)));
    }

    /// <summary>Whether a clause asks for something else than a size.</summary>
    private static bool IsWishBeside(Clause clause) =>
        !clause.IsNegated && (clause.Means != "UNSUPPORTED" || clause.First("bigger") is not null) && !Sizes.Contains(clause.Means) && !AsksOfIt.Contains(clause.Means);

    /// <summary>The words of a clause's sentence before it, the nearest first.</summary>
    private IEnumerable<Lexeme> SentenceBefore(Clause clause) => Before(clause.Parts[0].Lexeme).Reverse().TakeWhile(lexeme => !lexeme.Is(Lexeme.Stop));

    /// <summary>The words behind a clause in its sentence.</summary>
    private List<Lexeme> SentenceBehind(Clause clause) => [.. Behind(clause.Parts[^1].Lexeme).TakeWhile(lexeme => !lexeme.Is(Lexeme.Stop))];

    /// <summary>Takes away what is only told of. What was done may be what is asked about, as in 'I left out the salt, will it rise?', where nothing
    /// else is.</summary>
    private void ReadReported()
    {
        var reported = clauses.Where(IsReported).ToList();
        var asks = clauses.Where(clause => !clause.IsNegated && !AsksOfIt.Contains(clause.Means) && !reported.Contains(clause)).ToList();
        foreach (var clause in reported.Where(clause => asks.Count > 0 || !(IsAskedAbout(clause) || IsAllThatIsSaid(clause))).ToList())
        {
            clauses = clauses.Remove(clause);
            var mayHurt = lexemes.Any(lexeme => MayHurtSomebody.Any(lexeme.Is));
            if (asks.Count > 0 && !mayHurt)
            {
                NotRead(clause.Words);
            }
            else
            {
                isTurned |= mayHurt;
                unread.AddRange(clause.Parts.Select(part => part.Lexeme));
            }
        }
    }

    /// <summary>Takes away wishes that are questions of what a change does: how much drier are they without the cream?</summary>
    private void ReadEffects()
    {
        var isChanged = All("WITHOUT", "REPLACE", "LINE_MORE", "LINE_LESS").Any();
        foreach (var effect in All("GOAL", "LESS", "MORE").Where(clause => isChanged && JustBefore(clause.Parts[0].Lexeme)?.Is("howmuch") is true).ToList())
        {
            clauses = clauses.Remove(effect);
            NotRead($"{JustBefore(effect.Parts[0].Lexeme)!.Text} {effect.Words}");
        }
    }

    /// <summary>Whether a clause tells what was done: its own words do, or words before it in its part of the sentence.</summary>
    private bool IsReported(Clause clause) =>
        !clause.IsNegated && MayBeReported.Contains(clause.Means)
        && (clause.Parts.Any(part => part.Lexeme.Is("reported"))
            || (!clause.Parts.Any(part => MayHurtSomebody.Any(part.Lexeme.Is) || (clause.Means == "WITHOUT" && part.Lexeme.Thing is { } thing && meaning.MayHurt(thing))) && Before(clause.Parts[0].Lexeme).Reverse().TakeWhile(IsOfOneThought).Any(lexeme => lexeme.Is("reported"))));

    private static bool IsOfOneThought(Lexeme lexeme) =>
        !lexeme.Is(Lexeme.Stop) && !lexeme.Is("ask") && !lexeme.Is("how") && !lexeme.Is("what") && !lexeme.Is("join") && lexeme.Text != ",";

    /// <summary>Whether a swap is told of and nothing else is said: what else should it be but the question?</summary>
    private bool IsAllThatIsSaid(Clause clause) =>
        clause is { Means: "REPLACE" } && clause.First("to") is not null && clause.Parts[0].Lexeme.Is("reported") && unread.All(lexeme => lexeme.MayBeUnread);

    /// <summary>Whether the sentence of a clause ends as a question, or asks behind it.</summary>
    private bool IsAskedAbout(Clause clause)
    {
        var rest = Behind(clause.Parts[^1].Lexeme).ToList();
        var sentence = rest.TakeWhile(lexeme => !lexeme.Is(Lexeme.Stop)).ToList();
        return sentence.Any(lexeme => lexeme.Is("ask")) || (sentence.Count < rest.Count ? rest[sentence.Count].Text == "?" : IsAsked);
    }
}
