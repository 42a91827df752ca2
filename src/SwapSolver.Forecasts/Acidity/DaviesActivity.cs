using SwapSolver.Kitchen.Acids;

namespace SwapSolver.Forecasts;

/// <summary>Activity coefficients by the Davies equation at one ionic strength. Good to an ionic strength of about 0.5 mol/kg.</summary>
internal readonly record struct DaviesActivity
{
    private readonly double perSquare;

    /// <summary>The equation at an ionic strength.</summary>
    /// <param name="constants">Its constants.</param>
    /// <param name="ionicStrength">Ionic strength [mol/kg], 0 or more.</param>
    public DaviesActivity(WaterChemistry constants, double ionicStrength)
    {
        var root = Math.Sqrt(ionicStrength);
        perSquare = -constants.DaviesSlope.Range.Typical
            * ((root / (1 + root)) - (constants.DaviesTerm.Range.Typical * ionicStrength));
    }

    /// <summary>Decimal logarithm of the activity coefficient of an ion of a charge [1]; 0 for what has no charge.</summary>
    public double Log(int charge) => perSquare * charge * charge;
}
