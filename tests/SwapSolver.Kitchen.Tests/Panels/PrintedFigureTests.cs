using CsCheck;
using SwapSolver.Kitchen.Panels;

namespace SwapSolver.Kitchen.Tests.Panels;

public sealed class PrintedFigureTests
{
    [Theory]
    [InlineData("3.5", "3.5", 3.5, 1, false)]
    [InlineData("3,5", "3.5", 3.5, 1, false)]
    [InlineData(" 10.0 ", "10.0", 10, 1, false)]
    [InlineData("0", "0", 0, 0, false)]
    [InlineData("<0.5", "<0.5", 0.5, 1, true)]
    [InlineData("< 0,5", "<0.5", 0.5, 1, true)]
    [InlineData("less than 1", "<1", 1, 0, true)]
    [InlineData("Less than 5", "<5", 5, 0, true)]
    [InlineData("1046", "1046", 1046, 0, false)]
    [InlineData("1.046", "1.046", 1.046, 3, false)]
    public void A_figure_is_read_as_it_is_printed_with_its_digits(string text, string plain, double value, int decimals, bool isLessThan)
    {
        Assert.True(PrintedFigure.TryRead(text, out var figure));
        Assert.Equal((plain, value, decimals, isLessThan), (figure.Text, figure.Value.Value, figure.Decimals, figure.IsLessThan));
    }

    [Theory]
    [InlineData("")]
    [InlineData("-1")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("1e9")]
    [InlineData("3.5 g")]
    [InlineData("1,046")]
    [InlineData("1,046.5")]
    [InlineData("1.2.3")]
    [InlineData(".5")]
    [InlineData("5.")]
    [InlineData("<")]
    [InlineData("<0")]
    [InlineData("less than")]
    [InlineData("12345678")]
    [InlineData("1.23456")]
    [InlineData("٣")]
    public void What_is_no_figure_is_refused(string text) => Assert.False(PrintedFigure.TryRead(text, out _));

    [Fact]
    public void Any_text_is_answered() =>
        Gen.String.Sample(text => Assert.Equal(PrintedFigure.TryRead(text, out var figure), figure is { Value.Value: >= 0 }));
}
