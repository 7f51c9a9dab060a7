using UnitsNet;

namespace TieRodCalc.Steering;

/// <summary>How the joints of a rod are moved at ride height, the toe there kept.</summary>
/// <param name="OuterRaised">The outer joint is raised by so much; negative: lowered.</param>
/// <param name="InnerRaised">The inner joint is raised by so much; negative: lowered.</param>
/// <param name="RodLonger">The inner joint is moved by so much along the rod, away from the outer one; negative: toward it.</param>
public readonly record struct JointMoves(Length OuterRaised, Length InnerRaised, Length RodLonger)
{
    internal (double Raise, double Lift, double Longer) InMillimeters =>
        (Millimeters.Of(OuterRaised), Millimeters.Of(InnerRaised), Millimeters.Of(RodLonger));
}
