using System.Globalization;
using System.Text.RegularExpressions;

namespace SwapSolver.Service.Translation;

/// <summary>Resource names: a collection and an id.</summary>
internal static partial class ResourceName
{
    /// <summary>Most letters of an id.</summary>
    public const int MostLetters = 64;

    private const string Ingredients = "ingredients/";

    private const string Formulas = "formulas/";

    /// <summary>The id of an ingredient's name; a bare id is one too.</summary>
    public static string IngredientId(string name) =>
        name.StartsWith(Ingredients, StringComparison.Ordinal) ? name[Ingredients.Length..] : name;

    /// <summary>The name of an ingredient.</summary>
    public static string Of(Kitchen.Ingredients.Ingredient ingredient) => Ingredients + ingredient.Id;

    /// <summary>The id of a formula's name; a bare id is one too.</summary>
    public static string FormulaId(string name) =>
        name.StartsWith(Formulas, StringComparison.Ordinal) ? name[Formulas.Length..] : name;

    /// <summary>The id of the formula, and the number of the revision where the name is that of one.</summary>
    public static (string Id, int? Revision) FormulaParts(string name) =>
        RevisionName().Match(FormulaId(name)) is { Success: true } match && int.TryParse(match.Groups[2].Value, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? (match.Groups[1].Value, number)
            : (FormulaId(name), null);

    /// <summary>The name of a formula.</summary>
    public static string OfFormula(string id) => Formulas + id;

    /// <summary>The name of a revision.</summary>
    public static string OfRevision(string id, long number) => string.Create(CultureInfo.InvariantCulture, $"{Formulas}{id}/revisions/{number}");

    /// <summary>Whether something may be an id.</summary>
    public static bool IsId(string text) => text.Length <= MostLetters && Id().IsMatch(text);

    /// <summary>An id made of what something is called; empty where it has no letters for one.</summary>
    public static string IdOf(string displayName)
    {
        var id = NoLetters().Replace(displayName.ToLowerInvariant(), "-").Trim('-');
        return id.Length <= MostLetters ? id : id[..MostLetters].TrimEnd('-');
    }

    [GeneratedRegex("^[a-z0-9]+(-[a-z0-9]+)*$")]
    private static partial Regex Id();

    [GeneratedRegex("[^a-z0-9]+")]
    private static partial Regex NoLetters();

    [GeneratedRegex("^([^/]+)/revisions/([0-9]{1,9})$")]
    private static partial Regex RevisionName();
}
