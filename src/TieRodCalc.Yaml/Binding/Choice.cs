using TieRodCalc.Parts;
using TieRodCalc.Steering;
using TieRodCalc.Text;

namespace TieRodCalc.Yaml.Binding;

/// <summary>The values that a key chooses from.</summary>
/// <typeparam name="T">What they mean.</typeparam>
/// <param name="Names">As they are written.</param>
/// <param name="Values">What each means.</param>
internal sealed record Choice<T>(string[] Names, T[] Values)
    where T : struct;

/// <summary>Every choice of the files.</summary>
internal static class Choices
{
    public static readonly Choice<LengthDisplay> Units = new(["in", "mm"], [LengthDisplay.Inch, LengthDisplay.Millimeter]);

    public static readonly Choice<CarSide> Side = new(["left", "right"], [CarSide.Left, CarSide.Right]);

    public static readonly Choice<MaterialKind> Material =
        new(["steel", "aluminum", "other"], [MaterialKind.Steel, MaterialKind.Aluminum, MaterialKind.Other]);

    public static readonly Choice<JointKind> Joint = new(["tapered stud", "rod end"], [JointKind.TaperedStud, JointKind.RodEnd]);

    public static readonly Choice<StudDirection> Stud =
        new(["vertical", "along axle", "along car"], [StudDirection.Vertical, StudDirection.AlongAxle, StudDirection.AlongCar]);

    public static readonly Choice<Bore> Bore = new(["closed", "open"], [Parts.Bore.Closed, Parts.Bore.Open]);

    public static readonly Choice<JointPlace> Place =
        new(["behind axle", "ahead of axle"], [JointPlace.BehindAxle, JointPlace.AheadOfAxle]);

    /// <summary>True for one rod between the wheels.</summary>
    public static readonly Choice<bool> OneRod = new(["rod per side", "one rod between wheels"], [false, true]);

    public static readonly Choice<GaugePlace> Gauge = new(["plates", "tire"], [GaugePlace.Plates, GaugePlace.Tire]);

    public static readonly Choice<IndicatorZero> Zeroed = new(["once", "each step"], [IndicatorZero.Once, IndicatorZero.EachStep]);

    public static readonly Choice<IndicatorSense> Grows = new(["outward", "inward"], [IndicatorSense.Outward, IndicatorSense.Inward]);
}
