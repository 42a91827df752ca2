using System.Globalization;
using Grpc.Core;
using SwapSolver.Data.Ingredients;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Translation;
using SwapSolver.V1;
using Role = SwapSolver.Kitchen.Ingredients.Role;

namespace SwapSolver.Service.Services;

/// <summary>Reads the pantry.</summary>
internal sealed class IngredientService(Pantry pantry, IngredientWriter writer) : V1.IngredientService.IngredientServiceBase
{
    private const int UsualPage = 100;

    private const int MostPage = 1000;

    /// <inheritdoc/>
    public override Task<V1.Ingredient> GetIngredient(GetIngredientRequest request, ServerCallContext context)
    {
        var problems = new ProblemList();
        if (string.IsNullOrEmpty(request.Name))
        {
            problems.Add("name", string.Empty, "the name is missing", "give a name, as ingredients/almond-meal");
        }

        problems.ThrowIfAny();
        var id = ResourceName.IngredientId(request.Name);
        return pantry.TryGet(id, out var ingredient)
            ? Task.FromResult(writer.Write(ingredient))
            : throw ProblemList.NotFound(request.Name, NearestNames.To(id, pantry.Ingredients.Select(known => known.Id)));
    }

    /// <inheritdoc/>
    public override Task<ListIngredientsResponse> ListIngredients(ListIngredientsRequest request, ServerCallContext context)
    {
        var problems = new ProblemList();
        var all = WithRole(request.Role, problems).ToList();
        if (request.PageSize < 0)
        {
            problems.Add("pageSize", request.PageSize, "is no page size", $"give 0 to {MostPage}");
        }

        var start = StartOf(request.PageToken, all.Count, problems);
        problems.ThrowIfAny();
        var size = request.PageSize == 0 ? UsualPage : Math.Min(request.PageSize, MostPage);
        var response = new ListIngredientsResponse();
        response.Ingredients.AddRange(all.Skip(start).Take(size).Select(writer.WriteShort));
        response.NextPageToken = start + size < all.Count
            ? (start + size).ToString(CultureInfo.InvariantCulture)
            : string.Empty;
        return Task.FromResult(response);
    }

    private IEnumerable<Kitchen.Ingredients.Ingredient> WithRole(string role, ProblemList problems)
    {
        if (string.IsNullOrEmpty(role))
        {
            return pantry.Ingredients;
        }

        var known = Enum.GetValues<Role>();
        if (known.All(one => Words.Of(one) != role))
        {
            problems.Add("role", role, "is no role", $"give one of {string.Join(", ", known.Select(Words.Of))}");
        }

        return pantry.Ingredients.Where(ingredient => Words.Of(ingredient.Role) == role);
    }

    private static int StartOf(string token, int count, ProblemList problems)
    {
        if (string.IsNullOrEmpty(token))
        {
            return 0;
        }

        if (int.TryParse(token, NumberStyles.None, CultureInfo.InvariantCulture, out var start) && start <= count)
        {
            return start;
        }

        problems.Add("pageToken", token, "is no token of this list", "give the nextPageToken of the page before");
        return 0;
    }
}
