using SwapSolver.Asking.Text;

namespace SwapSolver.Asking;

/// <content>What makes somebody ill stays out, whatever is to come in: my son is allergic to them; hazelnuts make her wheeze.</content>
internal sealed partial class Reading
{
    /// <summary>Last words of what is said of somebody before the thing is named, as in 'gets hives from'.</summary>
    private static readonly string[] NamedBehind = [" to", " from", " after", " of", "reacts", "react"];

    private void ReadHurt()
    {
        foreach (var hurt in lexemes.Where(lexeme => lexeme.Is("hurts") || (lexeme.Is("bodily") && lexeme.Is(Lexeme.Filler))).ToList())
        {
            var subject = Hurting(hurt) ?? (told.To.Length > 0 ? All("REPLACE", "LACK", "WITHOUT").Select(clause => clause.First("from") ?? clause.First("without")).FirstOrDefault(name => name is not null) : null);
            if (subject is null || (told.From.Length > 0 && told.To.Length == 0 && meaning.IsLine(subject, told.From)))
            {
                // What goes out and is replaced by whatever can be does not come back.
                unread.RemoveAll(lexeme => subject is not null && ReferenceEquals(lexeme, hurt));
                continue;
            }

            var wishes = meaning.LeftOut(subject, isAllergy: true).Where(wish => told.Without.All(other => other.Id != wish.Id)).ToList();
            unread.RemoveAll(lexeme => ReferenceEquals(lexeme, hurt) || (ReferenceEquals(lexeme, subject) && wishes.Count > 0));
            if (wishes.Count == 0)
            {
                continue;
            }

            told = told with { Without = [.. told.Without, .. wishes] };
            assumed.Add(sentences.Say("asked-hurts", ("thing", subject.Text), ("words", hurt.Text)));
        }

        if (told.To.Length > 0)
        {
            // What is replaced is out already, and a check of one swap says more than a search does.
            told = told with { Without = [.. told.Without.Where(wish => wish.Id != told.From)] };
            ReadHeld(meaning.Found(told.To));
        }
    }

    /// <summary>What is said to make ill: the name next to that in its sentence; null where none is.</summary>
    private Lexeme? Hurting(Lexeme hurt)
    {
        var sentence = lexemes.Where(lexeme => SentenceOf(lexeme) == SentenceOf(hurt)).ToList();
        var behind = sentence.SkipWhile(lexeme => !ReferenceEquals(lexeme, hurt)).Skip(1).FirstOrDefault(lexeme => lexeme.Thing is not null);
        var before = sentence.TakeWhile(lexeme => !ReferenceEquals(lexeme, hurt)).LastOrDefault(lexeme => lexeme.Thing is not null);
        return NamedBehind.Any(end => hurt.Text.EndsWith(end, StringComparison.Ordinal)) ? behind ?? before : before;
    }
}
