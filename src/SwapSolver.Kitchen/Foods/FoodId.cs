namespace SwapSolver.Kitchen.Foods;

/// <summary>What an id of a kitchen's own food looks like.</summary>
public static class FoodId
{
    /// <summary>Most letters of an id.</summary>
    public const int MostLetters = 64;

    /// <summary>What to write.</summary>
    public static string WayOut => $"write small letters, digits and hyphens, at most {MostLetters}, as my-coconut-flour";

    /// <summary>The id of a food that has only a number of the USDA Standard Reference.</summary>
    /// <param name="usdaFoodNumber">Its five digits.</param>
    public static string OfNumber(string usdaFoodNumber) => $"usda-{usdaFoodNumber}";

    /// <summary>Whether a text can be an id: small letters, digits and hyphens.</summary>
    public static bool CanBe(string text) =>
        text.Length is > 0 and <= MostLetters && text.All(letter => char.IsAsciiLetterLower(letter) || char.IsAsciiDigit(letter) || letter == '-');
}
