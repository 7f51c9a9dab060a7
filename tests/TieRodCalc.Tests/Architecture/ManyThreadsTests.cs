using TieRodCalc.Planning;
using TieRodCalc.Steering;
using TieRodCalc.Text;
using TieRodCalc.Threads;
using TieRodCalc.Yaml;
using UnitsNet;

namespace TieRodCalc.Tests.Architecture;

/// <summary>The library used from many threads at once gives what one thread gives, to the last bit.</summary>
public class ManyThreadsTests
{
    private const int Threads = 64;

    private static readonly string Jobs = Path.Combine(SourceTree.Root, "catalog-samples", "jobs");

    [Fact]
    public void Sixty_four_threads_get_what_one_gets()
    {
        Func<string>[] tasks = [.. Directory.GetFiles(Jobs, "*.yaml").Order(StringComparer.Ordinal).SelectMany(Tasks), Texts, Limits];
        string[] alone = [.. tasks.Select(task => task())];
        Assert.True(tasks.Length > 30, $"{tasks.Length} tasks");
        Assert.True(alone.Count(text => text.Length > 1_000) > 20, string.Join(", ", alone.Select(text => text.Length)));

        using Barrier start = new(Threads);
        string?[] differing = new string?[Threads];
        Thread[] threads =
        [
            .. Enumerable.Range(0, Threads).Select(number => new Thread(() =>
            {
                // Every fourth task, from another one on in each thread, so that different ones run side by side.
                start.SignalAndWait();
                for (int step = number; step < number + tasks.Length; step += 4)
                {
                    int task = step % tasks.Length;
                    string together = Try(tasks[task]);
                    differing[number] ??= together == alone[task] ? null : $"task {task}: {together}";
                }
            })),
        ];
        Array.ForEach(threads, thread => thread.Start());
        Array.ForEach(threads, thread => thread.Join());
        Assert.All(differing, Assert.Null);
    }

    /// <summary>An exception in a thread would end the test host.</summary>
    private static string Try(Func<string> task)
    {
        try
        {
            return task();
        }
#pragma warning disable CA1031 // Whatever it is, it is told as a difference.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            return fault.ToString();
        }
    }

    private static IEnumerable<Func<string>> Tasks(string path)
    {
        // Read once and shared by all threads; and read by each of them.
        Job job = JobReader.Read(path).Value!;
        yield return () => Bits.Of(JobReader.Read(path).Value!.Catalog);
        yield return () => string.Concat(job.Rods.Where(rod => rod.Rod is not null).Select(rod => OfRod(job, rod)))
            + string.Concat(job.Rods.Where(rod => rod.Candidates is not null).Select(OfChoice))
            + path;
        yield return () => OfToe(job)
            + string.Concat(job.Bump.GroupBy(sheet => sheet.Side).Select(side => OfBump([.. side.Select(sheet => sheet.Sheet)])))
            + string.Concat(job.Corners.Select(corner => corner.Geometry).OfType<CornerGeometry>().Select(OfCorner))
            + path;
    }

    private static string OfRod(Job job, JobRod rod)
    {
        RodPlan plan = RodPlanner.Plan(rod.Rod!, rod.Request!);
        PlanSentences sentences = new(job.Units, rod.Rod!.Parts.OneJoint);
        return Bits.Of(plan)
            + Bits.Of(RodRemedies.Of(rod.Rod, rod.Request!))
            + Bits.Of(AsBuilt.Check(rod.Rod, rod.Request!, rod.Built ?? new BuiltReadings()))
            + string.Concat(plan.Warnings.Select(warning => sentences.Of(warning)))
            + string.Concat(plan.Binding.Select(limit => sentences.Of(limit)));
    }

    private static string OfChoice(JobRod rod) => Bits.Of(RodChooser.Choose(rod.Candidates!, rod.Request!, ChoiceOrder.Best, 10));

    private static string OfToe(Job job) => job.Toe is not { } toe || toe.OneRodTurns is not null
        ? string.Empty
        : Bits.Of(ToePlanner.Plan(new ToeRequest
        {
            Now = toe.NowOfWheels,
            Want = toe.WantOfWheels,
            OnlyTotalMeasured = toe.Now.Total is not null,
            Share = ToeShare.BothRods,
            Left = job.Rods.FirstOrDefault(rod => rod.Side == CarSide.Left)?.OnCar,
            Right = job.Rods.FirstOrDefault(rod => rod.Side == CarSide.Right)?.OnCar,
        }));

    private static string OfBump(BumpSheet[] sheets) =>
        Bits.Of(BumpSteer.Read(new BumpRequest { Sheets = sheets, Shim = Length.FromMillimeters(0.5) }));

    private static string OfCorner(CornerGeometry corner) => Bits.Of(CornerReview.Of(new CornerReviewRequest
    {
        Corner = corner,
        Spacing = Length.FromInches(10),
        Range = new SwingRange(Length.FromInches(2), Length.FromInches(2), Length.FromInches(1)),
        Moves = MoveLimits.Usual,
    }));

    private static string Texts() => string.Concat(Enumerable.Range(1, 2_000).Select(n =>
        Bits.Of(LengthText.Parse(FormattableString.Invariant($"{n} {n % 64}/64 in ± 0.{n} mm")).Value)
        + LengthFormat.Both(Length.FromMillimeters(n / 7d), LengthDisplay.Inch)
        + Bits.Of(ValueText.ParseStress(FormattableString.Invariant($"{n / 3m:F3} ksi")))));

    private static string Limits() => string.Concat(((string[])["5/8-18 UNF-2A LH", "M18x1.5-6g", "11/16-18 UNS-2B", "M16-6H"]).Select(text =>
        Bits.Of(ThreadText.Parse(text).Value)
        + Bits.Of(LookAlike.Of(ThreadText.Parse(text).Value))));
}
