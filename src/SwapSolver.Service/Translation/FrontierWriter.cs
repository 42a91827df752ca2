using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Solving.Questions;

namespace SwapSolver.Service.Translation;

/// <summary>Writes the points of a trade-off in the contract's words.</summary>
internal sealed class FrontierWriter(Frontier frontier, AnswerWriter answers)
{
    /// <summary>The point.</summary>
    /// <param name="point">The point.</param>
    /// <param name="number">Its number in the order found, from 1.</param>
    public V1.TraceFrontierResponse Write(FrontierPoint point, int number) => new()
    {
        Point = number,
        MostPoints = frontier.Points,
        First = Of(frontier.First, point),
        Second = Of(frontier.Second, point),
        FirstBefore = Before(frontier.First),
        SecondBefore = Before(frontier.Second),
        Answer = answers.Write(point.Answer),
    };

    private static V1.Reading Of(TradedReading reading, FrontierPoint point) =>
        ReadingWriter.Write(point.Answer.Readings.Single(one => one.Balance == reading.Balance));

    private double Before(TradedReading reading) =>
        reading.Balance.Read(frontier.Formula, frontier.Formula, Draws.Typical)?.Value ?? 0;
}
