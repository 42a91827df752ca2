using System.Collections.Immutable;
using SwapSolver.Asking.Text;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Asking.Things;

/// <content>What is offered by its bare name behind what goes: no butter, coconut oil?</content>
internal sealed partial class ThingMeaning
{
    /// <summary>What is asked in two words, and left away by who writes shortly: would it do?</summary>
    public static readonly Lexeme Asked = new("would", ImmutableDictionary<string, string>.Empty.Add("ask", string.Empty).Add("stands", string.Empty).Add(Lexeme.Filler, string.Empty), null);

    /// <summary>Says before a bare name that it is asked about: it is the last before the question mark, the formula has it not, and it does what something
    /// does that goes before it. Nobody asks to leave out what is not there; but who may be ill by it is asked for no more than that: what carries an
    /// allergen may be one more that has to go, and so may anything behind an allergy.</summary>
    public ImmutableArray<Lexeme> WithOfferedAsked(ImmutableArray<Lexeme> lexemes)
    {
        var parting = lexemes.Length - 2;
        while (parting >= 0 && !(lexemes[parting].Text == "," || lexemes[parting].Is(Lexeme.Stop)))
        {
            parting--;
        }

        if (parting < 1 || lexemes[(parting + 1)..].Where(lexeme => !lexeme.Is("perhaps")).ToList() is not [{ Thing: { LeftOut: null } offered } name, { Text: "?" }] || NamedNew(offered) is not { } comes
            || comes.Allergens is not { AreKnown: true, OnEitherList.IsEmpty: true } || lexemes.Any(lexeme => lexeme.Is("ask") || lexeme.Is("what") || lexeme.Is("how")))
        {
            return lexemes;
        }

        var list = lexemes[..parting].Reverse().TakeWhile(lexeme => lexeme.Thing is not null || lexeme.Is("join") || (lexeme.Is("article") && !lexeme.Is("out"))).ToList();
        var isGoing = lexemes[..(parting - list.Count)].LastOrDefault() is { } word && (word.Is("out") || word.Is("lack")) && !word.Is("bodily");
        return isGoing && list.Any(goes => goes.Thing is { } gone && (DoesTheSame(name, goes) || (comes.Role is Role.Gel or Role.Egg && Own(gone).Any(one => one.Role == Role.Egg))))
            ? lexemes.Insert(parting + 1, Asked)
            : lexemes;
    }
}
