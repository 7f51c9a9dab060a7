using TieRodCalc.Planning;
using TieRodCalc.Steering;
using TieRodCalc.Yaml;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>What <c>toe</c> has to tell: the job, its plan of toe, and the name of the rod of each move.</summary>
internal sealed record ToeReport(Job Job, ToePlan Plan, IReadOnlyList<string> RodNames, ToeShare Share, IReadOnlyList<Problem> Notes)
{
    public JobToe Toe => Job.Toe!;

    public bool OneRod => Toe.OneRodTurns is not null;

    /// <summary>What each rod's own plan says at its top, with the wheel; that nothing locks a rod is said by the plan of toe.</summary>
    public IEnumerable<(ToeMove Move, PlanWarning Warning)> Headlines =>
        from move in Plan.Stays is { } stays ? Plan.Moves.Append(stays) : Plan.Moves
        from warning in move.Plan?.Warnings ?? []
        where warning.Code is WarningCode.OneJointLocked or WarningCode.GivesWayUnderLoad or WarningCode.LoadNotChecked
        select (move, warning);

    /// <summary>Whether everything that was asked for can be done and left so.</summary>
    public bool Holds => Plan.Holds
        && Plan.Warnings.All(warning => warning.Code != ToeWarningCode.NotLocked)
        && Plan.Moves.All(move => move.Plan is not { GivesWayUnderLoad: true })
        && Plan.Stays?.Plan is not { GivesWayUnderLoad: true };

    /// <summary>The name of the wheel or wheels of a move.</summary>
    public string Wheel(ToeMove move) => OneRod ? "both" : Text.Names.Of(move.Side);

    /// <summary>Toe now of the wheel of a move; of both where one rod joins them. So are the others below.</summary>
    public Angle ToeNow(ToeMove move) => OneRod ? Plan.Now.Total : move.Now;

    public Angle? ToeWanted(ToeMove move) => OneRod ? Plan.Want.Total : move.Want;

    public Angle? ToeAfter(ToeMove move) => OneRod ? Plan.After?.Total : move.After;

    /// <summary>Toe after a move across a width, or null where the one or the other is not known.</summary>
    public Length? ToeAfter(ToeMove move, Length? width) => width is not { } across ? null
        : OneRod ? Plan.After?.Across(across)
        : move.After is { } after ? Steering.Toe.AtPlates(after, across)
        : null;

    /// <summary>Total toe across what it is measured across, or null where that was not given.</summary>
    public Length? Across(WheelToes? toes) => toes is { } known && Toe.Gauge is { } gauge ? known.Across(gauge.Width) : null;
}
