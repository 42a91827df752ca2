using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts;

/// <summary>By how much leavening is cut at a height so that its gas fills the same room.</summary>
public static class LeaveningCut
{
    /// <summary>The cut [% of soda and powder, with their acid]: the share by which the air is thinner. Null below the height from which advice starts.</summary>
    /// <param name="altitude">Height above the sea [m], -500 to 6,000.</param>
    /// <param name="practice">What the forecast goes by.</param>
    public static PercentRange? At(Metres altitude, RisePractice practice)
    {
        if (altitude.Value < practice.CutFromMetres.Range.Typical)
        {
            return null;
        }

        // A crumb sets at the same heat everywhere, so by the gas law its gas takes room as the pressure falls.
        var cut = 100 * (1 - (StandardAtmosphere.PressureAt(altitude).Value / Pascals.Atmosphere.Value));
        var scatter = practice.CutTolerancePercent.Range.Typical / 100;
        return new PercentRange(new Percent(cut * (1 - scatter)), new Percent(cut), new Percent(cut * (1 + scatter)));
    }
}
