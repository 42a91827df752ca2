using System.Collections.Immutable;
using System.Globalization;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Asking.Text;

/// <summary>A phrase, name or number of a question.</summary>
/// <param name="Text">As it was written.</param>
/// <param name="Classes">What it does in a question, each with what it stands for there.</param>
/// <param name="Thing">What it names; null where it names nothing.</param>
internal sealed record Lexeme(string Text, ImmutableDictionary<string, string> Classes, Thing? Thing)
{
    /// <summary>Class of numbers.</summary>
    public const string Count = "count";

    /// <summary>Class of what says nothing of what is asked.</summary>
    public const string Filler = "filler";

    /// <summary>Class of the end of a sentence.</summary>
    public const string Stop = "stop";

    /// <summary>Class of what a loaf is called after, as hazelnut loaf; it stands for the words of its name.</summary>
    public const string NamedAfter = "namedafter";

    /// <summary>Class of words that part two things evenly, as 50/50.</summary>
    public const string Fifty = "fifty";

    /// <summary>Class of a word that is not known.</summary>
    public const string Unknown = "unknown";

    /// <summary>Whether it is of a class.</summary>
    public bool Is(string @class) => Classes.ContainsKey(@class);

    /// <summary>What it stands for in a class that it is of.</summary>
    public string Means(string @class) => Classes[@class];

    /// <summary>The number that it stands for in a class that it is of.</summary>
    public double Number(string @class) => double.Parse(Classes[@class], CultureInfo.InvariantCulture);

    /// <summary>The same word, of one class and no other.</summary>
    public Lexeme As(string @class, string means = "") => this with { Classes = OneClass(@class, means) };

    /// <summary>One class alone, with what a word stands for there.</summary>
    public static ImmutableDictionary<string, string> OneClass(string @class, string means = "") => ImmutableDictionary.Create<string, string>(StringComparer.Ordinal).Add(@class, means);

    /// <summary>Whether a reading may pass over it.</summary>
    public bool MayBeSkipped => Thing is null && IsIdle(Classes);

    /// <summary>Whether it says nothing where no clause reads it.</summary>
    public bool MayBeUnread => Thing is null && (Is(Filler) || Is("soft") || Is("ask") || Is("wish"));

    // Asked of every word many times: it makes no lists.
    private static bool IsIdle(ImmutableDictionary<string, string> classes)
    {
        var isIdle = classes.IsEmpty;
        foreach (var (name, _) in classes)
        {
            if (Likely.Contains(name))
            {
                continue;
            }

            if (!Idle.Contains(name))
            {
                return false;
            }

            isIdle = true;
        }

        return isIdle;
    }

    /// <summary>Classes that no clause is read by, and that are looked at beside what is read: they make no word idle that is not idle without
    /// them, and none telling.</summary>
    private static readonly ImmutableHashSet<string> Likely = ["likelyother", "likelygoing", "standsfor", "done", "ours", "past", "wasso", "howfar", "unchanged", "ofwhole", "keptout", "isitok", "donebyus", "stands", "besides", "inplace", "isasked", "vague", "everything", "allbut", "kin", "whichone"];

    private static readonly ImmutableHashSet<string> Idle = [Filler, NamedAfter, Stop, "soft", "ask", "please", "how", "wish", "title", "narrow", "article", "welcome", "asis", "what", "whatelse", "allof", "howmuch", "foretold", "foretelling", "cameout", "exempting", "likewise", "newthought", "perhaps"];
}

/// <summary>What words name.</summary>
/// <param name="Words">The words in their one form.</param>
/// <param name="Ingredient">The ingredient of which they are the name; null where there is none.</param>
/// <param name="Assumed">What was taken for granted; null where nothing was.</param>
/// <param name="Says">Why they name none of ours; null where that is not known.</param>
/// <param name="LeftOut">The allergen or group word that they are; null where they are none.</param>
internal sealed record Thing(ImmutableArray<string> Words, Ingredient? Ingredient, string? Assumed, string? Says, string? LeftOut)
{
    /// <summary>Whether it is made of the ingredient and is not the ingredient, so that its grams are not those of it.</summary>
    public bool IsMadeOf { get; init; }
}
