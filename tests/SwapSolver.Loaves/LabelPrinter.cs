using System.Globalization;
using SwapSolver.Kitchen.Panels;

namespace SwapSolver.Loaves;

/// <summary>Prints amounts as the laws on labels say, written from their text and not from our data: FDA Food Labeling
/// Guide, Appendix H; FDA on minerals (nearest 10 mg from memory); the Commission's guidance of December 2012; salt
/// included. Where the law leaves a choice, a seeded chance makes it. Halves go up.</summary>
/// <param name="Chance">Makes the choices.</param>
public sealed record LabelPrinter(Random Chance)
{
    /// <summary>The amount of one serving as its line prints it.</summary>
    public string Print(PanelBasis basis, PanelLine line, double amount)
    {
        var exact = (decimal)amount;
        return basis == PanelBasis.UnitedStates ? American(line, exact) : European(line, exact);
    }

    /// <summary>The weight of a serving in the United States (21 CFR 101.9(b)(7), from memory).</summary>
    public static string PrintServing(double grams) => grams switch
    {
        < 2 => Plain(Nearest((decimal)grams, 0.1m)),
        < 5 => Plain(Nearest((decimal)grams, 0.5m)),
        _ => Plain(Nearest((decimal)grams, 1)),
    };

    private string American(PanelLine line, decimal x) => line switch
    {
        PanelLine.EnergyKcal when x < 5 && IsHeads => "0",
        PanelLine.EnergyKcal => Plain(Nearest(x, x <= 50 ? 5 : 10)),
        PanelLine.Fat or PanelLine.SaturatedFat => x < 0.5m ? "0" : Plain(Nearest(x, x < 5 ? 0.5m : 1)),
        PanelLine.Sodium => x < 5 ? "0" : Plain(Nearest(x, x <= 140 ? 5 : 10)),
        PanelLine.Potassium => x < 94 && IsHeads ? "0" : Plain(Nearest(x, 10)),
        PanelLine.Calcium => x < 26 && IsHeads ? "0" : Plain(Nearest(x, 10)),
        PanelLine.Iron => x < 0.36m && IsHeads ? "0" : Plain(Nearest(x, 0.1m)),
        _ when x < 0.5m => IsHeads ? "0" : "<1",
        _ when x < 1 => IsHeads ? "<1" : "1",
        _ => Plain(Nearest(x, 1)),
    };

    private string European(PanelLine line, decimal x) => line switch
    {
        PanelLine.EnergyKcal or PanelLine.EnergyKilojoules => Plain(Nearest(x, 1)),
        PanelLine.Salt when x <= 0.0125m => IsHeads ? "0" : "<0.01",
        PanelLine.Salt => x >= 1 ? WithZeros(Nearest(x, 0.1m), 1) : WithZeros(Nearest(x, 0.01m), 2),
        PanelLine.SaturatedFat when x <= 0.1m => IsHeads ? "0" : "<0.1",
        PanelLine.Sodium or PanelLine.Potassium or PanelLine.Calcium => Significant(x, 3),
        PanelLine.Iron => Significant(x, 2),
        _ when x <= 0.5m && line != PanelLine.SaturatedFat => IsHeads ? "0" : "<0.5",
        _ => x >= 10 ? Plain(Nearest(x, 1)) : WithZeros(Nearest(x, 0.1m), 1),
    };

    private bool IsHeads => Chance.Next(2) == 0;

    private static decimal Nearest(decimal x, decimal step) => Math.Round(x / step, MidpointRounding.AwayFromZero) * step;

    private static string Significant(decimal x, int figures)
    {
        var step = 0.01m;
        while (x >= step * (decimal)Math.Pow(10, figures))
        {
            step *= 10;
        }

        return Plain(Nearest(x, step));
    }

    private static string Plain(decimal x) => x.ToString("0.####", CultureInfo.InvariantCulture);

    /// <summary>A zero at the end is printed or left out.</summary>
    private string WithZeros(decimal x, int decimals) =>
        IsHeads ? Plain(x) : x.ToString(decimals == 1 ? "0.0" : "0.00", CultureInfo.InvariantCulture);
}
