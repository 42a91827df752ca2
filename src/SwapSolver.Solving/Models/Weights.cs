namespace SwapSolver.Solving.Models;

/// <summary>
/// What the objective counts, in one place. The order of importance is: the hard bands (rows, not weights); as few
/// changed lines as possible; closest to the reference's readings; fewest grams moved. One changed line counts 1, and
/// readings and grams can never add up to 1, so neither buys a further changed line. Three things may, and are meant to: net
/// carbohydrate that would rise, an allergen that would come in, and liquids that would outgrow their room.
/// </summary>
public static class Weights
{
    /// <summary>A line that differs from the reference: the unit of all weights.</summary>
    public const double ChangedLine = 1;

    /// <summary>A new ingredient: a changed line, and a jar to buy besides; adjusting what is in the bowl comes first.</summary>
    public const double NewIngredient = 1.05;

    /// <summary>Water where there was none: nothing to buy, so it comes before other liquids.</summary>
    public const double NewWater = 0.7;

    /// <summary>A new allergen in the bowl, or allergens that nobody stated, which may be new ones: dearer than two changed
    /// lines, since it shuts out readers; shown as a caution too.</summary>
    public const double NewAllergen = 2.5;

    /// <summary>A reading at the end of its band instead of the reference's own value. Six readings are anchored, so
    /// together they stay below one changed line.</summary>
    public const double ReadingAtBandEnd = 0.1;

    /// <summary>Net carbohydrate up by <see cref="NetCarbohydrateStep"/> of the reference's own a slice. Not capped: a
    /// low-carb loaf that takes on starch has lost its purpose, and that outweighs a changed line or two.</summary>
    public const double NetCarbohydrateRise = 0.1;

    /// <summary>The rise that is counted as one: a quarter of the reference's own net carbohydrate [1].</summary>
    public const double NetCarbohydrateStep = 0.25;

    /// <summary>The rise that is counted as one where the reference has next to none [g/slice].</summary>
    public const double NetCarbohydrateLeastStep = 0.3;

    /// <summary>All of the batter's mass moved about in the lines that stay: breaks ties among equal readings.</summary>
    public const double BatterMoved = 0.1;

    /// <summary>A repair that leaves out what the reader asked to bring in: only where it cannot be brought in.</summary>
    public const double OtherThanAsked = 1000;

    /// <summary>A larger loaf that takes in something new where what is in the bowl would do: never worth it.</summary>
    public const double NewJar = 1000;

    /// <summary>A liquid that outgrows its usual room: worth it where it saves more than a changed line and a half.</summary>
    public const double RoomOutgrown = 1.5;

    /// <summary>A wish that gives way by its whole band, when the nearest formula is sought: any other gain is small beside it.</summary>
    public const double BandGivenWay = 100;
}
