using SwapSolver.Kitchen.Ingredients;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Data.Files;

/// <summary>Reads a figure that stands outside an ingredient: low, typical, high, source, mark.</summary>
/// <param name="Sources">The bibliography.</param>
internal sealed record FigureReader(SourceKeys Sources)
{
    private static readonly string[] Keys = ["low", "typical", "high", "source", "mark"];

    /// <summary>The figure at a place.</summary>
    /// <param name="place">The object that holds it.</param>
    /// <param name="name">What to call it in a fault.</param>
    /// <param name="least">Lowest value that can be true.</param>
    /// <param name="most">Highest value that can be true.</param>
    /// <param name="also">Further keys that may stand in the object.</param>
    public Figure Read(JsonPlace place, string name, double least, double most, params ReadOnlySpan<string> also)
    {
        place.Only([.. Keys, .. also]);
        var range = new Range(place.Get("low").Number, place.Get("typical").Number, place.Get("high").Number);
        if (!range.IsInOrder)
        {
            throw place.Fault($"{name}: low {range.Low}, typical {range.Typical}, high {range.High} must stand in order");
        }

        if (range.Low < least || range.High > most)
        {
            throw place.Get(range.Low < least ? "low" : "high").Fault($"{name}: {range.Low} to {range.High} must lie between {least} and {most}");
        }

        return new Figure(range, Sources.Key(place.Get("source")), Words.MarkOf(place.Get("mark")), null);
    }
}
