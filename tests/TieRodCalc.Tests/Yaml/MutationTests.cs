using System.Globalization;
using TieRodCalc.Parts;
using TieRodCalc.Yaml;

namespace TieRodCalc.Tests.Yaml;

/// <summary>Sound files, spoiled at random: whatever comes of it is a value, and every problem has a place.</summary>
public class MutationTests
{
    private static readonly string[] Pieces =
    [
        "[", "]", "{", "}", ":", ": ", "- ", "? ", "#", " #", "&a ", "*a", "!t ", "!!str ", "|", ">", "'", "\"", "\\", "%", "@", "`", ",", "\t",
        "\n", "\r", "\r\n", "\u0085", "\u2028", "\uFEFF", "\0", "---\n", "...\n", "<<: ", "~", "null", "0", "-1", "9999999999999999999999", "1e99",
        "NaN", "±", "°", "in", "mm", " LH", "any", "none", "\U0001F600", "\uD800", "  ", "id", "name", "[[[[", "{{{{", "1/0", "0 mm", ".5",
        "tierodcalc: 1\n", "\n  ", "\n    ", "x: y\n", "%YAML 1.2\n",
    ];

    private static readonly string[] Sources = [Samples.Parts, Samples.Job, Samples.WholeJob, WholeJobByItself, Samples.OneRod];

    /// <summary>Every key and no part file, so that it is sound where it is not spoiled.</summary>
    private static string WholeJobByItself =>
        Samples.WholeJob.Replace("parts: [../parts/pinewater.yaml]", "# no part files", StringComparison.Ordinal) + Samples.PartLists;

    [Fact]
    public void A_spoiled_file_is_a_value_with_places()
    {
        Random random = new(RandomCounts.Seed);
        int sound = 0;
        for (int i = 0; i < RandomCounts.Files; i++)
        {
            string text = Spoiled(random);
            string seen = string.Create(CultureInfo.InvariantCulture, $"seed {RandomCounts.Seed}, sample {i}:\n{text}");
            CheckedFile read = Reading(text, seen);
            sound += read.Problems.Count == 0 ? 1 : 0;
            Assert.True(read.Problems.Count == 0 == (read.Job is not null || read.Parts is not null), seen);
            AssertInOrder(read.Problems, seen);
            AssertInOrder(read.Notes, seen);
            AssertSound(read, seen);
        }

        // Enough of both, so that both are tested.
        Assert.InRange(sound, RandomCounts.Files / 20, RandomCounts.Files * 19 / 20);
    }

    private static CheckedFile Reading(string text, string seen)
    {
        try
        {
            return Marked.Check(text);
        }
        catch (Exception exception)
        {
            Assert.Fail($"{exception}\n{seen}");
            throw;
        }
    }

    private static string Spoiled(Random random)
    {
        string text = Sources[random.Next(Sources.Length)];
        int changes = random.Next(1, 4);
        for (int i = 0; i < changes; i++)
        {
            int at = random.Next(text.Length);
            int other = Math.Min(text.Length, at + random.Next(1, 30));
            text = random.Next(6) switch
            {
                0 => text.Remove(at, 1),
                1 => text[..at] + text[other..],
                2 => text[..other] + text[at..],
                3 => text[..at],
                4 => text[..at] + Pieces[random.Next(Pieces.Length)] + text[(at + 1)..],
                _ => text.Insert(at, Pieces[random.Next(Pieces.Length)]),
            };
            if (text.Length == 0)
            {
                break;
            }
        }

        return text;
    }

    private static void AssertInOrder(IReadOnlyList<Problem> problems, string seen)
    {
        (int Line, int Column) last = default;
        foreach (Problem problem in problems)
        {
            (int Line, int Column) place = (problem.Line, problem.Column);
            bool whole = place == (0, 0) && problem is { Length: 0, SourceLine: null };
            bool placed = problem is { Line: > 0, Column: > 0, Length: > 0, SourceLine: not null }
                && problem.Column <= problem.SourceLine.Length + 1
                && problem.Column + problem.Length <= problem.SourceLine.Length + 2;
            Assert.True((whole || placed) && problem.Message.Length > 0, $"{problem}\n{seen}");
            Assert.True(place.CompareTo(last) >= 0, $"{problem}\n{seen}");
            Assert.False(problem.Message.Any(char.IsControl), $"{problem}\n{seen}");
            last = place;
        }
    }

    private static void AssertSound(CheckedFile read, string seen)
    {
        if (read.Job is { } job)
        {
            Assert.True((job.Toe is null) != (job.NoToe is null), seen);
            Assert.True(double.IsFinite(job.Toe is { } toe ? (toe.NowOfWheels.Total + toe.WantOfWheels.Total).Degrees : 0), seen);
        }

        foreach (JobRod rod in read.Job?.Rods ?? [])
        {
            Assert.True((rod.Rod is null && rod.Request is null) != (rod.NotPlanned is null), seen);
            Assert.True((rod.OnCar is null) != (rod.NotOnCar is null), seen);
            if (rod.OnCar is { } onCar)
            {
                Assert.True(onCar.Present.Millimeters > 0 && double.IsFinite(onCar.Steering.RodLength.Millimeters), seen);
            }

            if (rod.Request is { } request)
            {
                double[] numbers =
                [
                    request.Target.Millimeters, request.Shorter.Millimeters, request.Longer.Millimeters, request.Rules.Mark.Millimeters,
                    request.Rules.Allowance.Millimeters, request.Rules.TipGap.Millimeters, request.Plates?.Millimeters ?? 0,
                    request.Steering?.RodLength.Millimeters ?? 0, rod.Rod!.Offset.Millimeters,
                ];
                Assert.All(numbers, number => Assert.True(double.IsFinite(number) && number >= 0, seen));
            }
        }

        PartCatalog catalog = read.Job?.Catalog ?? read.Parts ?? new PartCatalog();
        foreach (ThreadedEnd end in catalog.InnerEnds.Concat(catalog.OuterEnds))
        {
            Measured[] dimensions = [end.CenterToTip, end.ThreadLength, end.Lead ?? default, end.Offset, end.MaxCut, end.Rethread];
            Assert.All(dimensions, value => Assert.True(double.IsFinite(value.Nominal.Millimeters + value.PlusMinus.Millimeters), seen));
            Assert.True(double.IsFinite(end.Thread.Size.Diameter.Millimeters + end.Thread.Size.Pitch.Millimeters), seen);
        }
    }
}
