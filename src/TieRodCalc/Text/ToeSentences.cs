using TieRodCalc.Planning;
using TieRodCalc.Steering;

namespace TieRodCalc.Text;

/// <summary>The sentences that a plan of toe is told in.</summary>
/// <param name="unit">The unit that lengths are told in first.</param>
public sealed class ToeSentences(LengthDisplay unit)
{
    /// <summary>A warning in words.</summary>
    /// <param name="warning">The warning.</param>
    /// <param name="bothWheels">True where the same holds of the other wheel too, and one sentence says it of both.</param>
    public string Of(ToeWarning warning, bool bothWheels = false)
    {
        ArgumentNullException.ThrowIfNull(warning);
        string wheel = bothWheels ? "both wheels" : warning.Side is { } side ? $"{Names.Of(side)} wheel" : "car";
        string end = warning.End is { } rodSide ? $"{Names.Of(rodSide)} end" : "rod";
        string value = warning.Value is { } length ? LengthFormat.Both(length, unit) : string.Empty;
        return warning.Code switch
        {
            ToeWarningCode.NotLocked =>
                $"NOTHING LOCKS THE ROD, {wheel}: no joint has a jam nut or a clamp. It will turn itself out of adjustment and apart. "
                    + "Do not drive it.",
            ToeWarningCode.PastALimit =>
                $"THE ROD IS PAST A LIMIT AS IT IS, {wheel}: do not drive it before the turns below are made; they bring it back inside.",
            ToeWarningCode.StaysPastALimit =>
                $"THE ROD THAT STAYS IS PAST A LIMIT AS IT IS, {wheel}: do not drive it, whatever the other rod is set to.",
            ToeWarningCode.BuiltDiffers =>
                $"Setting of the rod, {wheel}: thread showing or cut as measured are not those of its plan, so nobody knows what is "
                    + "engaged, and no limit was checked.",
            ToeWarningCode.SteeringUnlikely =>
                $"THE STEERING DOES NOT LOOK LIKE THAT OF A WHEEL, {wheel}: the inner joint stands further out than the outer one, or the "
                    + "rod works on an arm of under 30 or over 500 mm. With a wrong sign the turns below go the wrong way; y points to the "
                    + "car's left.",
            ToeWarningCode.PointsAtOtherLength =>
                $"Points of the steering, {wheel}: the joints as given stand {value} nearer or further than the rod is long. The wheel is "
                    + "taken as turned by that; where it was not, the points or the length are wrong.",
            ToeWarningCode.PresentLengthPlanned =>
                $"Length of the rod, {wheel}: not said to be measured on the car; the planned length is taken for the present one. Where "
                    + "it differs, write it down as built: {center_to_center: } and ask again.",
            ToeWarningCode.SettingFromPlan =>
                $"Setting of the rod, {wheel}: taken as cut and set by its plan, and since then adjusted only by what is turned here. Hold "
                    + "the thread showing against a caliper before turning: where it differs, the limits here are not this rod's.",
            ToeWarningCode.NotBuildable =>
                $"Setting of the rod, {wheel}: its plan finds none that keeps all limits, so nobody knows what is engaged, and no limit "
                    + "was checked. Ask plan what is in the way before turning anything.",
            ToeWarningCode.CutNotKnown =>
                $"Setting of the rod, {wheel}: its end may have been cut, and by how much is not known; neither engagement nor room was "
                    + "checked.",
            ToeWarningCode.LittleRoomForTheNut =>
                $"Nut of the {end}, {wheel}: it keeps only {value} of thread to be backed off by, less than one pitch.",
            ToeWarningCode.HalvesAssumed =>
                "Only the total was measured: each wheel is taken to stand at half of it, with the steering wheel at its center.",
            ToeWarningCode.SteeringWheelLeavesCenter =>
                "One rod alone makes up the whole change: driven straight, the steering wheel will not stand where it stood.",
            ToeWarningCode.WheelHeld =>
                $"One rod joins both wheels: the steering is taken to hold the {wheel}, and the rod to turn the other one.",
            _ => throw new ArgumentOutOfRangeException(nameof(warning)),
        };
    }

    /// <summary>From where a direction is seen.</summary>
    public static string SeenFrom(TurnedPart part) => part switch
    {
        TurnedPart.Sleeve => "looking from the inner end outward",
        TurnedPart.InnerEnd => "looking from the inner ball toward the thread",
        TurnedPart.OuterEnd => "looking from the outer ball toward the thread",
        _ => throw new ArgumentOutOfRangeException(nameof(part)),
    };

    /// <summary>What toe as a length is measured across.</summary>
    public string Of(ToeGauge gauge)
    {
        ArgumentNullException.ThrowIfNull(gauge);
        string width = LengthFormat.Decimal(gauge.Width, unit);
        return gauge.Place == GaugePlace.Plates ? $"at plates {width} wide" : $"at the tire, {width} across";
    }
}
