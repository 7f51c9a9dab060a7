using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using TieRodCalc.Text;
using UnitsNet;

namespace TieRodCalc.Cli.Tests;

/// <summary>Toe, turns and the warnings about them in words.</summary>
public sealed class ToeFormatTests
{
    [Theory]
    [InlineData(0.14921, "0.149 deg toe-in")]
    [InlineData(-0.14921, "0.149 deg toe-out")]
    [InlineData(0.0004, "0.000 deg")]
    [InlineData(-0.0004, "0.000 deg")]
    [InlineData(-0.0005, "0.001 deg toe-out")]
    public void An_angle_has_its_direction_behind_it(double degrees, string shown) =>
        Assert.Equal(shown, ToeFormat.Of(Angle.FromDegrees(degrees)));

    [Theory]
    [InlineData(3.175, LengthDisplay.Inch, "0.125 in (1/8, 3.18 mm) toe-in")]
    [InlineData(-3.175, LengthDisplay.Millimeter, "3.18 mm (1/8 in) toe-out")]
    [InlineData(0, LengthDisplay.Inch, "0.000 in (0, 0.00 mm)")]
    [InlineData(-0.004, LengthDisplay.Millimeter, "0.00 mm (~0 in)")]
    public void So_has_a_length(double mm, LengthDisplay unit, string shown) =>
        Assert.StartsWith(shown.Replace("~0 in", "0 in", StringComparison.Ordinal), ToeFormat.Of(Length.FromMillimeters(mm), unit), StringComparison.Ordinal);

    [Theory]
    [InlineData(0.05, "0.050 deg more toe-out than wanted")]
    [InlineData(-0.05, "0.050 deg more toe-in than wanted")]
    [InlineData(0.0002, "as wanted")]
    public void What_is_left_over_is_told_as_what_there_is_too_much_of(double wantedLessReached, string shown) =>
        Assert.Equal(shown, ToeFormat.LeftOver(Angle.FromDegrees(wantedLessReached)));

    [Fact]
    public void The_same_of_a_length()
    {
        Assert.Equal(
            "1.00 mm (~3/64 in) more toe-in than wanted", ToeFormat.LeftOver(Length.FromMillimeters(-1), LengthDisplay.Millimeter));
        Assert.Equal("as wanted", ToeFormat.LeftOver(Length.FromMillimeters(0.004), LengthDisplay.Millimeter));
    }

    [Theory]
    [InlineData(0.125, "1/8 turn")]
    [InlineData(-0.25, "1/4 turn")]
    [InlineData(1, "1 turn")]
    [InlineData(1.375, "1 3/8 turns")]
    [InlineData(2, "2 turns")]
    [InlineData(0, "0 turns")]
    public void Turns_are_counted_in_lowest_terms(double turns, string shown) => Assert.Equal(shown, ToeFormat.Turns(turns));

    [Theory]
    [InlineData(0.75, "3/4 flat")]
    [InlineData(1.5, "1 1/2 flats")]
    public void So_are_flats(double flats, string shown) => Assert.Equal(shown, ToeFormat.Flats(flats));

    [Fact]
    public void Exact_turns_are_decimals()
    {
        Assert.Equal("0.20 turns", ToeFormat.Exact(-0.204));
        Assert.Equal("1.2 flats", ToeFormat.ExactFlats(1.224));
        Assert.Equal("2.85 turns", ToeFormat.Left(2.8599));
        Assert.Equal("3.00 turns", ToeFormat.Left(2.9999999999));
        Assert.Equal("0.286 deg", ToeFormat.Degrees(Angle.FromDegrees(-0.2864)));
    }

    [Fact]
    public void Every_warning_has_a_sentence_that_names_its_wheel()
    {
        ToeSentences sentences = new(LengthDisplay.Millimeter);
        HashSet<string> said = [];
        foreach (ToeWarningCode code in Enum.GetValues<ToeWarningCode>())
        {
            ToeWarning left = new(code, CarSide.Left, RodSide.Outer, Length.FromMillimeters(1.23));
            string sentence = sentences.Of(left);
            Assert.True(said.Add(sentence));
            bool ofCar = code is ToeWarningCode.HalvesAssumed or ToeWarningCode.SteeringWheelLeavesCenter;
            Assert.Equal(!ofCar, sentence.Contains("left wheel", StringComparison.Ordinal));
            Assert.Equal(!ofCar, sentences.Of(left with { Side = CarSide.Right }).Contains("right wheel", StringComparison.Ordinal));
            Assert.Equal(!ofCar, sentences.Of(left, bothWheels: true).Contains("both wheels", StringComparison.Ordinal));
            Assert.Equal(
                code == ToeWarningCode.LittleRoomForTheNut, sentence.Contains("outer end", StringComparison.Ordinal) && sentence.Contains("1.23 mm", StringComparison.Ordinal));
        }

        Assert.Throws<ArgumentOutOfRangeException>(() => sentences.Of(new ToeWarning((ToeWarningCode)99)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ToeSentences.SeenFrom((TurnedPart)99));
    }
}
