using System.Reflection;
using SwapSolver.Kitchen.Ingredients;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.House.Tests;

/// <summary>A bare number swaps grams for millimoles one day. What the kitchen and its forecasts show outside carries its unit in its type.</summary>
public sealed class QuantityTests
{
    private static readonly Type[] BareNumbers = [typeof(double), typeof(float), typeof(decimal)];

    /// <summary>Where bare numbers are at home: in the quantities themselves and in the raw figures of a fact.</summary>
    private static readonly Type[] AtHome = [typeof(FactSheet), typeof(FactSheets), typeof(Range)];

    /// <summary>Plain numbers that have no unit of their own, each with the reason.</summary>
    private static readonly Dictionary<string, string> Allowed = new()
    {
        ["Band.Of(tolerance)"] = "a share of the band's end, without a unit",
        ["Basis.Constant"] = "its unit is the rule's own: slices, grams or a fact",
        ["Row.Least"] = "its unit is the rule's own, as its coefficients' is",
        ["Fact.Most"] = "its unit stands beside it, in the fact",
        ["FreeForm.Scaled(factor)"] = "one loaf by another, without a unit",
        ["Formula.Scaled(factor)"] = "one loaf by another, without a unit",
        ["Tin.VolumeBy"] = "one tin by another, without a unit",
        ["HouseholdMeasure.Amount"] = "a count of spoons or cups; which, stands beside it",
        ["Line.Count"] = "a count of eggs",
        ["FoodRules.LikeWidening"] = "one range by another, without a unit",
        ["Spread.Share"] = "a share of a figure, without a unit",
        ["Spread.Least"] = "its unit stands beside it, in the fact that it is the spread of",
        ["Spread.Around(figure)"] = "its unit stands beside it, in the fact that it is the spread of",
        ["Spread.Around(most)"] = "its unit stands beside it, in the fact that it is the spread of",
        ["Spread.Of(figure)"] = "its unit stands beside it, in the fact",
        ["Polynomial.Constant"] = "its unit is that of the property that it is of",
        ["Polynomial.Slope"] = "its unit is that of the property that it is of, by degree",
        ["Polynomial.Curve"] = "its unit is that of the property that it is of, by degree squared",
        ["Polynomial.At"] = "its unit is that of the property that it is of",
        ["Polynomial.At(celsius)"] = "a degree Celsius by its name: polynomials are evaluated in the innermost loop",
        ["Portion.Share(share)"] = "a share of the loaf, without a unit",
    };

    [Fact]
    public void No_number_leaves_the_kitchen_without_its_unit() => Assert.Empty(Bare().Except(Allowed.Keys));

    [Fact]
    public void Every_exception_is_still_needed() => Assert.Empty(Allowed.Keys.Except(Bare()));

    private static IReadOnlyList<string> Bare() =>
    [
        .. new[] { typeof(Ingredient), typeof(Forecasts.Rise) }.SelectMany(type => type.Assembly.GetExportedTypes())
            .Where(type => type.Namespace != "SwapSolver.Kitchen.Quantities" && !AtHome.Contains(type) && !type.IsEnum)
            .SelectMany(Bare)
            .Distinct()
            .Order(StringComparer.Ordinal),
    ];

    private static IEnumerable<string> Bare(Type type)
    {
        const BindingFlags Shown = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
        var fields = type.GetFields(Shown).Where(field => IsShown(field.Attributes) && IsBare(field.FieldType)).Select(field => $"{type.Name}.{field.Name}");
        var properties = type.GetProperties(Shown)
            .Where(property => property.GetMethod is { } get && IsShown(get.Attributes) && IsBare(property.PropertyType))
            .Select(property => $"{type.Name}.{property.Name}");
        // What a record is made of and taken apart into are its properties.
        var parts = type.GetConstructors(Shown).Cast<MethodBase>().Concat(type.GetMethods(Shown).Where(method => method.Name == "Deconstruct"))
            .Where(method => IsShown(method.Attributes))
            .SelectMany(method => method.GetParameters().Where(parameter => IsBare(parameter.ParameterType)).Select(parameter => $"{type.Name}.{parameter.Name}"));
        var methods = type.GetMethods(Shown).Where(method => IsShown(method.Attributes) && !method.IsSpecialName && method.Name != "Deconstruct").ToList();
        var returns = methods.Where(method => IsBare(method.ReturnType)).Select(method => $"{type.Name}.{method.Name}");
        var parameters = methods.SelectMany(method => method.GetParameters()
            .Where(parameter => IsBare(parameter.ParameterType))
            .Select(parameter => $"{type.Name}.{method.Name}({parameter.Name})"));
        return fields.Concat(properties).Concat(parts).Concat(returns).Concat(parameters);
    }

    private static bool IsShown(FieldAttributes attributes) =>
        (attributes & FieldAttributes.FieldAccessMask) is FieldAttributes.Public or FieldAttributes.Family or FieldAttributes.FamORAssem;

    private static bool IsShown(MethodAttributes attributes) =>
        (attributes & MethodAttributes.MemberAccessMask) is MethodAttributes.Public or MethodAttributes.Family or MethodAttributes.FamORAssem;

    private static bool IsBare(Type type) =>
        BareNumbers.Contains(type)
        || (type.HasElementType && IsBare(type.GetElementType()!))
        || (type.IsGenericType && type.GetGenericArguments().Any(IsBare));
}
