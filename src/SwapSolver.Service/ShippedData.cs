using SwapSolver.Cards;
using SwapSolver.Data.Acids;
using SwapSolver.Data.Balances;
using SwapSolver.Data.Files;
using SwapSolver.Data.Foods;
using SwapSolver.Data.Forecasts;
using SwapSolver.Data.Ingredients;
using SwapSolver.Data.Labels;
using SwapSolver.Data.Learning;
using SwapSolver.Data.Measures;
using SwapSolver.Data.Panels;
using SwapSolver.Data.Practice;
using SwapSolver.Data.Wording;
using SwapSolver.Forecasts;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Panels;
using SwapSolver.Learning;
using SwapSolver.Service.Desk;
using SwapSolver.Service.Stored;
using SwapSolver.Service.Translation;
using SwapSolver.Solving;
using SwapSolver.Tables;

namespace SwapSolver.Service;

/// <summary>What the data files say, as the rooms take it.</summary>
/// <param name="Bakehouse">Ingredients, balances, words and forecasts.</param>
/// <param name="Measures">Units, names and what spoons weigh.</param>
/// <param name="Foods">What is taken of a food that states only its composition.</param>
/// <param name="Table">How tables of foods are read.</param>
/// <param name="Measuring">How far a kitchen's own tests are trusted.</param>
/// <param name="Learning">What a kitchen can learn of itself.</param>
/// <param name="Panels">How a nutrition panel is rounded.</param>
/// <param name="Cards">What cards are printed with.</param>
/// <param name="Ingredients">Tells of ingredients, with their sources.</param>
/// <param name="Questions">Reads questions in words.</param>
/// <param name="Formulas">The demo formulas.</param>
internal sealed record ShippedData(
    Bakehouse Bakehouse,
    MeasureTables Measures,
    FoodIngredient Foods,
    FoodTable Table,
    MeasuringRules Measuring,
    LearningRules Learning,
    PanelRules Panels,
    CardRoom Cards,
    IngredientWriter Ingredients,
    QuestionReaders Questions,
    StoredFormulas Formulas)
{
    /// <summary>Reads a data folder.</summary>
    /// <exception cref="DataFaultException">A data file cannot be believed.</exception>
    public static ShippedData Read(string path)
    {
        var folder = new DataFolder(path);
        var sources = SourceKeys.Read(folder);
        var bakehouse = ReadBakehouse(folder, sources);
        var (pantry, phrases) = (bakehouse.Pantry, bakehouse.Phrases);
        var measures = MeasureFiles.Read(folder, sources, pantry);
        var foods = new FoodIngredient(FoodRulesFile.Read(folder, sources), pantry.Allergens, new FoodWords(phrases));
        var panels = PanelRulesFile.Read(folder, sources);
        var laws = LawFiles.Read(folder, sources, panels);
        var dials = OvenDialFile.Read(folder, sources);
        return new ShippedData(
            bakehouse,
            measures,
            foods,
            new FoodTable(foods.Rules, TableRulesFile.Read(folder, sources), pantry),
            MeasuringFile.Read(folder, sources),
            LearningFile.Read(folder, sources),
            panels,
            new CardRoom(laws, PhraseFile.ReadCard(folder), measures, dials, LocaleFile.Read(folder, sources, laws)),
            new IngredientWriter(sources, pantry),
            new QuestionReaders(() => QuestionFiles.Read(folder, sources), dials, phrases),
            StoredFormulas.In(folder));
    }

    private static Bakehouse ReadBakehouse(DataFolder folder, SourceKeys sources)
    {
        var (pantry, phrases) = (PantryFiles.Read(folder, sources), PhraseFile.Read(folder));
        var acidity = new Acidity(AcidFiles.Read(folder, sources, pantry), ForecastFiles.ReadAcidity(folder, sources));
        var balances = BalanceFiles.Read(folder, sources);
        return new Bakehouse(
            pantry,
            balances,
            phrases,
            PracticeFile.Read(folder, sources),
            new Rise(acidity, ForecastFiles.ReadRise(folder, sources), phrases),
            new Bake(BakeFile.Read(folder, sources), phrases),
            GoalFile.Read(folder, sources, balances));
    }
}
