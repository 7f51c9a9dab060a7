using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Steering;
using TieRodCalc.Text;

namespace TieRodCalc.Tests.Text;

public class ValueTextTests
{
    [Theory]
    [InlineData("830 MPa", 830)]
    [InlineData("830MPa", 830)]
    [InlineData("1.2 GPa", 1200)]
    [InlineData("120 ksi", 827.3708751801634)]
    [InlineData("120000 psi", 827.3708751801634)]
    public void A_stress_is_read(string text, double megapascals) =>
        Assert.Equal(megapascals, ValueText.ParseStress(text).Value.Megapascals, 9);

    [Theory]
    [InlineData("830", 3, 0, "the unit is missing: write a stress such as 120 ksi or 830 MPa")]
    [InlineData("830 mPa", 4, 3, "write MPa, not mPa")]
    [InlineData("120 KSI", 4, 3, "write ksi, not KSI")]
    [InlineData("830 N/mm2", 4, 1, "expected the unit of a stress (ksi, psi, MPa, GPa), found 'N'")]
    [InlineData("830 bar", 4, 3, "expected the unit of a stress")]
    [InlineData("0 MPa", 0, 5, "must be above zero")]
    [InlineData("0.0099 MPa", 0, 10, "a stress of at least 0.01 MPa is read")]
    [InlineData("1 psi", 0, 5, "a stress of at least 0.01 MPa is read")]
    [InlineData(" 0.00 ksi", 1, 8, "must be above zero")]
    [InlineData("-830 MPa", 0, 1, "without a sign")]
    [InlineData("830,5 MPa", 0, 5, "decimal sign is a point")]
    [InlineData("1/2 MPa", 0, 3, "with inches only")]
    [InlineData("11 GPa", 0, 6, "at most 10 GPa")]
    [InlineData("99999999999999999999 GPa", 0, 24, "at most 10 GPa")]
    [InlineData("830 MPa ± 1 MPa", 8, 1, "nothing more was expected after the stress")]
    [InlineData("", 0, 0, "expected a stress such as 120 ksi or 830 MPa")]
    public void A_bad_stress_is_a_fault_at_its_place(string text, int offset, int length, string phrase) =>
        Expect.Fault(ValueText.ParseStress(text).Fault, offset, length, phrase);

    [Theory]
    [InlineData("10 kN", 10000)]
    [InlineData("800 N", 800)]
    [InlineData("2000 lbf", 8896.443230521)]
    [InlineData("0.001 kN", 1)]
    public void A_force_is_read(string text, double newtons) =>
        Assert.Equal(newtons, ValueText.ParseForce(text).Value.Newtons, 9);

    [Theory]
    [InlineData("10", 2, 0, "write a force such as 10 kN")]
    [InlineData("10 KN", 3, 2, "write kN, not KN")]
    [InlineData("10 kg", 3, 2, "expected the unit of a force (kN, N, lbf)")]
    [InlineData("0 N", 0, 3, "must be above zero")]
    [InlineData("10001 kN", 0, 8, "at most 10000 kN")]
    public void A_bad_force_is_a_fault_at_its_place(string text, int offset, int length, string phrase) =>
        Expect.Fault(ValueText.ParseForce(text).Fault, offset, length, phrase);

    [Theory]
    [InlineData("90 deg", 90)]
    [InlineData("90°", 90)]
    [InlineData("90 °", 90)]
    [InlineData("-4.5 deg", -4.5)]
    [InlineData("\u22124.5°", -4.5)]
    [InlineData("+4 deg", 4)]
    [InlineData("0 deg", 0)]
    [InlineData("-360 deg", -360)]
    public void An_angle_is_read(string text, double degrees) => Assert.Equal(degrees, ValueText.ParseAngle(text).Value.Degrees);

    [Theory]
    [InlineData("90", 2, 0, "the unit is missing")]
    [InlineData("-90", 3, 0, "the unit is missing")]
    [InlineData("1.5 rad", 4, 3, "expected the unit of an angle (deg, °)")]
    [InlineData("90 degrees", 3, 7, "expected the unit of an angle")]
    [InlineData("361 deg", 0, 7, "at most 360 deg")]
    [InlineData("1/2 deg", 0, 3, "with inches only")]
    [InlineData("4 deg 30", 6, 2, "nothing more was expected after the angle")]
    public void A_bad_angle_is_a_fault_at_its_place(string text, int offset, int length, string phrase) =>
        Expect.Fault(ValueText.ParseAngle(text).Fault, offset, length, phrase);

    [Theory]
    [InlineData("0.4 kg", 0.4)]
    [InlineData("400 g", 0.4)]
    [InlineData("0.9 lb", 0.408233133)]
    public void A_mass_is_read(string text, double kilograms) => Assert.Equal(kilograms, ValueText.ParseMass(text).Value.Kilograms);

