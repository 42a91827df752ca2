using Grpc.Core;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Records;
using SwapSolver.Service.Shelf;
using SwapSolver.Service.Translation;
using SwapSolver.V1;
using Role = SwapSolver.Kitchen.Ingredients.Role;

namespace SwapSolver.Service.Services;

/// <summary>Reads the pantry, and writes down what this kitchen knows better.</summary>
internal sealed class IngredientService(Pantry pantry, IngredientWriter writer, KitchenShelf shelf, Adding adding, Importing importing)
    : V1.IngredientService.IngredientServiceBase
{
    private const int UsualPage = 100;

    private const int MostPage = 1000;

    /// <inheritdoc/>
    public override Task<V1.Ingredient> GetIngredient(GetIngredientRequest request, ServerCallContext context)
    {
        return Task.FromResult(writer.Write(Named(request.Name)));
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

        var last = LastListed(request, problems);
        problems.ThrowIfAny();
        var size = request.PageSize == 0 ? UsualPage : Math.Min(request.PageSize, MostPage);
        var left = all.Where(ingredient => string.CompareOrdinal(ingredient.Id, last) > 0).Take(size + 1).ToList();
        var response = new ListIngredientsResponse();
        response.Ingredients.AddRange(left.Take(size).Select(writer.WriteShort));
        response.NextPageToken = left.Count > size ? $"{request.Role}:{left[size - 1].Id}" : string.Empty;
        return Task.FromResult(response);
    }

    /// <inheritdoc/>
    public override Task<MeasureIngredientResponse> MeasureIngredient(MeasureIngredientRequest request, ServerCallContext context)
    {
        var ingredient = Named(request.Name);
        var problems = new ProblemList();
        // Measured against the shipped figures, or a second test would start from the first.
        var untouched = shelf.Untouched(ingredient.Id) ?? ingredient;
        var measured = new Measuring(shelf.Measuring, shelf.Phrases, problems).Read(request, untouched);
        problems.ThrowIfAny();
        shelf.Records.Put(measured);
        var now = shelf.Today().Pantry.TryGet(ingredient.Id, out var known) ? known : ingredient;
        var response = new MeasureIngredientResponse { Ingredient = writer.Write(now), Method = shelf.Phrases.Say("method-soak") };
        response.Measured.AddRange(measured.Select(one => writer.Write(now, one.Fact)));
        return Task.FromResult(response);
    }

    /// <inheritdoc/>
    public override Task<AddIngredientResponse> AddIngredient(AddIngredientRequest request, ServerCallContext context) => adding.Add(request, context);

    /// <inheritdoc/>
    public override Task<ImportIngredientsResponse> ImportIngredients(ImportIngredientsRequest request, ServerCallContext context) =>
        Task.FromResult(importing.Import(request));

    /// <inheritdoc/>
    public override Task<DeleteIngredientResponse> DeleteIngredient(DeleteIngredientRequest request, ServerCallContext context)
    {
        var ingredient = Named(request.Name);
        if (!shelf.Records.Forget(ingredient.Id))
        {
            throw ProblemList.NothingWritten(request.Name);
        }

        return Task.FromResult(new DeleteIngredientResponse
        {
            Ingredient = shelf.Today().Pantry.TryGet(ingredient.Id, out var left) ? writer.Write(left) : null,
        });
    }

    /// <summary>The ingredient of a name.</summary>
    /// <exception cref="RpcException">INVALID_ARGUMENT where there is no name, NOT_FOUND where it is not known.</exception>
    private Kitchen.Ingredients.Ingredient Named(string name)
    {
        var problems = new ProblemList();
        if (string.IsNullOrEmpty(name))
        {
            problems.Add("name", string.Empty, "the name is missing", "give a name, as ingredients/almond-meal");
        }

        problems.ThrowIfAny();
        var id = ResourceName.IngredientId(name);
        return pantry.TryGet(id, out var ingredient)
            ? ingredient
            : throw ProblemList.NotFound(name, NearestNames.To(id, pantry.Ids));
    }

    private IEnumerable<Kitchen.Ingredients.Ingredient> WithRole(string role, ProblemList problems)
    {
        if (string.IsNullOrEmpty(role))
        {
            return pantry.Ingredients;
        }

        var known = Enum.GetValues<Role>();
        if (known.All(one => RoleWords.Of(one) != role))
        {
            problems.Add("role", role, "is no role", $"give one of {string.Join(", ", known.Select(RoleWords.Of))}");
        }

        return pantry.Ingredients.Where(ingredient => RoleWords.Of(ingredient.Role) == role);
    }

    /// <summary>The id that the page before ended with; empty for the first page. A token names it, and no place in a count:
    /// what is put in or forgotten between two pages then moves nothing. It belongs to the role that was asked for.</summary>
    private static string LastListed(ListIngredientsRequest request, ProblemList problems)
    {
        var token = request.PageToken;
        if (string.IsNullOrEmpty(token))
        {
            return string.Empty;
        }

        if (token.StartsWith($"{request.Role}:", StringComparison.Ordinal) && token.Length > request.Role.Length + 1)
        {
            return token[(request.Role.Length + 1)..];
        }

        problems.Add("pageToken", token, "is no token of this list", "give the nextPageToken of the page before, and ask for the same role");
        return string.Empty;
    }
}
