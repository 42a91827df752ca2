using System.Collections.Immutable;

namespace SwapSolver.Kitchen.Ingredients;

/// <summary>One thing that is known of an ingredient. Data files write it in its unit; sheets hold it per gram.</summary>
public sealed record Fact
{
    private Fact(int index, string id, string unit, double perGram, double most)
    {
        Index = index;
        Id = id;
        Unit = unit;
        PerGramFactor = perGram;
        Most = most;
    }

    /// <summary>Place of the fact in <see cref="All"/>.</summary>
    public int Index { get; }

    /// <summary>Key of the fact in data files, as <c>waterGPer100G</c>.</summary>
    public string Id { get; }

    /// <summary>Unit in data files.</summary>
    public string Unit { get; }

    /// <summary>What turns a data file's figure into an amount per gram.</summary>
    internal double PerGramFactor { get; }

    /// <summary>Highest figure that can be true, in <see cref="Unit"/>.</summary>
    public double Most { get; }

    /// <inheritdoc/>
    public override string ToString() => Id;

    private static Fact Mass(int index, string id) => new(index, id, "g/100 g", 0.01, 100);

    private static Fact Milligrams(int index, string id) => new(index, id, "mg/100 g", 0.00001, 100_000);

    /// <summary>Water [g/100 g].</summary>
    public static readonly Fact Water = Mass(0, "waterGPer100G");

    /// <summary>Protein [g/100 g].</summary>
    public static readonly Fact Protein = Mass(1, "proteinGPer100G");

    /// <summary>Fat [g/100 g].</summary>
    public static readonly Fact Fat = Mass(2, "fatGPer100G");

    /// <summary>Saturated fat [g/100 g].</summary>
    public static readonly Fact SaturatedFat = Mass(3, "saturatedFatGPer100G");

    /// <summary>Carbohydrate by difference, fibre within [g/100 g].</summary>
    public static readonly Fact Carbohydrate = Mass(4, "carbohydrateGPer100G");

    /// <summary>Fibre [g/100 g].</summary>
    public static readonly Fact Fibre = Mass(5, "fibreGPer100G");

    /// <summary>Sugars [g/100 g].</summary>
    public static readonly Fact Sugars = Mass(6, "sugarsGPer100G");

    /// <summary>Polyols, erythritol among them [g/100 g].</summary>
    public static readonly Fact Polyols = Mass(7, "polyolsGPer100G");

    /// <summary>Erythritol [g/100 g].</summary>
    public static readonly Fact Erythritol = Mass(8, "erythritolGPer100G");

    /// <summary>Allulose [g/100 g].</summary>
    public static readonly Fact Allulose = Mass(9, "alluloseGPer100G");

    /// <summary>Starch [g/100 g].</summary>
    public static readonly Fact Starch = Mass(10, "starchGPer100G");

    /// <summary>The part of the carbohydrate figure that is organic acid [g/100 g].</summary>
    public static readonly Fact OrganicAcid = Mass(11, "organicAcidGPer100G");

    /// <summary>Ash [g/100 g].</summary>
    public static readonly Fact Ash = Mass(12, "ashGPer100G");

    /// <summary>Alcohol [g/100 g].</summary>
    public static readonly Fact Alcohol = Mass(13, "alcoholGPer100G");

    /// <summary>Matter outside the proximates, as the acetic acid of vinegar [g/100 g].</summary>
    public static readonly Fact Other = Mass(14, "otherGPer100G");

    /// <summary>Energy [kcal/100 g].</summary>
    public static readonly Fact Energy = new(15, "energyKcalPer100G", "kcal/100 g", 0.01, 910);

    /// <summary>Sodium [mg/100 g].</summary>
    public static readonly Fact Sodium = Milligrams(16, "sodiumMgPer100G");

    /// <summary>Potassium [mg/100 g].</summary>
    public static readonly Fact Potassium = Milligrams(17, "potassiumMgPer100G");

    /// <summary>Calcium [mg/100 g].</summary>
    public static readonly Fact Calcium = Milligrams(18, "calciumMgPer100G");

    /// <summary>Iron [mg/100 g].</summary>
    public static readonly Fact Iron = Milligrams(19, "ironMgPer100G");

    /// <summary>Water that one gram binds in a batter [g/g].</summary>
    public static readonly Fact WaterBound = new(20, "waterBoundBatterGPerG", "g/g", 1, 100);

    /// <summary>Water that one gram holds in the centrifuge [g/g].</summary>
    public static readonly Fact WaterBoundCentrifuge = new(21, "waterBoundCentrifugeGPerG", "g/g", 1, 200);

    /// <summary>Acid to the soda end point [mmol H+/g].</summary>
    public static readonly Fact Acid = new(22, "acidMmolPerG", "mmol/g", 1, 50);

    /// <summary>Base as bicarbonate [mmol HCO3-/g].</summary>
    public static readonly Fact Base = new(23, "baseMmolPerG", "mmol/g", 1, 50);

    /// <summary>Share of the protein that coagulates on heating and sets a crumb [1].</summary>
    public static readonly Fact SettingShareOfProtein = new(24, "settingShareOfProtein", "1", 1, 1);

    /// <summary>Grams of psyllium husk powder that one gram stands for [g/g].</summary>
    public static readonly Fact GelStrength = new(25, "gelStrengthPerG", "g/g", 1, 20);

    /// <summary>Sweetness, sucrose being 1 [g/g].</summary>
    public static readonly Fact Sweetness = new(26, "sweetnessPerG", "g/g", 1, 20_000);

    /// <summary>Sugar that a baker's yeast can eat within one rise, as hexose [g/100 g].</summary>
    public static readonly Fact Fermentable = new(27, "fermentableGPer100G", "g/100 g", 0.01, 110);

    /// <summary>Gas that one gram of yeast can make in one rise [mmol CO2/g].</summary>
    public static readonly Fact YeastGas = new(28, "yeastGasMmolPerG", "mmol/g", 1, 100);

    /// <summary>Price [money/kg], in whatever money the kitchen counts. No file states it: it is left to the kitchen.</summary>
    public static readonly Fact Price = new(29, "pricePerKg", "money/kg", 0.001, 1_000_000);

    /// <summary>Every fact, in the order of <see cref="Index"/>.</summary>
    public static readonly ImmutableArray<Fact> All =
    [
        Water, Protein, Fat, SaturatedFat, Carbohydrate, Fibre, Sugars, Polyols, Erythritol, Allulose, Starch,
        OrganicAcid, Ash, Alcohol, Other, Energy, Sodium, Potassium, Calcium, Iron, WaterBound,
        WaterBoundCentrifuge, Acid, Base, SettingShareOfProtein, GelStrength, Sweetness, Fermentable, YeastGas, Price,
    ];
}
