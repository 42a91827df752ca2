using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>What a reading is called.</summary>
internal static class ReadingTitle
{
    /// <summary>In kitchen words; the id where the service sent none.</summary>
    public static string Of(Reading reading) => reading.Title.Length > 0 ? reading.Title : IngredientName.Of(reading.Balance);

    /// <summary>With its unit in brackets.</summary>
    public static string WithUnit(Reading reading) => reading.Unit.Length > 0 ? $"{Of(reading)} [{reading.Unit}]" : Of(reading);
}
