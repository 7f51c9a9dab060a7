using System.CommandLine;
using TieRodCalc.Cli.Rendering;
using TieRodCalc.Planning;
using TieRodCalc.Steering;
using TieRodCalc.Text;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Commands;

/// <summary>Which rods of a job are to be turned for its toe.</summary>
/// <param name="job">The job.</param>
/// <param name="rods">The rods that were asked for.</param>
/// <param name="share">Which rods make up the change.</param>
internal sealed class ToeTask(Job job, IReadOnlyList<JobRod> rods, ToeShare share)
{
    private readonly JobRod? _left = Chosen(job, rods, CarSide.Left);
    private readonly JobRod? _right = Chosen(job, rods, CarSide.Right);

    /// <summary>What keeps toe from being counted, in words; null where nothing does.</summary>
    public string? Refused(ParseResult parsed)
    {
        if (job.NoToe is { } missing)
        {
            return ProblemText.Of([missing]);
        }

        if (job.Toe!.OneRodTurns is not null && share != ToeShare.BothRods)
        {
            return "tierodcalc: one rod joins both wheels: there is no left or right rod to turn alone.\n" + UsageErrors.Help(parsed);
        }

        foreach (CarSide side in Sides)
        {
            if (Refused(side) is { } refused)
            {
                return refused;
            }
        }

        return null;
    }

    /// <summary>The answer; only where <see cref="Refused(ParseResult)"/> finds nothing.</summary>
    public ToeReport Report(IReadOnlyList<Problem> notes)
    {
        JobToe toe = job.Toe!;
        ToeRequest request = new()
        {
            Now = toe.NowOfWheels,
            Want = toe.WantOfWheels,
            OnlyTotalMeasured = toe.Now.Total is not null,
            OneRod = toe.OneRodTurns is not null,
            Share = toe.OneRodTurns switch
            {
                CarSide.Left => ToeShare.LeftOnly,
                CarSide.Right => ToeShare.RightOnly,
                _ => share,
            },
            Left = toe.OneRodTurns is CarSide.Right ? null : _left?.OnCar,
            Right = toe.OneRodTurns is CarSide.Left ? null : _right?.OnCar,
        };
        string[] names = [.. Sides.Select(side => (side == CarSide.Left ? _left : _right)!.Name)];
        return new ToeReport(job, ToePlanner.Plan(request), names, request.Share, notes);
    }

    private CarSide[] Sides => job.Toe!.OneRodTurns is { } turns ? [turns]
        : share == ToeShare.LeftOnly ? [CarSide.Left]
        : share == ToeShare.RightOnly ? [CarSide.Right]
        : [CarSide.Left, CarSide.Right];

    /// <summary>The one rod of a side; of a car with one rod between the wheels that one.</summary>
    private static JobRod? Chosen(Job job, IReadOnlyList<JobRod> rods, CarSide side)
    {
        JobRod[] found = [.. Candidates(job, rods, side)];
        return found.Length == 1 ? found[0] : null;
    }

    private static IEnumerable<JobRod> Candidates(Job job, IReadOnlyList<JobRod> rods, CarSide side) =>
        job.Toe?.OneRodTurns is not null ? rods : rods.Where(rod => rod.Side == side);

    private string? Refused(CarSide side)
    {
        JobRod[] found = [.. Candidates(job, rods, side)];
        bool oneRod = job.Toe!.OneRodTurns is not null;
        string wheel = Names.Of(side);
        if (found.Length > 1)
        {
            string many = string.Join(", ", found.Select(rod => rod.Name));
            return oneRod
                ? $"tierodcalc: one rod joins both wheels, and there are {found.Length}: {many}. Choose one with --rod.\n"
                : $"tierodcalc: {found.Length} rods are on the {wheel}: {many}. Choose one with --rod.\n";
        }

        if (found.Length == 1)
        {
            return found[0].NotOnCar is { } problem ? ProblemText.Of([problem]) : null;
        }

        Problem[] sideless = [.. rods.Where(rod => rod.Side is null).Select(rod => rod.NotOnCar).OfType<Problem>()];
        string other = Names.Of(side == CarSide.Left ? CarSide.Right : CarSide.Left);
        return sideless.Length > 0
            ? ProblemText.Of(sideless)
            : $"tierodcalc: there is no rod of the {wheel} wheel among those asked for. With --{other}-only the {other} rod alone makes up "
                + "the whole change.\n";
    }
}
