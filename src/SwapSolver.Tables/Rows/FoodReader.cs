using System.Collections.Immutable;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Tables.Columns;

namespace SwapSolver.Tables.Rows;

/// <summary>Reads the food of a row.</summary>
/// <param name="foods">How far a table's figure may lie from what is in the bag.</param>
/// <param name="rules">What a row must satisfy.</param>
/// <param name="shipped">The ingredients that are there already, and the allergens.</param>
internal sealed class FoodReader(FoodRules foods, TableRules rules, Pantry shipped)
{
    /// <summary>The longest description of the Standard Reference has as many [letters].</summary>
    private const int MostLetters = 200;

    private readonly AllergenReader allergenReader = new(shipped.Allergens);

    private readonly WeightReader weightReader = new(foods);

    /// <summary>The food; null where the row has problems, which are then added, all at once.</summary>
    public StatedFood? Read(TableRow row)
    {
        var before = row.Problems.Count;
        var name = PlainText.Read(row, FoodColumns.Description, MostLetters);
        FoodIds.TryNumber(row, out var number);
        var id = name is null ? null : IdOf(row, number, name);
        var figures = name is null ? FiguresOf(row) : foods.Completed(name, FiguresOf(row));
        var like = LikeOf(row);
        var role = RoleOf(row);
        allergenReader.TryRead(row, out var allergens);
        SuitsReader.TryRead(row, allergens, like, out var suits);
        weightReader.TryRead(row, AbbreviatedColumns.FirstWeight, AbbreviatedColumns.FirstMeasure, out var first);
        weightReader.TryRead(row, AbbreviatedColumns.SecondWeight, AbbreviatedColumns.SecondMeasure, out var second);
        if (row.Problems.Count > before || !Add(row, figures))
        {
            return null;
        }

        return new StatedFood
        {
            Id = id!,
            Name = name!,
            Origin = FoodOrigin.Table,
            UsdaFoodNumber = number,
            Like = like?.Id,
            Role = role,
            Figures = figures,
            Allergens = allergens,
            Suits = suits,
            HouseholdMeasures = [.. new[] { first, second }.OfType<HouseholdMeasure>()],
        };
    }

    private string? IdOf(TableRow row, string? number, string name)
    {
        var isGiven = row[FoodColumns.Id].Length > 0;
        var id = isGiven ? FoodIds.Given(row) : number is not null ? FoodId.OfNumber(number) : FoodIds.OfDescription(row, name);
        if (id is not null && shipped.TryGet(id, out _))
        {
            row.Refuse(
                isGiven ? FoodColumns.Id : FoodColumns.Description,
                $"is the ingredient {id} that is there already",
                $"give the food an id of its own, as my-{id}; its own bag may say 'like' {id}");
            return null;
        }

        return id;
    }

    private ImmutableDictionary<Fact, Figure> FiguresOf(TableRow row)
    {
        var figures = ImmutableDictionary.CreateBuilder<Fact, Figure>();
        foreach (var column in FoodColumns.Figures)
        {
            var fact = column.Fact!;
            if (row[column.Name].Length == 0)
            {
                if (column.IsRequired)
                {
                    row.RefuseAll(column.Name, $"the {row.Header.Printed(column.Name)} is missing", "write the figure; an empty field is not known, and never nothing");
                }
            }
            else if (PrintedNumber.Read(row, column.Name, fact.Most, fact.Unit) is { } number)
            {
                figures[fact] = foods.Spreads[fact].Of(fact, number, foods.TableSource);
            }
        }

        return figures.ToImmutable();
    }

    private bool Add(TableRow row, ImmutableDictionary<Fact, Figure> figures)
    {
        var clashes = rules.Clashes(figures).ToList();
        foreach (var clash in clashes)
        {
            row.RefuseAll(FoodColumns.Of(clash.Fact), clash.Reason, WayOut(clash, row));
        }

        return clashes.Count == 0;
    }

    private static string WayOut(FactClash clash, TableRow row) => clash.Fact != Fact.Water
        ? "hold the row against its source"
        : ReferenceEquals(row.Header, Header.Abbreviated)
            ? "hold the row against its source; this file has no column for alcohol or acids, so put such a food in as CSV with alcohol_g or other_g"
            : "hold the row against its source; alcohol goes into alcohol_g, and what is none of these, as the acid of vinegar, into other_g";

    private Ingredient? LikeOf(TableRow row)
    {
        var id = row[FoodColumns.Like];
        if (id.Length == 0)
        {
            return null;
        }

        if (shipped.TryGet(id, out var like))
        {
            return like;
        }

        row.Refuse(FoodColumns.Like, "is no ingredient that is known", NearestNames.WayOut(id, shipped.Ids));
        return null;
    }

    private static Role? RoleOf(TableRow row)
    {
        var word = row[FoodColumns.Role];
        if (word.Length == 0 || RoleWords.Find(word.ToLowerInvariant()) is not null)
        {
            return RoleWords.Find(word.ToLowerInvariant());
        }

        row.Refuse(FoodColumns.Role, "is no role that is known", $"write one of {string.Join(", ", RoleWords.All)}");
        return null;
    }
}
