namespace SwapSolver.Kitchen.Labels;

/// <summary>What a line of a label speaks of. Its id in data and answers is its name with a small first letter.</summary>
public enum Nutrient
{
    /// <summary>Energy [kcal].</summary>
    EnergyKcal,

    /// <summary>Energy [kJ].</summary>
    EnergyKilojoules,

    /// <summary>Fat [g].</summary>
    Fat,

    /// <summary>Saturated fat [g].</summary>
    SaturatedFat,

    /// <summary>Trans fat [g]; no ingredient here states it.</summary>
    TransFat,

    /// <summary>Cholesterol [mg]; no ingredient here states it.</summary>
    Cholesterol,

    /// <summary>Sodium [mg].</summary>
    Sodium,

    /// <summary>Salt, which is sodium in other words [g].</summary>
    Salt,

    /// <summary>Carbohydrate as the law counts it [g].</summary>
    Carbohydrate,

    /// <summary>Fibre [g].</summary>
    Fibre,

    /// <summary>Sugars, added or not [g].</summary>
    Sugars,

    /// <summary>Added sugars [g]; no ingredient here states them.</summary>
    AddedSugars,

    /// <summary>Polyols, erythritol among them [g].</summary>
    Polyols,

    /// <summary>Starch [g].</summary>
    Starch,

    /// <summary>Protein [g].</summary>
    Protein,

    /// <summary>Vitamin D [mcg]; no ingredient here states it.</summary>
    VitaminD,

    /// <summary>Calcium [mg].</summary>
    Calcium,

    /// <summary>Iron [mg].</summary>
    Iron,

    /// <summary>Potassium [mg].</summary>
    Potassium,
}
