using System.Collections.Immutable;
using SwapSolver.Forecasts;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Kitchen.Wording;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Answers;

/// <summary>Cautions, shown where the danger is.</summary>
/// <param name="Bakehouse">Facts, rules and words.</param>
public sealed record CautionList(Bakehouse Bakehouse)
{
    private Phrases Phrases => Bakehouse.Phrases;

    /// <summary>The cautions of a formula by itself.</summary>
    public ImmutableArray<string> Of(Formula formula) =>
    [
        .. OfIngredients(formula),
        .. Colours(formula),
        .. If(IsHungry(formula), () => Phrases.Say("caution-yeast-hungry")),
        .. formula.Merged().Lines.Select(line => AboveUsage(formula, line)).OfType<string>(),
        Phrases.Say("caution-net-carbs"),
        Phrases.Say("caution-estimates"),
    ];

    /// <summary>The cautions of a few doses that are no formula: what is in them, whatever they go into.</summary>
    /// <param name="before">What they stand in for.</param>
    /// <param name="doses">The doses.</param>
    public ImmutableArray<string> OfDoses(Formula before, Formula doses) =>
        [.. BroughtIn(before, doses), .. OfIngredients(doses), Phrases.Say("caution-estimates")];

    /// <summary>The cautions of a formula that was solved for wishes: what came in, and what may be said of what went out.</summary>
    public ImmutableArray<string> Of(Formula reference, Formula formula, ImmutableArray<Hold> wishes)
    {
        var leftOut = wishes
            .Where(wish => wish.LeftOut?.MayBeReadAsClaim == true)
            .Select(wish => wish.Balance.Settings.Title)
            .ToList();
        return
        [
            .. OfTheChange(reference, formula),
            .. If(leftOut.Count > 0, () => Phrases.Say("caution-made-without", ("wishes", Kitchen.Wording.Phrases.List(leftOut)))),
            .. Of(formula),
        ];
    }

    /// <summary>The cautions that go with an ingredient wherever it is.</summary>
    public ImmutableArray<string> Of(Ingredient ingredient) =>
        [.. ingredient.Cautions.Select(caution => Phrases.Say("caution-of-ingredient", ("ingredient", ingredient.Name), ("caution", caution)))];

    /// <summary>What a change brings that an eater must know: allergens that come in, net carbs that rise.</summary>
    public ImmutableArray<string> OfTheChange(Formula reference, Formula formula) =>
    [
        .. BroughtIn(reference, formula),
        .. NetCarbohydrateRise(reference, formula) is { } rise ? [rise] : Array.Empty<string>(),
    ];

    /// <summary>That a slice costs clearly more net carbohydrate than the reference's; null where it does not.</summary>
    public string? NetCarbohydrateRise(Formula reference, Formula formula)
    {
        var balance = Bakehouse.Balances.NetCarbohydrate;
        var before = balance.Read(reference, reference, Draws.Typical);
        var after = balance.Read(formula, formula, Draws.Typical);
        return before is { } was && after is { } now
            && now.Value - was.Value > Math.Max(was.Value * Models.Weights.NetCarbohydrateStep, Models.Weights.NetCarbohydrateLeastStep)
            ? Phrases.Say("caution-net-carbs-rise", ("before", NumberWords.Level(was)), ("after", NumberWords.Level(now)))
            : null;
    }

    /// <summary>That a balance cannot be read, and which ingredient does not state what it reads.</summary>
    public string Unread(Balance balance, Formula formula)
    {
        var reasons = from ingredient in formula.Lines.Select(line => line.Ingredient).Distinct()
                      let unknown = balance.Reads.Where(fact => ingredient.RangeOf(fact) is null).ToList()
                      where unknown.Count > 0
                      select Phrases.Say("fact-unknown", ("ingredient", ingredient.Name), ("missed", Kitchen.Wording.Phrases.List(unknown.Select(fact => fact.Id))));
        return Phrases.Say("caution-reading-unknown", ("title", balance.Settings.Title), ("reasons", Kitchen.Wording.Phrases.List(reasons)));
    }

    /// <summary>Colours that need alkali to show: by the pH of the crumb where it can be told, else wherever there is a base.</summary>
    private IEnumerable<string> Colours(Formula formula)
    {
        var colours = new AlkaliColours(Bakehouse.Rise.Acidity.Practice, Phrases);
        if (colours.NoneBelow(formula) is not { } least
            || !formula.Lines.Any(line => line.Ingredient.Typical[Fact.Base] * line.Grams.Value > 0)
            || Bakehouse.Rise.Acidity.CrumbMayReach(formula, Draws.Typical, least) == false)
        {
            return [];
        }

        return Bakehouse.Rise.Acidity.ForetellCrumb(formula, Draws.Typical) is { } crumb
            ? colours.Of(formula, crumb).Select(caution => caution.Text)
            : formula.Lines.Select(line => line.Ingredient).Distinct().SelectMany(ingredient => ingredient.Behaviours
                .Where(behaviour => Bakehouse.Rise.Acidity.Practice.ColoursFromPh.ContainsKey(behaviour.Kind))
                .Select(behaviour => Phrases.Say("caution-of-ingredient", ("ingredient", ingredient.Name), ("caution", behaviour.Note))));
    }

