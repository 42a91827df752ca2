namespace SwapSolver.Kitchen.Panels;

/// <summary>A line of a nutrition panel.</summary>
public enum PanelLine
{
    /// <summary>Energy [kcal].</summary>
    EnergyKcal,

    /// <summary>Energy [kJ].</summary>
    EnergyKilojoules,

    /// <summary>Fat [g].</summary>
    Fat,

    /// <summary>Saturated fat [g].</summary>
    SaturatedFat,

    /// <summary>Carbohydrate, with or without fibre by the basis [g].</summary>
    Carbohydrate,

    /// <summary>Fibre [g].</summary>
    Fibre,

    /// <summary>Sugars [g].</summary>
    Sugars,

    /// <summary>Polyols, erythritol among them [g].</summary>
    Polyols,

    /// <summary>Erythritol [g].</summary>
    Erythritol,

    /// <summary>Allulose [g].</summary>
    Allulose,

    /// <summary>Starch [g].</summary>
    Starch,

    /// <summary>Protein [g].</summary>
    Protein,

    /// <summary>Salt [g]: sodium in other words.</summary>
    Salt,

    /// <summary>Sodium [mg].</summary>
    Sodium,

    /// <summary>Potassium [mg].</summary>
    Potassium,

    /// <summary>Calcium [mg].</summary>
    Calcium,

    /// <summary>Iron [mg].</summary>
    Iron,
}
