using SwapSolver.Asking.Text;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Asking;

/// <content>What a slice has.</content>
internal sealed partial class Reading
{
    /// <summary>Whether nothing is named but a reading, and that is a question: calories per slice? What's the fibre content. What salt, or what fibre to
    /// use, is no such question.</summary>
    private bool ReadBareReading()
    {
        var said = unread.Where(lexeme => !lexeme.MayBeUnread).ToList();
        var isBare = (IsAsked || lexemes.Any(lexeme => lexeme.Is("please") || lexeme.Is("what"))) && clauses.All(clause => clause.Means == "IDLE") && said.Any(lexeme => lexeme.Is("reading"))
            && said.All(lexeme => lexeme.Is("reading") || lexeme.Is("per") || lexeme.Is("slice") || lexeme.Is("loaf"))
            && !lexemes.Any(lexeme => lexeme.Is("use")) && !said.Any(lexeme => lexeme.Thing is not null && JustBefore(lexeme)?.Is("whichone") is true);
        if (isBare)
        {
            unread.Clear();
        }

        return isBare;
    }

    /// <summary>Whether it is asked what a slice has, and nothing else but of how much or how it is cut.</summary>
    private bool IsOfFigures =>
        told is { From: "", Diet: "", Tin: null } && told.Without.IsEmpty && told.IsSized && wanted.Count == 0 && !IsTimed
        && (All("FIGURES").Any() || (told is { Slices: not null, MassGrams: null, Factor: null or 1 } && IsAsked && unread.Any(lexeme => lexeme.Is("reading"))));

    /// <summary>What a slice has where the loaf is cut otherwise; of one roll, of two slices, or of half a loaf what each slice has, and the whole, is told.</summary>
    private void ReadFiguresOfSize()
    {
        unread.RemoveAll(lexeme => lexeme.Is("reading"));
        if (told is not { Slices: { } slices, MassGrams: null, Factor: null or 1 })
        {
            told = told with { Slices = null, Factor = null, MassGrams = null };
            NotRead(All("SLICES", "FACTOR", "MASS", "PIECES"));
            return;
        }

        assumed.Remove(AsLarge(slices));
        var isCut = told.Factor is not null;
        told = told with { Factor = null };
        if (isCut)
        {
            return;
        }

        if (All("SLICES").FirstOrDefault(clause => clause.First("onlymake") is not null || clause.First("instead") is not null) is { } other)
        {
            assumed.Add(sentences.Say("asked-same-cut", ("words", other.Words), ("count", Said(slices))));
            return;
        }

        told = told with { Slices = null };
        if (slices > 1)
        {
            assumed.Add(sentences.Say("asked-figures-of-one", ("count", Said(slices))));
        }
    }

    /// <summary>Tells of what is asked after that stands on no panel: what a slice costs, or has of eggs.</summary>
    private void ReadOffThePanel()
    {
        var readings = lexemes.Where(lexeme => lexeme.Is("reading")).ToList();
        var others = readings.Where(IsOffThePanel).ToList();
        if (others.Count > 0)
        {
            isTurned |= others.Count == readings.Count;
            problems.Add(sentences.Say("asked-unsupported", ("words", Phrases.List(others.Select(lexeme => lexeme.Text)))));
        }
    }

    /// <summary>Whether a reading is no figure of a slice: price, eggs.</summary>
    private static bool IsOffThePanel(Lexeme lexeme) => lexeme.Means("reading") is "price" or "eggs";
}