    private IEnumerable<string> OfIngredients(Formula formula)
    {
        var ingredients = formula.Lines.Select(line => line.Ingredient).Distinct().ToList();
        var allergens = Names(ingredients.SelectMany(ingredient => ingredient.Allergens.OnEitherList));
        var mayContain = Names(ingredients.SelectMany(ingredient => ingredient.Allergens.MayContain));
        return
        [
            .. If(allergens.Count > 0, () => Phrases.Say("caution-allergens", ("allergens", Kitchen.Wording.Phrases.List(allergens)))),
            .. If(mayContain.Count > 0, () => Phrases.Say("caution-may-contain", ("allergens", Kitchen.Wording.Phrases.List(mayContain)))),
            .. ingredients.Where(ingredient => !ingredient.Allergens.AreKnown)
                .Select(ingredient => Phrases.Say("caution-allergens-unknown", ("ingredient", ingredient.Name))),
            .. If(ingredients.Any(ingredient => ingredient.Allergens.Carries("egg")), () => Phrases.Say("caution-egg")),
            .. ingredients.SelectMany(ingredient => Of(ingredient)),
        ];
    }

    private IEnumerable<string> BroughtIn(Formula reference, Formula formula)
    {
        // What is in both brings nothing, and that is most of it.
        var incoming = formula.Lines.Select(line => line.Ingredient)
            .Where(ingredient => reference.Lines.All(line => !line.Ingredient.Equals(ingredient)))
            .Distinct()
            .ToList();
        if (incoming.Count == 0)
        {
            return [];
        }

        var brought = Names(incoming.SelectMany(ingredient => ingredient.Allergens.OnEitherList)
            .Where(allergen => reference.Lines.All(line => !line.Ingredient.Allergens.OnEitherList.Contains(allergen))));
        var notStated = incoming.Where(ingredient => !ingredient.Allergens.AreKnown).Select(ingredient => ingredient.Name).ToList();
        return
        [
            .. If(brought.Count > 0, () => Phrases.Say("caution-brought-in", ("allergens", Kitchen.Wording.Phrases.List(brought)))),
            .. If(notStated.Count > 0, () => Phrases.Say("caution-brought-in-not-stated", ("ingredients", Kitchen.Wording.Phrases.List(notStated)))),
        ];
    }

    /// <summary>Whether there is yeast and nothing for it to eat.</summary>
    private static bool IsHungry(Formula formula) =>
        formula.Lines.Any(line => line.Ingredient.Typical[Fact.YeastGas] > 0)
        && formula.Lines.All(line => line.Ingredient.Typical[Fact.Fermentable] * line.Grams.Value == 0);

    private string? AboveUsage(Formula formula, Line line)
    {
        var usage = line.Ingredient.Usage;
        if (usage is { MaximumOfBatter: null, MaximumOfFlour: null })
        {
            return null;
        }

        var flours = formula.MassOf(Role.Flour);
        var ofBatter = line.Grams / formula.BatterMass * 100;
        if (usage.MaximumOfBatter is { } batter && ofBatter > batter.Value)
        {
            return Phrases.Say(
                "caution-above-batter", ("ingredient", line.Ingredient.Name), ("value", NumberWords.Level(new Level(ofBatter))), ("limit", NumberWords.Level(new Level(batter.Value))));
        }

        var ofFlour = flours > Grams.None ? line.Grams / flours * 100 : 0;
        return usage.MaximumOfFlour is { } flour && ofFlour > flour.Value
            ? Phrases.Say(
                "caution-above-flour", ("ingredient", line.Ingredient.Name), ("value", NumberWords.Level(new Level(ofFlour))), ("limit", NumberWords.Level(new Level(flour.Value))))
            : null;
    }

    private static IEnumerable<string> If(bool holds, Func<string> caution) => holds ? [caution()] : [];

    private List<string> Names(IEnumerable<string> allergens) =>
    [
        .. allergens.Distinct().Order(StringComparer.Ordinal)
            .Select(id => Bakehouse.Pantry.Allergens.First(allergen => allergen.Id == id).Name),
    ];
}
