using TieRodCalc.Steering;
using TieRodCalc.Text;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>What is to be minded of a side beside what its sheets warn of: its code and its sentence.</summary>
internal static class BumpSideSentences
{
    /// <summary>Whether a warning is told as it is; that the wheel is not known is told by what is missing of it.</summary>
    public static bool IsTold(BumpWarning warning) => warning.Code != BumpWarningCode.WheelNotGiven;

    public static IEnumerable<string> Of(BumpSide side, LengthDisplay unit) => Coded(side, unit).Select(one => one.Sentence);

    public static IEnumerable<(string Code, string Sentence)> Coded(BumpSide side, LengthDisplay unit)
    {
        if (side.OneRod)
        {
            yield return ("one-rod",
                "One rod joins both wheels and moves with the axle: it is not what steers them over travel. What the drag link would "
                    + "have to be, "
                + "is not told.");
        }

        bool wanting = side.Findings?.Warnings.Any(warning => warning.Code == BumpWarningCode.WheelNotGiven) == true;
        string wheel = Names.Of(side.Side);
        if (wanting && !side.OneRod && side.Present is null)
        {
            yield return ("rod-not-given",
                "Height and length are not told: that needs a rod of this side with its length. Write one under 'rods', with side: "
                    + $"{wheel}.");
        }
        else if (wanting && !side.OneRod)
        {
            yield return ("steering-not-given",
                $"Height and length are not told: that needs the steering of the {wheel} wheel, its 'arm' and 'joint' or its points. "
                    + "Write it under "
                + "'steering'.");
        }

        if (side.Findings is null)
        {
            yield return ("no-readings", "There are no readings of this wheel: nothing says whether the points are right.");
        }

        if (side.PointsDisagree(out Length most))
        {
            yield return ("points-disagree",
                $"Readings and points contradict each other, by {LengthFormat.Fine(most, unit)} at the gauge: a point is wrong, or "
                    + "the readings are. "
                + "Do not act on either before that is found.");
        }

        if (side.Findings is not null && !side.OneRod && side.Present is not null && side.Rod?.Built?.CenterToCenter is null
            && side.Rod?.Request is not null)
        {
            yield return ("present-length-planned", "The rod's length was not measured: the planned one was taken. Write it in "
                + "'built' once it is measured.");
        }

        if (side.PointsOfAnotherRod)
        {
            yield return ("points-at-other-length",
                $"The points of the joints are {LengthFormat.Both(side.PointsApart, unit)} off the rod's length: they were measured "
                    + "with another rod, "
                + "or one of them is wrong.");
        }

        if (side.Corner?.Missing is { } missing)
        {
            yield return ("corner-not-computed", $"The corner is not computed: {missing.Message}.");
        }
    }
}
