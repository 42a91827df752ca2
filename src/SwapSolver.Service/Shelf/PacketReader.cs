using System.Collections.Immutable;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Panels;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Records;
using SwapSolver.Service.Translation;
using SwapSolver.V1;
using Ingredient = SwapSolver.Kitchen.Ingredients.Ingredient;
using StatedAllergens = SwapSolver.Kitchen.Foods.StatedAllergens;

namespace SwapSolver.Service.Shelf;

/// <summary>Reads a packet: who it is, what it is like, its allergens and its panel.</summary>
/// <param name="shelf">What this kitchen knows.</param>
/// <param name="panels">Reads the figures.</param>
/// <param name="problems">What is wrong with it.</param>
internal sealed class PacketReader(KitchenShelf shelf, PanelReader panels, ProblemList problems)
{
    private const int MostNameLetters = 200;

    /// <summary>The packet; null where problems were added.</summary>
    public Packet? Read(AddIngredientRequest request)
    {
        var before = problems.Count;
        ReadId(request.IngredientId);
        var name = request.DisplayName.Trim();
        if (name.Length is 0 or > MostNameLetters)
        {
            problems.Add("displayName", request.DisplayName, "is no name", $"write what the packet is called in a sentence, at most {MostNameLetters} letters");
        }

        var like = string.IsNullOrEmpty(request.Like) ? null : LikeOf(request.Like);
        var allergens = AllergensOf(request.Allergens);
        var suits = SuitsOf(request, allergens, like);
        var role = RoleWords.Find(request.Role);
        if (request.Role.Length > 0 && role is null)
        {
            problems.Add("role", request.Role, "is no role", $"give one of {string.Join(", ", RoleWords.All)}");
        }

        var panel = PanelOf(request.Panel);
        return problems.Count > before
            ? null
            : new Packet(
                new StatedFood
                {
                    Id = request.IngredientId,
                    Name = name,
                    Origin = FoodOrigin.Packet,
                    Like = like?.Id,
                    Role = role,
                    Figures = ImmutableDictionary<Kitchen.Ingredients.Fact, Figure>.Empty,
                    Allergens = allergens,
                    Suits = suits,
                },
                like,
                panel!);
    }

    private void ReadId(string id)
    {
        if (!FoodId.CanBe(id))
        {
            problems.Add("ingredientId", id, "is no id", FoodId.WayOut);
        }
        else if (shelf.Shipped.TryGet(id, out _))
        {
            problems.Add("ingredientId", id, "is the shipped ingredient of that name", $"give the packet an id of its own, as my-{id}, and name {id} as what it is like");
        }
    }

    private Ingredient? LikeOf(string name)
    {
        var id = ResourceName.IngredientId(name);
        if (shelf.Shipped.TryGet(id, out var like))
        {
            return like;
        }

        problems.Add("like", name, "is no shipped ingredient", NearestNames.WayOut(id, shelf.Shipped.Ingredients.Select(known => known.Id)));
        return null;
    }

    private StatedAllergens? AllergensOf(V1.StatedAllergens? stated) =>
        stated is null ? null : new StatedAllergens(AllergensOf(stated.Contains, "allergens.contains"), AllergensOf(stated.MayContain, "allergens.mayContain"));

    private ImmutableArray<string> AllergensOf(IEnumerable<string> words, string path)
    {
        var ids = ImmutableSortedSet.CreateBuilder<string>(StringComparer.Ordinal);
        foreach (var (index, word) in words.Index())
        {
            if (shelf.Shipped.Allergens.FirstOrDefault(known => known.IsCalled(word.Trim())) is { } allergen)
            {
                ids.Add(allergen.Id);
            }
            else
            {
                problems.Add($"{path}[{index}]", word, "is no allergen that is known", NearestNames.WayOut(word, shelf.Shipped.Allergens.Select(known => known.Id)));
            }
        }

        return [.. ids];
    }

    private Kitchen.Ingredients.Suits? SuitsOf(AddIngredientRequest request, StatedAllergens? allergens, Ingredient? like)
    {
        var claims = new SuitsClaims(
            request.HasVegan ? request.Vegan : null,
            request.HasVegetarian ? request.Vegetarian : null,
            request.HasGlutenFree ? request.GlutenFree : null);
        if (claims.Contradict)
        {
            problems.Add("vegan", "true", "is said of a food that is not vegetarian", "correct one of the two");
        }

        var denied = claims.Denied(allergens);
        foreach (var (field, allergen) in new[] { ("vegan", denied.Vegan), ("vegetarian", denied.Vegetarian), ("glutenFree", denied.GlutenFree) })
        {
            if (allergen is not null)
            {
                problems.Add(field, "true", $"is said of a food that contains {allergen}", "correct one of the two");
            }
        }

        return claims.After(like);
    }

    private Kitchen.Panels.NutritionPanel? PanelOf(V1.NutritionPanel? panel)
    {
        if (panel is null)
        {
            problems.Add("panel", string.Empty, "the panel is missing", "give its basis, its serving and its figures as printed");
            return null;
        }

        PanelBasis? basis = panel.Basis switch
        {
            V1.NutritionPanel.Types.Basis.Us => PanelBasis.UnitedStates,
            V1.NutritionPanel.Types.Basis.Eu => PanelBasis.EuropeanUnion,
            _ => null,
        };
        if (basis is null)
        {
            problems.Add(
                "panel.basis", string.Empty, "whose law the panel follows is not said", "give US (carbohydrate holds fibre) or EU (carbohydrate is without fibre)");
        }

        // The other mistakes are named with this one: a panel is typed once.
        var read = panels.Read(basis ?? PanelBasis.EuropeanUnion, panel.ServingG, PanelFields.Figures(panel));
        foreach (var problem in read.Problems)
        {
            problems.Add(PathOf(problem.Field), problem.Value, problem.Reason, problem.WayOut);
        }

        return read.Panel;
    }

    /// <summary>The path of what the reader of panels calls a field.</summary>
    private string PathOf(string field) =>
        field == PanelReader.Serving ? PanelFields.PathOf(null)
        : field == PanelReader.Figures ? "panel"
        : PanelFields.PathOf(PanelFields.Lines.First(line => panels.Rules.IdOf(line) == field));
}
