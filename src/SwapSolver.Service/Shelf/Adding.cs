using Grpc.Core;
using SwapSolver.Kitchen.Panels;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Records;
using SwapSolver.Service.Solves;
using SwapSolver.Service.Translation;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Panels;
using SwapSolver.V1;
using Ingredient = SwapSolver.Kitchen.Ingredients.Ingredient;
using NutritionPanel = SwapSolver.Kitchen.Panels.NutritionPanel;

namespace SwapSolver.Service.Shelf;

/// <summary>Puts the food of a packet on this kitchen's shelf.</summary>
/// <param name="shelf">What this kitchen knows.</param>
/// <param name="rules">The rules of panels.</param>
/// <param name="solver">The solver.</param>
/// <param name="room">Where solves run.</param>
/// <param name="writer">Writes ingredients.</param>
internal sealed class Adding(KitchenShelf shelf, PanelRules rules, ISolver solver, SolveRoom room, IngredientWriter writer)
{
    /// <summary>Reads the packet, solves its panel and writes the food down.</summary>
    /// <exception cref="RpcException">The packet is refused, its id is taken, or time ran out.</exception>
    public async Task<AddIngredientResponse> Add(AddIngredientRequest request, ServerCallContext context)
    {
        var problems = new ProblemList();
        var packet = new PacketReader(shelf, new PanelReader(rules, shelf.Phrases), problems).Read(request);
        problems.ThrowIfAny();
        if (!request.Replace && shelf.Own(packet!.Food.Id) is not null)
        {
            throw ProblemList.AlreadyThere(packet.Food.Id);
        }

        var panels = new PanelComposition(solver, rules, shelf.Foods.Rules, shelf.Phrases);
        var answer = await room.Run(context, (clock, cancel) => panels.Of(packet!.Panel, packet.Like, clock, cancel));
        OutOfTime.ThrowIf(answer.EndedEarly);
        Refuse(answer.Clash, packet!.Panel, problems);
        problems.ThrowIfAny();
        var food = packet.Food.With(answer.Figures);
        var ingredient = shelf.Foods.Of(food, packet.Like);
        var price = new Measuring(shelf.Measuring, shelf.Phrases, problems).ReadPrice(request.HasPricePerKg ? request.PricePerKg : null, ingredient);
        problems.ThrowIfAny();
        if (!request.ValidateOnly)
        {
            shelf.Records.Put([food]);
            shelf.Records.Put(price);
        }

        var response = new AddIngredientResponse { Ingredient = writer.Write(shelf.Measured(ingredient, price)) };
        response.Notes.AddRange(answer.Notes);
        response.Cautions.AddRange(Cautions(ingredient));
        return response;
    }

    /// <summary>Names each figure of a clash, all with the same sentence: none of them is the wrong one by itself.</summary>
    private static void Refuse(PanelClash? clash, NutritionPanel panel, ProblemList problems)
    {
        foreach (var figure in clash?.Figures ?? [])
        {
            var printed = figure.Line is { } line ? panel.Figures[line] : panel.Serving;
            problems.Add(PanelFields.PathOf(figure.Line), printed.Text, $"cannot be true beside the others: {clash!.Words}", "read the packet again: basis, serving and these figures");
        }
    }

    private IEnumerable<string> Cautions(Ingredient ingredient)
    {
        if (!ingredient.Allergens.AreKnown)
        {
            yield return shelf.Phrases.Say("caution-allergens-unknown", ("ingredient", ingredient.Name));
        }

        yield return shelf.Phrases.Say("caution-allergen-lists");
    }
}
