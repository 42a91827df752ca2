using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Foods;

/// <summary>Makes an ingredient of a food that states its composition.</summary>
/// <param name="Rules">What is taken of such a food.</param>
/// <param name="Lists">The allergen lists.</param>
/// <param name="Words">Says what the ingredient is, in the words of <c>data/wording/</c>: about, not for, made.</param>
public sealed record FoodIngredient(FoodRules Rules, ImmutableArray<AllergenName> Lists, FoodWords Words)
{
    private static readonly ImmutableArray<string> Animal = ["milk", "egg", "fish", "crustaceans", "molluscs"];

    private static readonly ImmutableArray<string> Flesh = ["fish", "crustaceans", "molluscs"];

    private static readonly ImmutableArray<string> Gluten = ["wheat", "gluten-cereals"];

    /// <summary>The ingredient.</summary>
    /// <param name="food">What is stated.</param>
    /// <param name="like">The ingredient that it behaves like; null where none was named, or it is gone.</param>
    public Ingredient Of(StatedFood food, Ingredient? like)
    {
        var family = Rules.FamilyOf(food.UsdaFoodNumber);
        var behaviour = new FoodBehaviour(Rules);
        var guessed = like is null ? behaviour.Guessed(food.Figures) : behaviour.After(like, food.Figures);
        var allergens = AllergensOf(food, like);
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
            Suits = SuitsOf(food, like, allergens),
            Figures = food.Figures.AddRange(guessed),
            NoneByNature = like is null ? [] : [.. like.NoneByNature.Where(fact => !food.Figures.ContainsKey(fact))],
            Usage = like?.Usage ?? Rules.Usage,
            CountedUnits = [],
            HouseholdMeasures = !food.HouseholdMeasures.IsEmpty ? food.HouseholdMeasures : like?.HouseholdMeasures ?? [],
            Behaviours = like?.Behaviours ?? [],
            Cautions = like?.Cautions ?? [],
        };
    }

    /// <summary>What is stated, and what its like carries: a packet of almond flour does not stop being almonds because
    /// nobody typed it in. Where neither says anything, the allergens are not known.</summary>
    private Allergens AllergensOf(StatedFood food, Ingredient? like)
    {
        var contains = food.Allergens?.Contains ?? [];
        var mayContain = food.Allergens?.MayContain ?? [];
        ImmutableArray<string> On(string list, ImmutableArray<string>? ofLike) =>
        [
            .. contains.Where(id => Lists.Any(known => known.Id == id && known.Lists.Contains(list))).Union(ofLike ?? []),
        ];
        var us = On("us", like?.Allergens.Us);
        var eu = On("eu", like?.Allergens.Eu);
        return new Allergens(
            us,
            eu,
            [.. mayContain.Union(like?.Allergens.MayContain ?? []).Except(us.Union(eu))],
            Rules.SourceOf(food.Origin),
            Mark.Published)
        {
            AreKnown = food.Allergens is not null || like is { Allergens.AreKnown: true },
        };
    }

    private static Suits SuitsOf(StatedFood food, Ingredient? like, Allergens allergens)
    {
        var said = food.Suits ?? like?.Suits ?? new Suits(false, false, false);
        return new Suits(
            said.Vegan && !Animal.Any(allergens.Carries),
            said.Vegetarian && !Flesh.Any(allergens.Carries),
            said.GlutenFree && !Gluten.Any(allergens.Carries));
    }
}
