using System.Collections.Immutable;
using SwapSolver.Asking.Text;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Asking.Things;

/// <content>In whose place something comes that the formula lacks.</content>
internal sealed partial class ThingMeaning
{
    /// <summary>A powder with so much of it is called a protein [g/100 g]; common practice, no source.</summary>
    private const double LeastProtein = 60;

    /// <summary>The one line that does in this formula what something does that is not in it; null where there is none, or several, or the
    /// name is not sure.</summary>
    public (Ingredient Own, Ingredient Newcomer)? OneThatDoesTheSame(Lexeme lexeme)
    {
        var thing = lexeme.Thing!;
        if (thing.IsMadeOf)
        {
            // A flax egg does what an egg does, and not what flax does.
            return OwnBearing(thing.Words[^1]) is { } likeIt ? Noted(lexeme, thing, likeIt, thing.Ingredient!) : null;
        }

        if (NamedNew(thing) is not { } newcomer)
        {
            return null;
        }

        // One flour, liquid or flavour does what another does only where it is another kind of the same, as one cocoa of another.
        var isAnyAsGood = newcomer.Role is not (Role.Flour or Role.Liquid or Role.Flavour);
        var telling = words.WordsOf(newcomer.Id).Where(words.Tells).ToList();
        var same = Ingredients.Where(one => one.Role == newcomer.Role).ToList();
        var kin = same.Where(one => words.WordsOf(one.Id).Intersect(telling).Any()).ToList();
        // The one flour of a loaf is what another flour comes in place of, and its one liquid what another liquid does.
        var isOnlyOne = newcomer.Role is Role.Flour or Role.Liquid && same.Count == 1;
        if ((kin.Count > 0 || !(isAnyAsGood || isOnlyOne) ? kin : same) is not [var own])
        {
            return null;
        }

        return Noted(lexeme, thing, own, newcomer);
    }

    /// <summary>Water from which something binds or loosens as an egg does [g/100 g]: apple sauce does, cinnamon does not; our estimate, no source.</summary>
    private const double LeastWater = 50;

    /// <summary>The one of the lines that go in whose place something comes; null where another line does what that does, several may be meant,
    /// or the name is not sure.</summary>
    /// <param name="lexeme">What is named.</param>
    /// <param name="isMeantToDo">Whether it is asked if it will do: then it need not be alike.</param>
    /// <param name="isReplacing">Whether it is asked if it will do in place of something.</param>
    /// <param name="going">The lines that go.</param>
    public (Ingredient Own, Ingredient Newcomer)? InPlaceOf(Lexeme lexeme, bool isMeantToDo, bool isReplacing, ImmutableArray<Ingredient> going)
    {
        if (lexeme.Thing!.IsMadeOf || NamedNew(lexeme.Thing) is not { } newcomer)
        {
            return null;
        }

        var ofRole = going.Where(one => IsAlike(newcomer, one)).ToImmutableArray();
        // Poppy seeds are seeds as sesame is.
        var alike = ofRole.IsEmpty && newcomer.Role == Role.Flavour ? [.. going.Where(one => one.Groups.Intersect(newcomer.Groups).Any())] : ofRole;
        var binds = newcomer.Role is Role.Flour or Role.Gel or Role.Liquid || (newcomer.Role == Role.Flavour && newcomer.RangeOf(Fact.Water)?.Typical >= LeastWater);
        // Flavours and flours are of many kinds: that another line is one says nothing.
        var isOfAnother = !isReplacing && newcomer.Role is not (Role.Flavour or Role.Flour) && Ingredients.Except(going).Any(one => IsAlike(newcomer, one));
        return (alike.IsEmpty && isMeantToDo && binds && !isOfAnother ? going : alike) is [var own] ? Noted(lexeme, lexeme.Thing, own, newcomer) : null;
    }

    /// <summary>What is named, where it is sure and the formula has nothing of that name.</summary>
    private Ingredient? NamedNew(Thing thing) =>
        thing.Says is null && Named(thing) is { } newcomer && !IsInFormula(newcomer.Id) && !Ingredients.Any(one => thing.Words.All(words.WordsOf(one.Id).Contains)) ? newcomer : null;

    /// <summary>The one other line that does what a line does, where all is to be of that: just whole eggs, no whites; null where there is none, or several.</summary>
    public (Ingredient Own, Ingredient Newcomer)? OtherLike(Lexeme lexeme) =>
        LineOf(lexeme) is { } all && Ingredients.Where(one => !one.Equals(all) && one.Role == all.Role).ToList() is [var other] ? Noted(lexeme, lexeme.Thing!, other, all) : null;

    /// <summary>Whether something that the formula lacks has the role of a line of it.</summary>
    /// <param name="newcomer">What is named.</param>
    /// <param name="line">The line.</param>
    /// <param name="isOwnToo">Whether it may be another line of the formula too.</param>
    public bool DoesTheSame(Lexeme newcomer, Lexeme line, bool isOwnToo = false)
    {
        var thing = newcomer.Thing!;
        var comes = isOwnToo && OwnLike(thing) is { } own ? own : Named(thing);
        return comes is not null && thing.Says is null && (isOwnToo || !IsInFormula(comes.Id))
            && (line.Thing!.Ingredient is { } exact && IsInFormula(exact.Id) ? IsAlike(comes, exact) : Own(line.Thing).Where(one => IsAlike(comes, one)).ToList() is [_]);
    }

    /// <summary>Whether something that the formula lacks has the role of another line than one: ghee does not what the salt does, but what the butter does.
    /// What gels may bind for an egg, whatever else gels.</summary>
    /// <param name="newcomer">What is named.</param>
    /// <param name="line">The one line.</param>
    public bool DoesAsAnother(Lexeme newcomer, Lexeme line)
    {
        var lines = Own(line.Thing!);
        return newcomer.Thing is { Says: null } thing && Named(thing) is { } comes && !IsInFormula(comes.Id)
            && !(comes.Role == Role.Gel && lines.Any(one => one.Role == Role.Egg))
            && !lines.Any(one => IsAlike(comes, one)) && Ingredients.Any(one => IsAlike(comes, one));
    }

    /// <summary>Whether one does what the other does, in whole or in part: soda is the base of baking powder.</summary>
    public static bool IsAlike(Ingredient one, Ingredient other) => one.Role == other.Role || (Frees(one) && Frees(other)) || (IsProtein(one) && IsProtein(other));

    private static bool IsProtein(Ingredient ingredient) => ingredient.RangeOf(Fact.Protein)?.Typical >= LeastProtein;

    private static bool Frees(Ingredient ingredient) => ingredient.Role is Role.Base or Role.LeaveningBlend;

    private (Ingredient Own, Ingredient Newcomer) Noted(Lexeme lexeme, Thing thing, Ingredient own, Ingredient newcomer)
    {
        Note(lexeme, thing, newcomer);
        return (own, newcomer);
    }
}
