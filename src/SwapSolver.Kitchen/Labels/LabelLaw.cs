using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Panels;

namespace SwapSolver.Kitchen.Labels;

/// <summary>What one law has on a label, from <c>data/labels/laws/</c>.</summary>
/// <param name="Id">Its id, as <c>au-nz</c>.</param>
/// <param name="Name">Where it holds.</param>
/// <param name="Text">The law by name and number.</param>
/// <param name="AsOf">When it is from.</param>
/// <param name="Portion">What its figures are for.</param>
/// <param name="LessThan">How it writes 'less than', with the gap <c>{amount}</c>.</param>
/// <param name="TakenOffCarbohydrate">What its carbohydrate does not hold.</param>
/// <param name="CarbohydrateWords">What its carbohydrate holds, in words.</param>
/// <param name="EnergyMethods">How it lets energy be counted; the first is used where nobody says.</param>
/// <param name="Lines">Its lines in order.</param>
/// <param name="AllergenLists">Which lists of allergens are shown with it: <c>us</c>, <c>eu</c>.</param>
/// <param name="Gluten">What it asks of the claim that a food is free of gluten.</param>
/// <param name="ReferenceAmounts">What it takes to be eaten at once, by kind of food; empty where it names none.</param>
/// <param name="Notes">What a reader of its label must know.</param>
public sealed record LabelLaw(
    string Id,
    string Name,
    string Text,
    string AsOf,
    LabelPortion Portion,
    string LessThan,
    ImmutableArray<Fact> TakenOffCarbohydrate,
    string CarbohydrateWords,
    ImmutableArray<EnergyMethod> EnergyMethods,
    ImmutableArray<LawLine> Lines,
    ImmutableArray<string> AllergenLists,
    GlutenRule Gluten,
    ImmutableArray<ReferenceAmount> ReferenceAmounts,
    ImmutableArray<string> Notes)
{
    /// <summary>A figure in the words of this law, as <c>less than 1</c>.</summary>
    public string Write(PrintedFigure figure) => figure.IsLessThan
        ? LessThan.Replace("{amount}", figure.Text.TrimStart('<'), StringComparison.Ordinal)
        : figure.Text;
}
