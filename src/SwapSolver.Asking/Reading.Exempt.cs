using SwapSolver.Asking.Text;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Asking;

/// <content>Where a word of leaving out leaves nothing out, or not all: no egg allergy here; no dairy but butter; lactose-free yogurt.</content>
internal sealed partial class Reading
{
    private void ReadExempt()
    {
        foreach (var name in lexemes.Where(lexeme => lexeme.Thing is not null))
        {
            if (Before(name).LastOrDefault(lexeme => lexeme.Is("out") || !lexeme.Is("article")) is not { } before)
            {
                continue;
            }

            if (IsDeniedAilment(before) && Behind(name).FirstOrDefault() is { } next && next.Is("ailment"))
            {
                Refused("asked-not-read", $"{before.Text} {name.Text} {next.Text}");
            }
            else if (IsExempted(name, before) || IsProduct(name, before))
            {
                Refused("asked-not-read", $"{before.Text} {name.Text}");
            }
        }
    }

    /// <summary>Whether something will do that goes by what is to be left out is answered with no: dairy free please, is ghee ok?</summary>
    private void ReadWelcome()
    {
        foreach (var name in unread.Where(lexeme => lexeme.Thing is not null && Behind(lexeme).FirstOrDefault()?.Is("welcome") is true && JustBefore(lexeme)?.Is("ask") is true))
        {
            if ((name.Thing!.Ingredient ?? meaning.LineOf(name)) is not { } food)
            {
                continue;
            }

            if (told.Without.FirstOrDefault(wish => LeavesOut(wish, food)) is { } wish)
            {
                assumed.Add(sentences.Say("asked-holds", ("to", food.Name), ("wish", wish.Word.Replace('-', ' '))));
            }
            else if (IsAgainstDiet(food))
            {
                assumed.Add(sentences.Say("asked-not-suits", ("to", food.Name), ("wish", told.Diet.ToLowerInvariant())));
            }
        }
    }

    /// <summary>Where nobody eats so, or is ill so, nothing is left out: neither vegan nor gluten free.</summary>
    private void ReadNobody()
    {
        foreach (var clause in All("DIET", "WITHOUT").Where(clause => clause.Means == "DIET" || clause.First("free") is not null || clause.First("allergy") is not null || clause.First("illness") is not null))
        {
            var begun = clause.Parts[0].Lexeme;
            if (Before(begun).Append(begun).Reverse().TakeWhile(lexeme => lexeme.Text != "," && !lexeme.Is(Lexeme.Stop)).FirstOrDefault(lexeme => lexeme.Is("nobody")) is { } nobody)
            {
                Refused("asked-not-read", nobody.Text);
            }
        }
    }

    /// <summary>Who is ill by everything but one thing, or may have nothing else, may eat that alone: it is no word of what goes.</summary>
    private void ReadAllBut()
    {
        foreach (var barred in lexemes.Where(lexeme => lexeme.Is("bodily") || lexeme.Is("cannothave")))
        {
            // Everything but, everything except and anything but are one word each.
            var (all, but) = (Behind(barred).FirstOrDefault(), Behind(barred).Skip(1).FirstOrDefault());
            if (all?.Is("hard") is true || all?.Is("lack") is true || (all?.Is("everything") is true && but?.Is("allbut") is true))
            {
                Refused("asked-not-read", $"{barred.Text} {all.Text}");
            }
        }
    }

    /// <summary>Whether a word before an allergy says that there is none.</summary>
    private static bool IsDeniedAilment(Lexeme before) => !before.Is("bodily") && (before.Is("out") || before.Is("lack") || before.Is("not"));

    /// <summary>Whether a line is named as eaten that would go with what is left out.</summary>
    private bool IsExempted(Lexeme name, Lexeme before)
    {
        var isAdded = before.Text == "and" && Before(before).LastOrDefault() is { } first && (first.Is("free") || first.Is("diet"));
        return (isAdded || before.Is("exempting"))
            && Behind(name).FirstOrDefault()?.Is("allergy") is not true
            && All("WITHOUT", "DIET").Any(clause => SentenceOf(clause.Parts[0].Lexeme) == SentenceOf(name))
            && !All("REPLACE", "TO").Any(clause => clause.Parts.Any(part => ReferenceEquals(part.Lexeme, name)))
            && meaning.LineOf(name) is { } line
            && told.Without.All(wish => wish.Id != line.Id)
            && GoesOut(line);
    }

    /// <summary>Whether a food is named that is sold without what it holds: it is another food, and the pantry has it not.</summary>
    private bool IsProduct(Lexeme name, Lexeme before)
    {
        var next = Behind(name).FirstOrDefault();
        if ((name.Thing!.Ingredient ?? meaning.LineOf(name)) is not { } food || (next is not null && (next.Is("free") || next.Is("standinafter") || next.Is("alone"))))
        {
            // Vegan, egg-free; a vegan butter substitute.
            return false;
        }

        return (before.Is("diet") && IsAgainstDiet(food))
            || (before.Is("free") && Before(before).LastOrDefault() is { Thing: { } without } said && without.LeftOut is not null
                && meaning.Anew().LeftOut(said, isAllergy: false).Any(wish => LeavesOut(wish, food)));
    }

    private bool IsAgainstDiet(Ingredient food) => (told.Diet == "VEGAN" && !food.Suits.Vegan) || (told.Diet == "VEGETARIAN" && !food.Suits.Vegetarian);
}
