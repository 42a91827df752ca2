using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Foods;

/// <summary>Makes an ingredient of a food that states its composition.</summary>
/// <param name="Rules">What is taken of such a food.</param>
/// <param name="Lists">The allergen lists.</param>
/// <param name="Words">Says what the ingredient is, in the words of <c>data/wording/</c>: about, not for, made.</param>
public sealed record FoodIngredient(FoodRules Rules, ImmutableArray<AllergenName> Lists, FoodWords Words)
{
    /// <summary>The ingredient.</summary>
    /// <param name="food">What is stated.</param>
    /// <param name="named">The ingredient that it is said to behave like; null where none was named, or it is gone.</param>
    /// <param name="kind">The ingredient that its own name says it is; null where it says none. What it does is taken after
    /// that one, but not who may eat it: nobody stated that.</param>
    public Ingredient Of(StatedFood food, Ingredient? named, Ingredient? kind = null)
    {
        var like = named ?? kind;
        var family = Rules.FamilyOf(food.UsdaFoodNumber);
        var behaviour = new FoodBehaviour(Rules);
        var guessed = like is null ? behaviour.Guessed(food.Figures) : behaviour.After(like, food.Figures);
        var allergens = AllergensOf(food, like, isNamed: named is not null);
        return new Ingredient
        {
            Id = food.Id,
            Name = food.Name,
            Role = food.Role ?? like?.Role ?? family.Role,
            About = Words.About(food, like),
            NotFor = Words.NotFor(food, like),
            Made = Words.Made(food, like),
            UsdaFoodNumber = food.UsdaFoodNumber,
            Groups = like?.Groups ?? family.Groups,
            Allergens = allergens,
            Suits = SuitsOf(food, named, allergens),
            Figures = food.Figures.AddRange(guessed),
            NoneByNature = like is null ? [] : [.. like.NoneByNature.Intersect(FoodBehaviour.Behaviours).Except(food.Figures.Keys)],
            Usage = named?.Usage ?? (kind is null ? UsageOf(food) : kind.Usage with { OnlyWhenNamed = true }),
            CountedUnits = [],
            HouseholdMeasures = !food.HouseholdMeasures.IsEmpty ? food.HouseholdMeasures : like?.HouseholdMeasures ?? [],
            Behaviours = like?.Behaviours ?? [],
            Cautions = like?.Cautions ?? [],
            Origin = food.Origin,
        };
    }

    /// <summary>Who says what a food does has it offered; a table's onion soup is used where it is named, and is nobody's
    /// suggestion for almonds.</summary>
    private Usage UsageOf(StatedFood food) => food.Role is null
        ? Rules.Usage with { OnlyWhenNamed = true }
        : Rules.Usage with { Offered = true };

    /// <summary>What is stated, and what its like carries: a packet of almond flour does not stop being almonds because
    /// nobody typed it in. Where neither says anything, the allergens are not known.</summary>
    private Allergens AllergensOf(StatedFood food, Ingredient? like, bool isNamed)
    {
        var contains = WithItsKind(food.Allergens?.Contains ?? [], like);
        ImmutableArray<string> On(string list, ImmutableArray<string>? ofLike) =>
        [
            .. contains.Where(id => Lists.Any(known => known.Id == id && known.Lists.Contains(list))).Union(ofLike ?? []),
        ];
        var us = On("us", like?.Allergens.Us);
        var eu = On("eu", like?.Allergens.Eu);
        var mayContain = WithItsKind(food.Allergens?.MayContain ?? [], like);
        var isTaken = food.Allergens is null && like is not null;
        return new Allergens(
            us,
            eu,
            [.. mayContain.Union(like?.Allergens.MayContain ?? []).Except(us.Union(eu))],
            isTaken ? Rules.LikeSource : Rules.SourceOf(food.Origin),
            isTaken ? Mark.Memory : Mark.Published)
        {
            AreKnown = food.Allergens is not null || (isNamed && like is { Allergens.AreKnown: true }),
        };
    }

    /// <summary>The two lists name cereals differently, and a food that states one of the names is not free of the other:
    /// wheat is a cereal with gluten; and a cereal with gluten may be wheat, unless its like is one that is not.</summary>
    private static IEnumerable<string> WithItsKind(ImmutableArray<string> stated, Ingredient? like)
    {
        var isOther = like is not null && like.Allergens.Carries(SuitsAndAllergens.GlutenCereals) && !like.Allergens.Carries(SuitsAndAllergens.Wheat);
        return (stated.Contains(SuitsAndAllergens.Wheat), stated.Contains(SuitsAndAllergens.GlutenCereals)) switch
        {
            (true, false) => stated.Append(SuitsAndAllergens.GlutenCereals),
            (false, true) when !isOther => stated.Append(SuitsAndAllergens.Wheat),
            _ => stated,
        };
    }

    private static Suits SuitsOf(StatedFood food, Ingredient? like, Allergens allergens)
    {
        var said = food.Suits ?? like?.Suits ?? new Suits(false, false, false);
        return new Suits(
            said.Vegan && !SuitsAndAllergens.AgainstVegan.Any(allergens.Carries),
            said.Vegetarian && !SuitsAndAllergens.AgainstVegetarian.Any(allergens.Carries),
            said.GlutenFree && !SuitsAndAllergens.AgainstGlutenFree.Any(allergens.Carries));
    }
}
