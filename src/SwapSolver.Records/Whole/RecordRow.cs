using SwapSolver.Records.Formulas;
using SwapSolver.Records.Keys;
using SwapSolver.Records.Trials;

namespace SwapSolver.Records.Whole;

/// <summary>One thing that was written down, as a row of its table.</summary>
public abstract record RecordRow
{
    private RecordRow()
    {
    }

    /// <summary>A food of this kitchen's own.</summary>
    /// <param name="Id">Its id.</param>
    /// <param name="Document">The food as it is kept.</param>
    public sealed record Food(string Id, string Document) : RecordRow;

    /// <summary>What was measured of an ingredient.</summary>
    /// <param name="Ingredient">Id of the ingredient.</param>
    /// <param name="Fact">Id of the fact.</param>
    /// <param name="Low">Low end, in the fact's unit.</param>
    /// <param name="Typical">Typical value.</param>
    /// <param name="High">High end.</param>
    /// <param name="Method">How it was measured.</param>
    public sealed record Measured(string Ingredient, string Fact, double Low, double Typical, double High, string Method) : RecordRow;

    /// <summary>What a spoon or cup weighs.</summary>
    /// <param name="Ingredient">Id of the ingredient.</param>
    /// <param name="Measure">The measure.</param>
    /// <param name="Amount">How many of them.</param>
    /// <param name="Grams">Their mass [g].</param>
    /// <param name="Source">Where it stands.</param>
    public sealed record Weight(string Ingredient, string Measure, string Amount, double Grams, string Source) : RecordRow;

    /// <summary>A formula.</summary>
    /// <param name="Head">Where it stands.</param>
    public sealed record Formula(FormulaHead Head) : RecordRow;

    /// <summary>A revision.</summary>
    /// <param name="Revision">The revision.</param>
    public sealed record OneRevision(Revision Revision) : RecordRow;

    /// <summary>A trial.</summary>
    /// <param name="Trial">The trial.</param>
    public sealed record OneTrial(StoredTrial Trial) : RecordRow;

    /// <summary>A choice about a learned fact.</summary>
    /// <param name="Choice">The choice.</param>
    public sealed record OneChoice(LearnedChoice Choice) : RecordRow;

    /// <summary>A key.</summary>
    /// <param name="Key">The key.</param>
    public sealed record OneKey(StoredKey Key) : RecordRow;
}
