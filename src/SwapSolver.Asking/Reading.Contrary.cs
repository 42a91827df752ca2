using SwapSolver.Asking.Text;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Asking;

/// <content>What cannot both be, and what may be of another bake than the one that is asked for.</content>
internal sealed partial class Reading
{
    private void ReadContrary(QuestionKind kind)
    {
        if (wanted.GroupBy(target => target.Name).Any(same => same.Max(target => target.Low) > same.Min(target => target.High)))
        {
            // It was too dry with four eggs. Can I use two?
            isTurned = true;
            problems.Add(sentences.Say("asked-at-odds", ("words", Phrases.List(All("EGGS", "EGGS_MOST", "TARGET_BELOW", "TARGET_ABOVE", "TARGET_BETWEEN", "TARGET_PLAIN", "LINE_LESS", "LINE_MORE").Select(clause => $"'{clause.Words}'")))));
        }

        foreach (var (with, name) in unread.Where(lexeme => lexeme.Thing is not null && IsLeftOutAnyway(lexeme)).Select(lexeme => (JustBefore(lexeme), lexeme)).Where(pair => IsWith(pair.Item1)).ToList())
        {
            // My wife says no eggs. Make it with eggs.
            isTurned = true;
            NotRead($"{with!.Text} {name.Text}");
        }

        if (!told.Without.IsEmpty && lexemes.Count(IsOneBake) > 1)
        {
            // One without eggs and one without nuts are two bakes, and it may be that each is to be left out of one.
            problems.Add(sentences.Say("asked-one-of-several"));
        }

        if (kind == QuestionKind.Replace && told.To.Length == 0 && All("LACK").FirstOrDefault(clause => meaning.IsLine(clause.First("from")!, told.From)) is { } lacked
            && lexemes.Any(lexeme => lexeme.Is(Lexeme.Stop) && Behind(lexeme).Any()) && (told.IsSized || !told.Without.IsEmpty || wanted.Count > 0))
        {
            // I forgot the cinnamon last time. Can I leave out the vanilla?
            assumed.Add(sentences.Say("asked-guessed-stand-in", ("words", lacked.Words)));
        }
    }

    /// <summary>Whether a word says that what is named behind it is to be in: with eggs; make it with eggs.</summary>
    private bool IsWith(Lexeme? word) =>
        word is not null && ((word.Is("use") && Before(word).LastOrDefault()?.Is(Lexeme.Stop) is true) || (word.Is("exempting") && word.Is("by")));

    /// <summary>Whether a word counts one bake among others: one without eggs.</summary>
    private bool IsOneBake(Lexeme word) =>
        word.Is("ones") && word.Is(Lexeme.Count) && Behind(word).FirstOrDefault(lexeme => !(lexeme.Is("title") || lexeme.Is("article"))) is { } next && (next.Is("out") || next.Is("for") || next.Is("by"));
}
