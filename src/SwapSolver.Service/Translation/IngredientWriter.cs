using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Service.Translation;

/// <summary>Writes ingredients in the contract's words.</summary>
internal sealed class IngredientWriter(SourceKeys sources, Pantry shipped)
{
    private const string NoneByNature = "none by nature";

    /// <summary>The ingredient without its figures, for a list.</summary>
    public V1.Ingredient WriteShort(Ingredient ingredient)
    {
        var written = new V1.Ingredient
        {
            Name = ResourceName.Of(ingredient),
            DisplayName = ingredient.Name,
            Role = RoleWords.Of(ingredient.Role),
            About = ingredient.About,
            NotFor = ingredient.NotFor,
            Made = ingredient.Made,
            UsdaFoodNumber = ingredient.UsdaFoodNumber ?? string.Empty,
            Vegan = ingredient.Suits.Vegan,
            Vegetarian = ingredient.Suits.Vegetarian,
            GlutenFree = ingredient.Suits.GlutenFree,
            Own = !shipped.Knows(ingredient.Id),
            Usage = Write(ingredient.Usage),
        };
        written.Groups.AddRange(ingredient.Groups);
        written.AllergensUs.AddRange(ingredient.Allergens.Us);
        written.AllergensEu.AddRange(ingredient.Allergens.Eu);
        written.MayContain.AddRange(ingredient.Allergens.MayContain);
        written.Behaviours.AddRange(ingredient.Behaviours.Select(behaviour => behaviour.Note));
        written.Cautions.AddRange(ingredient.Cautions);
        written.AllergensKnown = ingredient.Allergens.AreKnown;
        return written;
    }

    /// <summary>The ingredient with every figure.</summary>
    public V1.Ingredient Write(Ingredient ingredient)
    {
        var written = WriteShort(ingredient);
        written.Facts.AddRange(Fact.All.Where(fact => ingredient.RangeOf(fact) is not null).Select(fact => Write(ingredient, fact)));
        written.UnknownFacts.AddRange(Fact.All.Where(fact => ingredient.RangeOf(fact) is null).Select(fact => fact.Id));
        written.HouseholdMeasures.AddRange(ingredient.HouseholdMeasures.Select(measure => new V1.HouseholdMeasure
        {
            Amount = (double)measure.Amount,
            Measure = measure.Measure,
            Grams = measure.Grams.Value,
            Source = sources.Describe(measure.Source),
        }));
        return written;
    }

    /// <summary>One figure; it must be known.</summary>
    public V1.Fact Write(Ingredient ingredient, Fact fact)
    {
        var range = ingredient.RangeOf(fact)!.Value;
        var figure = ingredient.Figures.GetValueOrDefault(fact);
        return new V1.Fact
        {
            Fact_ = fact.Id,
            Value = range.Typical,
            Low = range.Low,
            High = range.High,
            Unit = fact.Unit,
            Source = figure is null ? NoneByNature : Describe(figure),
            Mark = figure is null ? NoneByNature : figure.Mark.ToString().ToLowerInvariant(),
        };
    }

    private string Describe(Figure figure) => figure.RangeSource is { } range
        ? $"{sources.Describe(figure.Source)}; range: {sources.Describe(range)}"
        : sources.Describe(figure.Source);

    private V1.Usage Write(Usage usage)
    {
        var written = new V1.Usage
        {
            SensibleMinimumGrams = usage.SensibleMinimum.Value,
            ScaleStepGrams = usage.ScaleStep.Value,
            Source = sources.Describe(usage.Source),
        };
        if (usage.MaximumOfFlour is { } ofFlour)
        {
            written.MaximumPercentOfFlour = ofFlour.Value;
        }

        if (usage.MaximumOfBatter is { } ofBatter)
        {
            written.MaximumPercentOfBatter = ofBatter.Value;
        }

        return written;
    }
}
