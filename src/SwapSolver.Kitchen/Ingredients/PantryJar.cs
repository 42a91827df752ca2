namespace SwapSolver.Kitchen.Ingredients;

/// <summary>An ingredient of the pantry that is made when it is first asked for: of a table's thousands of foods a question
/// needs a handful.</summary>
/// <param name="id">Its id.</param>
/// <param name="onlyWhenNamed">Whether a formula is given it only where the caller names it, which must be known before it
/// is made.</param>
/// <param name="make">Makes it; called once, however many ask at the same time.</param>
public sealed class PantryJar(string id, bool onlyWhenNamed, Func<Ingredient> make)
{
    private readonly Lazy<Ingredient> made = new(make);

    /// <summary>Its id.</summary>
    public string Id => id;

    /// <summary>Whether a formula is given it only where the caller names it.</summary>
    public bool OnlyWhenNamed => onlyWhenNamed;

    /// <summary>The ingredient.</summary>
    public Ingredient Ingredient => made.Value;

    /// <summary>An ingredient that is made already.</summary>
    public static PantryJar Of(Ingredient ingredient) => new(ingredient.Id, ingredient.Usage.OnlyWhenNamed, () => ingredient);
}
