using SwapSolver.Asking.Text;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Asking;

/// <content>How far it rises.</content>
internal sealed partial class Reading
{
    /// <summary>Whether it rises is a question; that it should is a wish for more of it. What lifts it is named in passing.</summary>
    private void ReadRise()
    {
        if (!All("RISE").Any() || told.From.Length > 0 || told.Diet.Length > 0 || told.IsSized || wanted.Count > 0 || All("BAKE", "HOW_LONG", "MEASURE", "CONVERT").Any() || told.Without.Any(meaning.Holds))
        {
            return;
        }

        if (!IsDoubted() && HowFar is null && !lexemes.Any(lexeme => lexeme.Is("riseask") || lexeme.Is("tallasked")))
        {
            wanted.Add(new AskedTarget("higher", null, null));
            return;
        }

        // Without yeast, which it has not, it rises as it does.
        told = told with { Without = [] };
        if (unread.Where(lexeme => lexeme.Thing is { } thing && meaning.IsOwn(thing)).ToList() is { Count: > 0 } lifting)
        {
            NotRead(Phrases.List(lifting.Select(lexeme => lexeme.Text)));
            unread.RemoveAll(lifting.Contains);
        }
    }

    /// <summary>The word behind a 'how' that asks how far something goes: how high does it rise? Null where nothing does.</summary>
    private Lexeme? HowFar => lexemes.Zip(lexemes.Skip(1)).Where(pair => pair.First.Is("how") && pair.Second.Is("howfar")).Select(pair => pair.Second).FirstOrDefault();

    /// <summary>Tells what is asked of how far it rises beside another question: how far another loaf rises stands with that loaf.</summary>
    private void ReadBesidesRise(QuestionKind kind)
    {
        if (kind is not (QuestionKind.Resize or QuestionKind.Variant or QuestionKind.Check or QuestionKind.Replace or QuestionKind.Reformulate))
        {
            return;
        }

        if (!wanted.Any(target => target.Name == "higher") && All("RISE").ToList() is { Count: > 0 } rises)
        {
            NotRead(rises);
        }
        else if (kind == QuestionKind.Resize && HowFar is { } far)
        {
            NotRead($"how {far.Text}");
        }
    }
}