    [Theory]
    [InlineData("0.4", 3, 0, "the unit is missing")]
    [InlineData("0.4 Kg", 4, 2, "write kg, not Kg")]
    [InlineData("0.9 lbs", 4, 3, "expected the unit of a mass (kg, g, lb)")]
    [InlineData("1001 kg", 0, 7, "at most 1000 kg")]
    [InlineData("0 g", 0, 3, "must be above zero")]
    public void A_bad_mass_is_a_fault_at_its_place(string text, int offset, int length, string phrase) =>
        Expect.Fault(ValueText.ParseMass(text).Fault, offset, length, phrase);

    [Theory]
    [InlineData("12.50 USD", "12.50", "USD")]
    [InlineData("12 EUR", "12", "EUR")]
    [InlineData("0.1234 CHF", "0.1234", "CHF")]
    [InlineData("0 USD", "0", "USD")]
    [InlineData("12.50USD", "12.50", "USD")]
    public void A_price_is_read_with_its_decimals(string text, string amount, string currency)
    {
        Price price = ValueText.ParsePrice(text).Value;
        Assert.Equal((amount, currency), (price.Amount.ToString(System.Globalization.CultureInfo.InvariantCulture), price.Currency));
    }

    [Theory]
    [InlineData("12.50", 5, 0, "the currency is missing: write 12.50 USD")]
    [InlineData("$12.50", 0, 1, "expected a price such as 12.50 USD, found '$'")]
    [InlineData("USD 12.50", 0, 3, "expected a price such as 12.50 USD")]
    [InlineData("12.50 usd", 6, 3, "three capital letters")]
    [InlineData("12.50 US", 6, 2, "three capital letters")]
    [InlineData("12.50 DOLLARS", 6, 7, "three capital letters")]
    [InlineData("12.50 €", 6, 1, "three capital letters")]
    [InlineData("12.50 ÜSD", 6, 3, "three capital letters")]
    [InlineData("12.12345 USD", 0, 8, "at most 4 decimals")]
    [InlineData("12,50 USD", 0, 5, "decimal sign is a point")]
    [InlineData("-1 USD", 0, 1, "without a sign")]
    [InlineData("1/2 USD", 0, 3, "with inches only")]
    [InlineData("2000000000 USD", 0, 10, "at most 1000000000")]
    [InlineData("12.50 USD net", 10, 3, "nothing more was expected after the price")]
    public void A_bad_price_is_a_fault_at_its_place(string text, int offset, int length, string phrase) =>
        Expect.Fault(ValueText.ParsePrice(text).Fault, offset, length, phrase);

    [Theory]
    [InlineData("hex 1 in", OutsideShape.Hexagon, 25.4, 0)]
    [InlineData("HEX 1-1/8\"", OutsideShape.Hexagon, 28.575, 0)]
    [InlineData("round 25 mm ± 0.1 mm", OutsideShape.Round, 25, 0.1)]
    public void An_outside_is_read(string text, OutsideShape shape, double across, double plusMinus)
    {
        Outside outside = ValueText.ParseOutside(text).Value;
        Assert.Equal((shape, across, plusMinus), (outside.Shape, outside.Across.Mm, outside.Across.PlusMinusMm));
    }

    [Theory]
    [InlineData("1 in", 0, 1, "expected hex or round and then the size")]
    [InlineData("1 in hex", 0, 1, "expected hex or round and then the size")]
    [InlineData("square 1 in", 0, 6, "expected hex or round")]
    [InlineData("", 0, 0, "expected hex or round")]
    [InlineData("hex", 3, 0, "expected a length")]
    [InlineData("hex 1", 5, 0, "the unit is missing")]
    [InlineData("hex 0 in", 4, 4, "above zero")]
    [InlineData("hex -1 in", 4, 1, "without a sign")]
    [InlineData("hex 1 in round", 9, 5, "nothing more was expected after the outside")]
    public void A_bad_outside_is_a_fault_at_its_place(string text, int offset, int length, string phrase) =>
        Expect.Fault(ValueText.ParseOutside(text).Fault, offset, length, phrase);

    [Theory]
    [InlineData("1.5 diameters", 1.5)]
    [InlineData("1 diameter", 1)]
    [InlineData("1.5 D", 1.5)]
    [InlineData("2D", 2)]
    public void An_engagement_in_diameters_is_read(string text, double diameters)
    {
        EngagementRule rule = ValueText.ParseEngagement(text).Value;
        Assert.Equal(diameters, rule.InDiameters);
        Assert.Null(rule.AsLength);
    }

