using SwapSolver.Asking.Text;

namespace SwapSolver.Asking;

/// <content>What makes somebody ill stays out, whatever is to come in: my son is allergic to them; hazelnuts make her wheeze.</content>
internal sealed partial class Reading
{
    private void ReadHurt()
    {
        foreach (var hurt in lexemes.Where(lexeme => lexeme.Is("hurts") || (lexeme.Is("bodily") && lexeme.Is(Lexeme.Filler))).ToList())
        {
            var subject = Hurting(hurt) ?? (told.To.Length > 0 ? NamedOut : null);
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

    /// <summary>What is first named to go; null where nothing is.</summary>
    private Lexeme? NamedOut => All("REPLACE", "LACK", "WITHOUT").Select(clause => clause.First("from") ?? clause.First("without")).FirstOrDefault(name => name is not null);

    /// <summary>What is said to make ill: the name next to that in its sentence; null where none is.</summary>
    private Lexeme? Hurting(Lexeme hurt)
    {
        var (before, behind) = NamesBeside(hurt);
        return hurt.Is("namedbehind") ? behind ?? before : before;
    }

    /// <summary>The names next to a word in its sentence; null where none stands on that side.</summary>
    private (Lexeme? Before, Lexeme? Behind) NamesBeside(Lexeme word)
    {
        bool IsNameBeside(Lexeme lexeme) => lexeme.Thing is not null && SentenceOf(lexeme) == SentenceOf(word);
        return (Before(word).LastOrDefault(IsNameBeside), Behind(word).FirstOrDefault(IsNameBeside));
    }
}
