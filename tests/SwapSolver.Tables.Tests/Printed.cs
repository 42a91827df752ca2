using System.Globalization;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Loaves;

namespace SwapSolver.Tables.Tests;

/// <summary>What a table prints is what became of it.</summary>
internal static class Printed
{
    public static void AssertIsIn(ReferenceRow row, StatedFood food)
    {
        Assert.Equal(row["long_description"], food.Name);
        Assert.Equal(row["ndb_no"], food.UsdaFoodNumber);
        Assert.Equal($"usda-{row["ndb_no"]}", food.Id);
        Assert.All(TestTables.Kept, column =>
        {
            var printed = row[column.Column];
            if (printed.Length == 0)
            {
                Assert.False(food.Figures.ContainsKey(column.Fact), $"{row.Name}: {column.Column} is blank and became a figure");
                return;
            }

            var ours = food.Figures[column.Fact].Range;
            Assert.True((decimal)ours.Typical == decimal.Parse(printed, CultureInfo.InvariantCulture), $"{row.Name}, {column.Column}: {ours.Typical} against {printed} of {row.Source}");
            Assert.True(ours.IsInOrder && ours.Low >= 0);
        });
    }
}
