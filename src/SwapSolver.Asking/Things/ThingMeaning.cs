using System.Collections.Immutable;
using SwapSolver.Asking.Text;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Asking.Things;

/// <summary>Tells what a name means in a formula. What is not sure is a problem, and never guessed.</summary>
/// <param name="words">The names.</param>
/// <param name="formula">The formula asked about.</param>
/// <param name="sentences">The sentences.</param>
internal sealed partial class ThingMeaning(ThingWords words, Formula formula, Phrases sentences)
{
    private const int MostListed = 5;

    /// <summary>What people mean by it differs: peanuts are on lists of their own.</summary>
    private const string Nuts = "nuts";

    /// <summary>Classes of words behind which stands what the formula has.</summary>
    private static readonly ImmutableArray<string> BeforeOwn = ["instead", "replaces", "not", "andno", "for", "lack", "mustbe"];

    private readonly List<string> assumed = [];

    private readonly List<string> problems = [];

    /// <summary>What was taken for granted.</summary>
    public IEnumerable<string> Assumed => assumed.Distinct();

    /// <summary>What is not sure.</summary>
    public IEnumerable<string> Problems => problems.Distinct();

    /// <summary>The same names in the same formula, with nothing taken for granted yet.</summary>
    public ThingMeaning Anew() => new(words, formula, sentences);

    /// <summary>Whether an ingredient is in the formula.</summary>
    public bool IsInFormula(string id) => formula.Lines.Any(line => line.Ingredient.Id == id);

    /// <summary>Whether something is one line of the formula.</summary>
    public bool IsOwn(Thing thing) => (thing.Ingredient is { } exact && IsInFormula(exact.Id)) || OwnLike(thing) is not null;

    /// <summary>A question in which a word that by itself names nothing, as natural behind an 'instead of', names the one line of the
    /// formula that bears it.</summary>
    public ImmutableArray<Lexeme> WithOwnNamed(ImmutableArray<Lexeme> lexemes)
    {
        var named = lexemes.ToBuilder();
        for (var place = 1; place < named.Count; place++)
        {
            if (!words.IsPlain(named[place].Text))
            {
                continue;
            }

            var before = named.Take(place).LastOrDefault(lexeme => !lexeme.MayBeSkipped || lexeme.Is(Lexeme.Stop));
            // White is that of an egg, but where vinegar was named before it.
            var ofKind = before is null || !BeforeOwn.Any(before.Is) ? null : OwnOfKind(named[place].Text, named.Take(place));
            var isOneWord = (named[place].Thing is null || ofKind is not null)
                && (ofKind is not null || place + 1 == named.Count || (named[place + 1].Thing is null && !words.IsPlain(named[place + 1].Text)));
            if (isOneWord && before is not null && named.Any(lexeme => lexeme.Thing is not null) && BeforeOwn.Any(before.Is) && (ofKind ?? OwnBearing(named[place].Text)) is { } own)
            {
                named[place] = named[place] with { Thing = new Thing([.. words.WordsOf(named[place].Text)], own, own.Name, null, null), Classes = ImmutableDictionary<string, string>.Empty };
            }
        }

        return named.ToImmutable();
    }

    /// <summary>Whether a line of the formula bears one of some words.</summary>
    public bool IsBorne(string names) => names.Split(' ').Any(name => Ingredients.Any(one => words.WordsOf(one.Id).Contains(name)));

    /// <summary>Whether a name means a line that is weighed and not counted.</summary>
    public bool IsWeighed(Lexeme lexeme) => formula.Lines.Any(line => line.Count is null && IsLine(lexeme, line.Ingredient.Id));

    /// <summary>Whether a name means one line of the formula.</summary>
    /// <param name="lexeme">What is named.</param>
    /// <param name="line">Id of the line; of none, an empty one.</param>
    public bool IsLine(Lexeme lexeme, string line) => LineOf(lexeme)?.Id == line;

    /// <summary>The line of the formula that a name means; null where there is none, or several.</summary>
    public Ingredient? LineOf(Lexeme lexeme) => lexeme.Thing!.Ingredient is { } exact && IsInFormula(exact.Id) ? exact : OwnLike(lexeme.Thing);

    /// <summary>Whether a word says what one line of the formula does, as the sweetener.</summary>
    public bool IsOfRole(Thing thing) => OwnOfRole(thing) is not null;

