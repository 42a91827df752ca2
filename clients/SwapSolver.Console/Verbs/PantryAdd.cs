using System.CommandLine;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Screens;
using SwapSolver.V1;

namespace SwapSolver.Console.Verbs;

/// <summary><c>pantry add</c>: puts the bag that stands on the shelf into this kitchen's pantry.</summary>
internal sealed class PantryAdd
{
    private readonly Argument<string> id = new("ID") { Description = "The id that the food gets, as my-almond-flour." };

    private readonly Option<string?> name = new("--name") { Description = "What the packet is called. Without it: the id.", HelpName = "NAME" };

    private readonly Option<string?> like = new("--like")
    {
        Description = "The ingredient that it is like, as almond-flour-blanched; what is not printed is taken from it.",
        HelpName = "ID",
    };

    private readonly Option<string?> role = new("--role") { Description = "What it does in a formula, as flour. Without it: what the like does.", HelpName = "ROLE" };

    private readonly Option<bool?> vegan = new("--vegan") { Description = "Whether the packet says vegan: true or false." };

    private readonly Option<bool?> vegetarian = new("--vegetarian") { Description = "Whether the packet says vegetarian: true or false." };

    private readonly Option<bool?> glutenFree = new("--gluten-free") { Description = "Whether the packet says gluten-free: true or false." };

    private readonly FigureOption price = new("--price", "PER-KG", "What a kilogram costs, in the kitchen's own money.");

    private readonly Option<bool> replace = new("--replace") { Description = "Replace a food of this kitchen that has the id." };

    private readonly Option<bool> dryRun = new("--dry-run") { Description = "Only answer; write nothing down." };

    private readonly PanelOptions panel = new();

    private readonly AllergenOptions allergens = new();

    /// <summary>The verb.</summary>
    public static Command Create(Errand errand)
    {
        var add = new PantryAdd();
        var verb = new VerbCommand(
            "add",
            "Puts the food of a packet into this kitchen's pantry, by its nutrition panel. A printed figure is rounded, so each becomes a range; a panel that cannot be true is refused.",
            "swapsolver pantry add my-almond-flour --like almond-flour-blanched --basis US --serving 28 --energy-kcal 170 --fat 15 --saturated-fat 1 --carbohydrate 6 --fibre 3 --sugars 1 --protein 6 --sodium 0 --contains tree-nuts")
        {
            add.id, add.name, add.like, add.role,
        };
        add.panel.AddTo(verb);
        add.allergens.AddTo(verb);
        foreach (var option in new Option[] { add.vegan, add.vegetarian, add.glutenFree, add.price, add.replace, add.dryRun })
        {
            verb.Add(option);
        }

        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<AddIngredientResponse>(
                async token => (await add.panel.ReadAsync(parse, token)).Then(panel => add.Ask(parse, panel)),
                (screen, response) => AddedScreen.Show(screen, response, isWritten: !parse.GetValue(add.dryRun)),
                _ => ExitCode.Answer),
            cancel));
        return verb;
    }

    private ServiceCall<AddIngredientResponse> Ask(ParseResult parse, NutritionPanel read)
    {
        var request = new AddIngredientRequest
        {
            IngredientId = parse.GetRequiredValue(id),
            DisplayName = parse.GetValue(name) ?? parse.GetRequiredValue(id).Replace('-', ' '),
            Like = parse.GetValue(like) is { } other ? IngredientId.ToResourceName(other) : string.Empty,
            Role = parse.GetValue(role) ?? string.Empty,
            Panel = read,
            Allergens = allergens.Read(parse),
            Replace = parse.GetValue(replace),
            ValidateOnly = parse.GetValue(dryRun),
        };
        Set(parse.GetValue(vegan), said => request.Vegan = said);
        Set(parse.GetValue(vegetarian), said => request.Vegetarian = said);
        Set(parse.GetValue(glutenFree), said => request.GlutenFree = said);
        Set(parse.GetValue(price), perKg => request.PricePerKg = perKg);
        return async (service, options) => await new IngredientService.IngredientServiceClient(service).AddIngredientAsync(request, options);
    }

    private static void Set<T>(T? value, Action<T> set)
        where T : struct
    {
        if (value is { } given)
        {
            set(given);
        }
    }
}
