namespace SwapSolver.Forecasts;

/// <summary>
/// Looks for the rest of a solution close to where one that hardly differs came to rest, by straight lines that are mended with each
/// step (Broyden's for two figures, the secant for one): a few steps, where bracketed roots within bracketed roots take dozens.
/// </summary>
/// <param name="charges">Charge left over, ionic strength and undissolved bitartrate at a pH and an ionic strength [mol/kg].</param>
/// <param name="most">Ionic strength at which it is held [mol/kg].</param>
internal sealed class NearbySolution(Func<double, double, (double Sum, double IonicStrength, double SolidBitartrate)> charges, double most)
{
    /// <summary>How far from the other it is looked for: the ionic strength by what share of it [1], the pH by how much [pH].</summary>
    private const double Alike = 0.1, Far = 0.3;

    /// <summary>A step so short is the last [pH, mol/kg]: the next would be shorter by thousands.</summary>
    private const double Accuracy = 1e-11;

    /// <summary>By how much each figure is moved to see what hangs on it [pH, mol/kg].</summary>
    private const double Nudge = 1e-4;

    private const int MostSteps = 12;

    /// <summary>The solution at rest; null where the steps do not lead to one close by.</summary>
    /// <param name="like">The other solution, at rest.</param>
    public SolvedSolution? From(SolvedSolution like) => like.IonicStrength < most ? OfBoth(like) : OfPh(like);

    /// <summary>Both as salty as is counted: the pH alone.</summary>
    private SolvedSolution? OfPh(SolvedSolution like)
    {
        var (ph, sum) = (like.Ph, charges(like.Ph, most).Sum);
        var byPh = (charges(ph + Nudge, most).Sum - sum) / Nudge;
        for (var step = 0; step < MostSteps; step++)
        {
            var by = -sum / byPh;
            ph += by;
            if (!(Math.Abs(ph - like.Ph) <= Far))
            {
                return null;
            }

            var (sumNow, strength, solid) = charges(ph, most);
            if (Math.Abs(by) < Accuracy)
            {
                return strength >= most ? new SolvedSolution(ph, most, sumNow, solid) : null;
            }

            byPh = (sumNow - sum) / by;
            sum = sumNow;
        }

        return null;
    }

    private SolvedSolution? OfBoth(SolvedSolution like)
    {
        var (ph, strength) = (like.Ph, like.IonicStrength);
        var (sum, excess, _) = Off(ph, strength);
        var (sumMoved, excessMoved, _) = Off(ph + Nudge, strength);
        var (sumSalted, excessSalted, _) = Off(ph, strength + Nudge);
        // What hangs on what: charge left over and excess of ionic strength, each by pH and by ionic strength.
        var (sumByPh, excessByPh) = ((sumMoved - sum) / Nudge, (excessMoved - excess) / Nudge);
        var (sumByStrength, excessByStrength) = ((sumSalted - sum) / Nudge, (excessSalted - excess) / Nudge);
        for (var step = 0; step < MostSteps; step++)
        {
            var determinant = (sumByPh * excessByStrength) - (sumByStrength * excessByPh);
            var byPh = ((sumByStrength * excess) - (excessByStrength * sum)) / determinant;
            var byStrength = ((excessByPh * sum) - (sumByPh * excess)) / determinant;
            (ph, strength) = (ph + byPh, strength + byStrength);
            if (!(Math.Abs(ph - like.Ph) <= Far && Math.Abs(strength - like.IonicStrength) <= Alike * like.IonicStrength && strength < most))
            {
                return null;
            }

            (sum, excess, var solid) = Off(ph, strength);
            if (Math.Abs(byPh) < Accuracy && Math.Abs(byStrength) < Accuracy)
            {
                return new SolvedSolution(ph, strength, sum, solid);
            }

            // Had the lines been right, both would be nothing here.
            var length = (byPh * byPh) + (byStrength * byStrength);
            sumByPh += sum * byPh / length;
            sumByStrength += sum * byStrength / length;
            excessByPh += excess * byPh / length;
            excessByStrength += excess * byStrength / length;
        }

        return null;
    }

    /// <summary>How far a pH and an ionic strength are from rest: charge left over, and the ionic strength beyond the one that was taken.</summary>
    private (double Sum, double Excess, double SolidBitartrate) Off(double ph, double strength)
    {
        var (sum, found, solid) = charges(ph, strength);
        return (sum, found - strength, solid);
    }
}