    /// <summary>What goes out; null where that is not sure.</summary>
    /// <param name="lexeme">What is named.</param>
    /// <param name="othersStay">Whether other lines that the name may mean stay, and are told of.</param>
    /// <param name="newcomer">What comes in its place: of several lines that the name may mean, it is the one that does the same.</param>
    public Ingredient? Out(Lexeme lexeme, bool othersStay = true, Lexeme? newcomer = null)
    {
        var thing = lexeme.Thing!;
        if (thing.Ingredient is { } exact && IsInFormula(exact.Id))
        {
            Note(lexeme, thing, exact);
            if (othersStay && thing.LeftOut is { } all && Ingredients.Where(one => !one.Equals(exact) && one.Role == exact.Role && one.Allergens.Carries(IdOf(all))).ToList() is { Count: > 0 } others)
            {
                assumed.Add(sentences.Say("asked-others-stay", ("thing", lexeme.Text), ("ingredient", exact.Name), ("names", Phrases.List(others.Select(one => one.Name)))));
            }

            return exact;
        }

        var own = Own(thing).ToList();
        if (own.Count == 0 && thing.Ingredient is null && thing.LeftOut is { } word)
        {
            own = [.. Ingredients.Where(one => one.Groups.Contains(word) || one.Allergens.Carries(IdOf(word)))];
        }

        // Ground almonds are called so where they are blanched too.
        if (own.Count == 0 && thing.Ingredient is { } named && Ingredients.Where(one => words.IsGroundAlike(one.Id, named.Id)).ToList() is [var like] && newcomer?.Thing?.Ingredient?.Id != like.Id)
        {
            own = [like];
        }

        if (own.Count == 0 && OwnOfRole(thing) is { } doesIt)
        {
            own = [doesIt];
        }

        if (own.Count > 1 && newcomer?.Thing is { } come && Named(come) is { } comes && own.Where(one => one.Role == comes.Role).ToList() is [var alike])
        {
            own = [alike];
        }

        if (own is [var only])
        {
            Note(lexeme, thing, only);
            return only;
        }

        if (own.Count > 1)
        {
            problems.Add(sentences.Say("asked-several", ("thing", lexeme.Text), ("names", Phrases.List(own.Select(one => one.Name).Take(MostListed)))));
            return null;
        }

        problems.Add(thing.Says is { } says
            ? sentences.Say("asked-other-thing", ("thing", lexeme.Text), ("reason", says))
            : sentences.Say("asked-not-in-formula", ("thing", lexeme.Text)));
        return null;
    }

    /// <summary>What comes in; null where that is not sure. Of several that a word may mean, only those of the role of what goes
    /// out are thought of.</summary>
    public Ingredient? In(Lexeme lexeme, Ingredient? outgoing)
    {
        var thing = lexeme.Thing!;
        if (thing.Ingredient is { } exact)
        {
            // Who has Dutch cocoa in the cake and uses just the cocoa uses that.
            var comes = thing.Assumed is not null && !IsInFormula(exact.Id) && outgoing is not null && OwnLike(thing) is { } own && !own.Equals(outgoing) && thing.Words.All(words.WordsOf(own.Id).Contains) ? own : exact;
            Note(lexeme, thing, comes);
            return comes;
        }

        if (thing.Says is { } says)
        {
            problems.Add(sentences.Say("asked-other-thing", ("thing", lexeme.Text), ("reason", says)));
            return null;
        }

        var all = words.Pantry.Ids.Where(id => thing.Words.All(words.WordsOf(id).Contains)).Select(Found).ToList();
        var likely = all.Where(one => outgoing is not null && one.Role == outgoing.Role).ToList();
        if (words.ShortFor(thing) is { } usual && likely.FirstOrDefault(one => one.Id == usual) is { } meant)
        {
            likely = [meant];
        }

        // Where rapeseed oil goes out, sunflower is its oil.
        if (outgoing is not null && likely.Count > 1 && likely.Where(one => words.WordsOf(one.Id).Contains(words.WordsOf(outgoing.Id).Last())).ToList() is [var ofKind])
        {
            likely = [ofKind];
        }

        if (likely.Count == 0)
        {
            likely = words.ShortFor(thing) is { } known && all.FirstOrDefault(one => one.Id == known) is { } named ? [named] : all;
        }

        if (likely is [var only])
        {
            Note(lexeme, thing, only);
            return only;
        }

        if (likely.Count == 0)
        {
            problems.Add(sentences.Say("asked-group", ("thing", lexeme.Text)));
            return null;
        }

        problems.Add(sentences.Say("asked-several", ("thing", lexeme.Text), ("names", Phrases.List(likely.Select(one => one.Name).Take(MostListed)))));
        return null;
    }

