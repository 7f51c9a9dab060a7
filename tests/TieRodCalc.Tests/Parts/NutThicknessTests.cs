using TieRodCalc.Parts;
using TieRodCalc.Tests.Architecture;
using TieRodCalc.Text;
using TieRodCalc.Yaml;

namespace TieRodCalc.Tests.Parts;

/// <summary>
/// The nuts of the samples are as thick as the standards' thin nuts: the greatest thickness of ISO 4035 and ISO 8675 (read in a seller's
/// copy of ISO 4035; confirmed by the open fastener data of a CAD program), the basic thickness of hexagon jam nuts of ASME B18.2.2
/// (read: Machinery's Handbook 31, page 1677, table 7; no second place).
/// </summary>
public class NutThicknessTests
{
    private static readonly (string Size, double Thickness)[] s_millimeters =
        [("M10", 5), ("M12", 6), ("M14", 7), ("M16", 8), ("M18", 9), ("M20", 10), ("M22", 11), ("M24", 12)];

    private static readonly (string Size, double Thickness)[] s_inches =
    [
        ("3/8", 7 / 32d), ("7/16", 1 / 4d), ("1/2", 5 / 16d), ("9/16", 5 / 16d), ("5/8", 3 / 8d), ("3/4", 27 / 64d), ("7/8", 31 / 64d),
        ("1", 35 / 64d),
    ];

    [Fact]
    public void Nuts_of_the_samples_are_standard_thin_nuts()
    {
        PartCatalog parts = JobReader.ReadParts(Path.Combine(SourceTree.Root, "catalog-samples", "parts", "pinewater.yaml")).Value!;
        Assert.Equal(2, parts.JamNuts.Count);
        Assert.All(parts.JamNuts, nut =>
        {
            string size = ThreadText.Format(nut.Thread);
            double expected = size[0] == 'M'
                ? s_millimeters.Single(listed => listed.Size == size.Split('x')[0]).Thickness
                : s_inches.Single(listed => listed.Size == size.Split('-')[0]).Thickness * 25.4;
            Assert.Equal(expected, nut.Thickness.Nominal.Millimeters, 1e-9);
        });
    }
}
