namespace SwapSolver.Solving.Tests;

/// <summary>Acid and base of pure compounds by their molar masses, apart from the pantry's figures. Molar masses are
/// worked out from the IUPAC abridged atomic masses (H 1.008, C 12.011, N 14.007, O 15.999, Na 22.990, K 39.098).</summary>
internal static class Molecules
{
    /// <summary>Protons to the soda end point and molar mass [g/mol], with the share of the compound in what is weighed.</summary>
    private static readonly Dictionary<string, (int Protons, double MolarMass, double Share)> Acids = new()
    {
        ["cream-of-tartar"] = (1, 188.177, 1), // KC4H5O6: 39.098 + 4 x 12.011 + 5 x 1.008 + 6 x 15.999
        ["tartaric-acid"] = (2, 150.086, 1), // C4H6O6
        ["citric-acid"] = (3, 192.123, 1), // C6H8O7
        ["malic-acid"] = (2, 134.087, 1), // C4H6O5
        ["glucono-delta-lactone"] = (1, 178.140, 1), // C6H10O6, one acid group once its ring has opened
        ["vinegar-distilled"] = (1, 60.052, 0.05), // C2H4O2 at five percent, which is what the label says
        ["vinegar-cider"] = (1, 60.052, 0.05),
    };

    private static readonly Dictionary<string, double> Bases = new()
    {
        ["baking-soda"] = 84.006, // NaHCO3: 22.990 + 1.008 + 12.011 + 3 x 15.999
        ["potassium-bicarbonate"] = 100.114, // KHCO3
        ["ammonium-bicarbonate"] = 79.055, // NH4HCO3
    };

    /// <summary>Acid of one gram [mmol H+/g]; null for what is no pure compound.</summary>
    public static double? Acid(string id) =>
        Acids.TryGetValue(id, out var acid) ? 1000 * acid.Protons * acid.Share / acid.MolarMass : null;

    /// <summary>Base of one gram [mmol HCO3-/g]; null for what is no pure compound.</summary>
    public static double? Base(string id) => Bases.TryGetValue(id, out var molarMass) ? 1000 / molarMass : null;
}