    private IEnumerable<Ingredient> Ingredients => formula.Lines.Select(line => line.Ingredient).Distinct();

    /// <summary>The one line of the formula that a name is likely to mean which nothing there bears; null where there is none, or several.</summary>
    private Ingredient? OwnLike(Thing thing) => Own(thing).ToList() is [var only] ? only : null;

    /// <summary>The line that a word names of the kind that was named before it: cider vinegar rather than white means white vinegar, and not the white of
    /// an egg; null where there is none, or where it would be what was named before: who swaps ghee for butter means no butter ghee.</summary>
    private Ingredient? OwnOfKind(string word, IEnumerable<Lexeme> before) =>
        before.LastOrDefault(lexeme => lexeme.Thing is not null)?.Thing is { Words: [.., var kind] } first && words.Of([word, kind])?.Ingredient is { } one && IsInFormula(one.Id) && first.Ingredient?.Id != one.Id ? one : null;

    private Ingredient? OwnBearing(string word) =>
        Ingredients.Where(one => words.WordsOf(one.Id).Contains(words.WordsOf(word).First())).ToList() is [var only] ? only : null;

    /// <summary>The one line that is what a word says that things do, as the sweetener; null where there is none, or several.</summary>
    private Ingredient? OwnOfRole(Thing thing) =>
        thing.Words is [var word] && Enum.TryParse<Role>(word, ignoreCase: true, out var role) && Ingredients.Where(one => one.Role == role).ToList() is [var only] ? only : null;

    /// <summary>Lines with all words of the name; else those of which the first word of the name is the first.</summary>
    private List<Ingredient> Own(Thing thing)
    {
        // Chocolate is cocoa where there is no chocolate.
        if (words.OwnWordOf(thing) is { } bears && !Ingredients.Any(one => thing.Words.All(words.WordsOf(one.Id).Contains)))
        {
            return [.. Ingredients.Where(one => words.WordsOf(one.Id).Contains(bears))];
        }

        var whole = Ingredients.Where(one => thing.Words.All(words.WordsOf(one.Id).Contains)).ToList();
        return whole.Count > 0 || thing.Words.Length < 2 ? whole
            : [.. Ingredients.Where(one => thing.Ingredient is null || one.Role == thing.Ingredient.Role).Where(one => words.WordsOf(one.Id).First() == thing.Words[0])];
    }

    private void Note(Lexeme lexeme, Thing thing, Ingredient meant)
    {
        if (thing.IsMadeOf)
        {
            assumed.Add(sentences.Say("asked-made-of", ("thing", lexeme.Text), ("ingredient", meant.Name)));
        }
        else if (thing.Ingredient?.Id != meant.Id)
        {
            assumed.Add(sentences.Say(IsInFormula(meant.Id) ? "asked-own-line" : "asked-taken-for", ("thing", lexeme.Text), ("ingredient", meant.Name)));
        }
        else if (thing.Assumed is { } taken)
        {
            assumed.Add(sentences.Say("asked-taken-for", ("thing", lexeme.Text), ("ingredient", taken == meant.Name ? taken : $"{meant.Name} ({taken})")));
        }
    }

    /// <summary>What is named, or what a short name usually stands for; null where that is not one thing.</summary>
    private Ingredient? Named(Thing thing) => thing.Ingredient ?? (words.ShortFor(thing) is { } usual ? Found(usual) : null);

    /// <summary>The ingredient of an id.</summary>
    /// <exception cref="ArgumentException">There is none.</exception>
    public Ingredient Found(string id) => words.Pantry.TryGet(id, out var found) ? found : throw new ArgumentException($"no ingredient '{id}'", nameof(id));

    private string IdOf(string word) =>
        words.Pantry.Allergens.FirstOrDefault(one => one.Id == word || one.Also.Contains(word))?.Id
        ?? words.Pantry.Groups.FirstOrDefault(one => one.Id == word || one.Also.Contains(word))?.Id
        ?? word;
}
