using System.Text;
using TieRodCalc.Yaml;

namespace TieRodCalc.Tests.Yaml;

/// <summary>One fault does not hide another: what is wrong with a part does not keep its rod from being looked at.</summary>
public class AllAtOnceTests
{
    private const string Job =
        """
        tierodcalc: 1
        inner_ends:
          - {id: i, thread: M16x1.5, center_to_tip: 150 mm, thread_length: 60 mm, color: red}
        outer_ends:
          - {id: o, thread: M16x1.5 LH, center_to_tip: 80 mm, thread_length: 88 mm, lead: 2}
        sleeves:
          - id: s
            length: 150 mm
            inner: {thread: M16x1.5 LH, depth: 145 mm, bore: clsed}
            outer: {thread: M16x1.5, depth: 45 mm, bore: closed}
        jam_nuts:
          - {id: n, thread: M16x1.5, thickness: 8 mm, prise: 3}
        rods:
          - {name: a, inner: i, sleeve: s, outer: o, nuts: {inner: n, outer: n}, length: 310 mm, adjust: 0 mm}
        """;

    [Fact]
    public void Faults_of_parts_and_of_the_rod_made_of_them_come_in_one_run()
    {
        using MemoryStream content = new(Encoding.UTF8.GetBytes(Job));
        Reading<Job> read = JobReader.Read(content, "-", string.Empty);

        Assert.Null(read.Value);
        (int Line, string Phrase)[] expected =
        [
            (3, "has no key 'color'"),
            (5, "the thread of 88 mm is longer than the 80 mm"),
            (5, "the unit is missing"),
            (8, "together longer than the sleeve's 150 mm"),
            (9, "'bore' must be closed or open"),
            (12, "has no key 'prise'"),
            (14, "i (M16x1.5) does not go into sleeve s"),
            (14, "o (M16x1.5 LH) does not go into sleeve s"),
            (14, "o (M16x1.5 LH) does not go into nut n"),
        ];
        Assert.Equal(expected.Select(one => one.Line), read.Problems.Select(problem => problem.Line));
        Assert.All(
            expected.Zip(read.Problems),
            pair => Assert.Contains(pair.First.Phrase, pair.Second.Message, StringComparison.Ordinal));
    }
}
