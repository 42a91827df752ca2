using System.Collections.Immutable;
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

    /// <summary>Classes of words with which something may be asked for beside what makes ill.</summary>
    private static readonly ImmutableArray<string> AsksForIt =
        ["ask", "use", "swap", "put", "instead", "standin", "standinafter", "replaces", "only", "sole", "alone", "wish", "how", "what", "please", "welcome", "goesin", "mustbe", "for", "where", "addto", "arrow", Lexeme.Stop];

    /// <summary>Classes of words with which something makes ill, or is not eaten.</summary>
    private static readonly ImmutableArray<string> Harms = ["bodily", "allergy", "cannothave", "hurts", "illness"];

    /// <summary>What somebody may be allergic to comes in for nothing: I am allergic to walnuts, my son to almonds; almonds I can't have, hazelnuts I can.</summary>
    private void ReadHarm()
    {
        var harms = lexemes.Where(lexeme => Harms.Any(lexeme.Is)).ToList();
        if (told.From.Length == 0 || told.To.Length == 0 || harms.Count == 0)
        {
            return;
        }

        foreach (var comes in lexemes.Where(lexeme => lexeme.Thing is not null && IsComing(lexeme)))
        {
            var since = Before(comes).Reverse().TakeWhile(lexeme => lexeme.Text is "is" or "are" || !AsksForIt.Any(lexeme.Is)).ToList();
            var next = Behind(comes).FirstOrDefault(lexeme => !lexeme.MayBeSkipped || lexeme.Is(Lexeme.Stop) || AsksForIt.Any(lexeme.Is));
            var isAskedBehind = next is not null && !next.Is(Lexeme.Stop) && AsksForIt.Any(next.Is);
            if ((since.Any(harms.Contains) && !isAskedBehind) || (next is not null && harms.Contains(next)))
            {
                Refused("asked-harm", comes.Text);
            }
        }
    }

    /// <summary>Whether a name is that of what comes in.</summary>
    private bool IsComing(Lexeme name) => name.Thing!.Ingredient?.Id == told.To || meaning.Anew().In(name, meaning.Found(told.From))?.Id == told.To;

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