    [Theory]
    [InlineData("28 mm", 28)]
    [InlineData("1 1/8 in", 28.575)]
    public void An_engagement_as_a_length_is_read(string text, double millimeters)
    {
        EngagementRule rule = ValueText.ParseEngagement(text).Value;
        Assert.Equal(millimeters, rule.AsLength!.Value.Millimeters);
        Assert.Null(rule.InDiameters);
    }

    [Theory]
    [InlineData("1.5", 3, 0, "the unit is missing: write 1.5 diameters, or a length")]
    [InlineData("1.5 dia", 4, 3, "expected a unit (diameters, in, mm or cm), found 'dia'")]
    [InlineData("1 1/2 D", 0, 5, "write diameters as a decimal")]
    [InlineData("0 D", 0, 3, "above zero and at most 20 diameters")]
    [InlineData("21 diameters", 0, 12, "at most 20 diameters")]
    [InlineData("0 mm", 0, 4, "must be above zero")]
    [InlineData("-1.5 D", 0, 1, "without a sign")]
    [InlineData("28 mm ± 1 mm", 6, 6, "a tolerance belongs to dimensions of parts")]
    [InlineData("1.5 D x", 6, 1, "nothing more was expected after the engagement")]
    public void A_bad_engagement_is_a_fault_at_its_place(string text, int offset, int length, string phrase) =>
        Expect.Fault(ValueText.ParseEngagement(text).Fault, offset, length, phrase);

    [Theory]
    [InlineData("1/8 in in", 3.175)]
    [InlineData("1/8 in out", -3.175)]
    [InlineData("1/8\" in", 3.175)]
    [InlineData("1/8\" out", -3.175)]
    [InlineData("1/8 inch in", 3.175)]
    [InlineData("3 mm in", 3)]
    [InlineData("3mm out", -3)]
    [InlineData("3 mm OUT", -3)]
    [InlineData("0 in", 0)]
    [InlineData("0 mm", 0)]
    [InlineData("0 in in", 0)]
    [InlineData("0 mm out", 0)]
    public void A_toe_as_a_length_is_read(string text, double millimeters)
    {
        ToeReading toe = ValueText.ParseToe(text).Value;
        Assert.Equal(millimeters, toe.AsLength!.Value.Millimeters);
        Assert.False(millimeters == 0 && double.IsNegative(toe.AsLength.Value.Millimeters));
        Assert.Null(toe.AsAngle);
    }

    [Theory]
    [InlineData("0.25 deg in", 0.25)]
    [InlineData("0.25° out", -0.25)]
    [InlineData("0 deg", 0)]
    [InlineData("0 deg out", 0)]
    public void A_toe_as_an_angle_is_read(string text, double degrees)
    {
        ToeReading toe = ValueText.ParseToe(text).Value;
        Assert.Equal(degrees, toe.AsAngle!.Value.Degrees);
        Assert.False(degrees == 0 && double.IsNegative(toe.AsAngle.Value.Degrees));
        Assert.Null(toe.AsLength);
    }

    [Theory]
    [InlineData("1/8 in", 6, 0, "say in or out behind the unit, as in 1/8 in in or 1/8 in out")]
    [InlineData("3 mm ", 4, 0, "the direction is missing")]
    [InlineData("0.25 deg", 8, 0, "the direction is missing")]
    [InlineData("1/8 out", 3, 0, "the unit is missing: write 1/8 in out")]
    [InlineData("0 out", 1, 0, "the unit is missing")]
    [InlineData("0", 1, 0, "the unit is missing: write 0 mm out or 0 deg out")]
    [InlineData("1/8", 3, 0, "the unit is missing")]
    [InlineData("3 mm inside", 5, 6, "expected the direction of the toe, in or out, found 'inside'")]
    [InlineData("0 mm up", 5, 2, "expected the direction of the toe")]
    [InlineData("1/8 in in in", 10, 2, "nothing more was expected after the toe")]
    [InlineData("in", 0, 2, "expected a toe such as 1/8 in out")]
    [InlineData("out 1/8 in", 0, 3, "expected a toe such as 1/8 in out")]
    [InlineData("-1/8 in", 0, 1, "with its direction behind it")]
    [InlineData("1/4 deg in", 0, 3, "with inches only")]
    [InlineData("0.25 degrees in", 5, 7, "expected a unit (deg, in, mm or cm), found 'degrees'")]
    [InlineData("91 deg in", 0, 6, "at most 90 deg")]
    [InlineData("3 mm ± 1 mm in", 5, 9, "a tolerance belongs to dimensions of parts")]
    [InlineData("3,5 mm in", 0, 3, "decimal sign is a point")]
    public void A_bad_toe_is_a_fault_at_its_place(string text, int offset, int length, string phrase) =>
        Expect.Fault(ValueText.ParseToe(text).Fault, offset, length, phrase);
}
