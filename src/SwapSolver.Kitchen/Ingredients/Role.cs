namespace SwapSolver.Kitchen.Ingredients;

/// <summary>What an ingredient does in a formula.</summary>
public enum Role
{
    /// <summary>Flours, meals, starches and fibres: what baker's percentages are counted on.</summary>
    Flour,

    /// <summary>Psyllium, gums and other gel formers.</summary>
    Gel,

    /// <summary>Eggs and proteins used in their place.</summary>
    Egg,

    /// <summary>Water, milks and drinks.</summary>
    Liquid,

    /// <summary>Fats, oils, nut butters and cheeses.</summary>
    Fat,

    /// <summary>Acids, dry and liquid.</summary>
    Acid,

    /// <summary>Soda and its like.</summary>
    Base,

    /// <summary>Baking powders: base and acid in one.</summary>
    LeaveningBlend,

    /// <summary>Sugars and what stands in for them.</summary>
    Sweetener,

    /// <summary>Salt and what stands in for it.</summary>
    Salt,

    /// <summary>Spices, fruit and the like.</summary>
    Flavour,

    /// <summary>Baker's yeast.</summary>
    Yeast,
}
