using System.CommandLine;
using SwapSolver.V1;

namespace SwapSolver.Console.Arguments;

/// <summary>The options of the verbs that solve: how the kitchen wants it done.</summary>
/// <param name="takesRanks">Whether the verb ranks answers, and so takes how many and how sure.</param>
/// <param name="takesLimits">Whether the verb keeps limits on readings.</param>
internal sealed class HabitOptions(bool takesRanks = true, bool takesLimits = true)
{
    private const string NetCarbohydrate = "net-carbohydrate";

    private readonly WholeFigureOption newIngredients = new("--new-ingredients", "Most ingredients that may be new to the formula.");
    private readonly WholeFigureOption answers = new("--answers", "Most answers.");
    private readonly FigureOption scaleStep = new("--scale-step", "G", "Step of the kitchen scale, in grams.");
    private readonly FigureOption maxNetCarbs = new("--max-net-carbs", "G", "Most net carbohydrate, in grams a slice.");

    private readonly FigureOption sureness = new("--sureness", "PERCENT", "Of 100 kitchens, in how many the answer must balance at least, as ingredients vary.");

    private readonly Option<bool> explainModel = new("--explain-model")
    {
        Description = "Print the model that the first answer solves, in the free MPS text, in place of the answers.",
    };

    private readonly Option<bool> weighedEgg = new("--weighed-egg")
    {
        Description = "Eggs may be weighed; they need not come whole.",
    };

    private readonly Option<Line.Types.Size?> eggSize = new("--egg-size")
    {
        Description = "Size of the eggs in this kitchen, as LARGE_EU.",
        HelpName = "SIZE",
        CustomParser = result => OptionText.One(result, "--egg-size", text => EnumWord.Read<Line.Types.Size>(Line.Descriptor.EnumTypes.Single(one => one.Name == nameof(Line.Types.Size)), text)),
    };

    private readonly Option<ReadingLimit[]> limits = new("--limit")
    {
        Description = "Limits on a reading, or on the grams of one ingredient; either side may be left empty. May be given again.",
        HelpName = "BALANCE=LOW..HIGH",
        CustomParser = result => OptionText.Each(result, "--limit", LimitText.Read),
    };

    private readonly Option<string[]> allow = new("--allow")
    {
        Description = "Ingredients that may come in besides those that are offered, with commas between: foods of your own that only a table describes. May be given again.",
        HelpName = "ID,ID",
        CustomParser = result =>
        [
            .. result.Tokens
                .SelectMany(token => OptionText.SplitAtCommas(token.Value))
                .Select(IngredientId.ToResourceName),
        ],
    };

    /// <summary>Offers the options under a verb.</summary>
    public void AddTo(Command verb)
    {
        verb.Add(newIngredients);
        verb.Add(weighedEgg);
        verb.Add(eggSize);
        verb.Add(scaleStep);
        verb.Add(allow);
        if (takesRanks)
        {
            verb.Add(answers);
            verb.Add(sureness);
            verb.Add(explainModel);
        }

        if (takesLimits)
        {
            verb.Add(maxNetCarbs);
            verb.Add(limits);
        }
    }

    /// <summary>What the command line says.</summary>
    public Habits Read(ParseResult parse)
    {
        var habits = new Habits { ExplainModel = parse.GetValue(explainModel), WeighedEgg = parse.GetValue(weighedEgg), EggSize = parse.GetValue(eggSize) ?? Line.Types.Size.Unspecified };
        if (parse.GetValue(newIngredients) is int most)
        {
            habits.NewIngredients = most;
        }

        if (parse.GetValue(answers) is int count)
        {
            habits.Answers = count;
        }

        if (parse.GetValue(scaleStep) is double step)
        {
            habits.ScaleStepGrams = step;
        }

        if (parse.GetValue(sureness) is double sure)
        {
            habits.SurenessPercent = sure;
        }

        if (parse.GetValue(maxNetCarbs) is double cap)
        {
            habits.Limits.Add(new ReadingLimit { Balance = NetCarbohydrate, High = cap });
        }

        habits.Limits.AddRange(parse.GetValue(limits) ?? []);
        habits.Allow.AddRange(parse.GetValue(allow) ?? []);
        return habits;
    }
}
