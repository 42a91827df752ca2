using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Data.Practice;

/// <summary>Reads <c>data/practice/solving.json</c>.</summary>
public static class PracticeFile
{
    /// <summary>The habits that a formula is solved by.</summary>
    /// <exception cref="DataFaultException">The file cannot be believed.</exception>
    public static KitchenPractice Read(DataFolder folder, SourceKeys sources)
    {
        var habits = folder.Read("practice/solving.json").Only("about", "habits").Get("habits").Only(
            "lowCarbohydrateFlourGPerG", "carbohydrateOverReferencePercent", "setsLikeEggPercent", "moistFoodWaterPercent",
            "plainWaterPercent", "floursOfBatterPercent", "leastOfALinePercent", "seasoningOfBatterPercent", "sizeTolerancePercent", "ownFoodsOfARole");

        double Value(string name, double most)
        {
            var habit = habits.Get(name).Only("value", "source", "mark", "why");
            _ = sources.Key(habit.Get("source"));
            _ = Words.MarkOf(habit.Get("mark"));
            _ = habit.Get("why").Text;
            var value = habit.Get("value");
            return value.Number >= 0 && value.Number <= most
                ? value.Number
                : throw value.Fault($"'{name}' is {value.Number}; it must lie between 0 and {most}");
        }

        Percent Share(string name, double most = 100) => new(Value(name, most));
        int Count(string name, int most)
        {
            var count = Value(name, most);
            return double.IsInteger(count) ? (int)count : throw habits.Get(name).Get("value").Fault($"'{name}' is {count}; it must be a whole number");
        }

        return new KitchenPractice(
            new PerGram(Value("lowCarbohydrateFlourGPerG", 1)),
            Share("carbohydrateOverReferencePercent", 1000),
            Share("setsLikeEggPercent"),
            Share("moistFoodWaterPercent"),
            Share("plainWaterPercent"),
            Share("floursOfBatterPercent"),
            Share("leastOfALinePercent"),
            Share("seasoningOfBatterPercent"),
            Share("sizeTolerancePercent"),
            Count("ownFoodsOfARole", 100));
    }
}
