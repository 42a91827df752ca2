using System.Globalization;
using System.Xml.Linq;
using SwapSolver.Cards.Pictures;
using SwapSolver.Cards.Texts;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Kitchen.Wording;
using SwapSolver.Loaves;

namespace SwapSolver.Cards.Tests;

public sealed class PictureTests
{
    private static readonly CardWords Words = new(TestLabels.Phrases, TestCards.Room.Dials, Locales.Usual);

    [Fact]
    public void A_reading_is_drawn_within_its_box_where_it_is_inside_and_beside_it_where_it_is_not()
    {
        var reading = TestCards.Of(Loaf.Walnut, pictures: true).Readings.First(one => one.Band is { Low: not null, High: not null });
        foreach (var (value, drawn) in new[] { (reading.Band.Low!.Value, 0.0), (reading.Band.High!.Value, 1.0), (new Level(reading.Band.High.Value.Value * 1.1), 1.2), (new Level(reading.Band.Low.Value.Value * 0.9), -0.2) })
        {
            var picture = new ReadingsPicture(Words).Of([reading with { Value = value }])!;
            var box = Single(picture.Drawing, "rect");
            var middle = Single(picture.Drawing, "polygon").Attribute("points")!.Value.Split(' ', ',').Where((_, place) => place % 2 == 0).Average(Figure);
            var share = (middle - Figure(box.Attribute("x")!.Value)) / Figure(box.Attribute("width")!.Value);

            Assert.True(drawn is 0 or 1 ? Math.Abs(share - drawn) < 0.02 : drawn > 1 ? share > 1 : share < 0, $"{value} is drawn at {share} of the box");
            Assert.Equal(drawn is 0 or 1 ? "inside" : drawn > 1 ? "too high" : "too low", picture.Rows[0][3]);
        }
    }

    [Fact]
    public void Bars_of_net_carbs_are_as_long_as_their_shares_and_add_up_to_the_slice()
    {
        var balance = TestKitchen.Bakehouse.Balances.NetCarbohydrate;
        var picture = new NetCarbohydratePicture(Words, balance).Of(Loaf.Walnut)!;
        var filled = picture.Drawing.Descendants().Where(part => part.Name.LocalName == "rect" && part.Attribute("fill")!.Value != "none").Select(part => Figure(part.Attribute("width")!.Value)).ToList();
        var outline = picture.Drawing.Descendants().Where(part => part.Name.LocalName == "rect" && part.Attribute("fill")!.Value == "none").Select(part => Figure(part.Attribute("width")!.Value)).ToList();

        Assert.Equal(outline[0], filled.Sum(), outline[0] * 0.02);
        Assert.Equal(filled.OrderDescending(), filled);
        Assert.Equal(TestCards.Of(Loaf.Walnut).Loaf.NetCarbohydrate!.Value.Value / 12, picture.Rows.Sum(row => Figure(row[1])), 0.005 * picture.Rows.Length + 0.02);
    }

    [Fact]
    public void Nothing_is_told_by_colour_and_every_picture_has_a_table_behind_it()
    {
        var card = TestCards.Of(Loaf.Walnut, pictures: true);
        var svg = XElement.Parse(TestCards.Printer.Svg(card));
        var colours = svg.DescendantsAndSelf().SelectMany(part => part.Attributes()).Where(attribute => attribute.Name.LocalName is "fill" or "stroke").Select(attribute => attribute.Value).Distinct();

        Assert.Empty(colours.Except(["currentColor", "none"]));
        Assert.Equal(2, new CardPictures(TestCards.Room).Of(card).Length);
        Assert.All(new CardPictures(TestCards.Room).Of(card), picture =>
        {
            Assert.NotEmpty(picture.Rows);
            Assert.All(picture.Rows, row => Assert.Equal(picture.Columns.Length, row.Length));
            Assert.NotEmpty(Single(picture.Drawing, "title").Value);
        });
    }

    [Fact]
    public void A_loaf_without_carbohydrate_has_no_picture_of_it() =>
        Assert.Null(new NetCarbohydratePicture(Words, TestKitchen.Bakehouse.Balances.NetCarbohydrate).Of(Bowl.Of(("water", 100), ("salt", 1))));

    private static XElement Single(XElement drawing, string name) => drawing.Descendants().Single(part => part.Name.LocalName == name);

    private static double Figure(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
