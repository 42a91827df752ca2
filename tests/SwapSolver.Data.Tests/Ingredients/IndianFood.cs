using System.Globalization;

namespace SwapSolver.Data.Tests.Ingredients;

/// <summary>One food of the Indian tables.</summary>
/// <param name="Cells">Cells by the key of their column.</param>
internal sealed record IndianFood(IReadOnlyDictionary<string, string> Cells)
{
    /// <summary>The food's code; its letter is its group.</summary>
    public string Code => Cells["code"];

    /// <summary>The food's name.</summary>
    public string Name => Cells["name"];

    /// <summary>Regions of India that samples were bought in.</summary>
    public int Regions => int.Parse(Cells["regn"], CultureInfo.InvariantCulture);

    /// <summary>A nutrient's mean and standard deviation [g per 100 g].</summary>
    public Spread this[string key] => new(Number(key), Number($"{key}_e"));

    /// <summary>Carbohydrate with its fibre: what water, protein, fat and ash leave of 100 g.</summary>
    public Spread Carbohydrate => Rest("water", "protcnt", "fatce", "ash");

    /// <summary>Carbohydrate without its fibre, worked out as the tables do; they print 0 for eggs and lemon juice.</summary>
    public Spread AvailableCarbohydrate => Rest("water", "protcnt", "fatce", "ash", "fibtg");

    private Spread Rest(params string[] parts) => new(
        100 - parts.Sum(part => this[part].Mean),
        Math.Sqrt(parts.Sum(part => this[part].Deviation * this[part].Deviation)));

    private double Number(string key) => double.Parse(Cells[key], CultureInfo.InvariantCulture);

    /// <summary>A mean and its standard deviation.</summary>
    internal readonly record struct Spread(double Mean, double Deviation)
    {
        /// <summary>Both in another unit.</summary>
        public static Spread operator *(Spread spread, double factor) => new(spread.Mean * factor, spread.Deviation * factor);
    }
}
