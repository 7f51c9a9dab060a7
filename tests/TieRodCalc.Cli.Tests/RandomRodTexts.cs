using System.Globalization;
using TieRodCalc.Cli.Rendering;
using TieRodCalc.Planning;
using TieRodCalc.Text;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Tests;

/// <summary>
/// Draws jobs of one rod that a shop could meet, as text: bent and straight, with and without a sleeve, about half of them not to be
/// built. All numbers are invented.
/// </summary>
internal static class RandomRodTexts
{
    private const int Seed = 271_828;

    private static readonly (string Name, double Diameter)[] s_threads =
        [("M14x1.5", 14), ("M16x1.5", 16), ("M16x2", 16), ("M18x1.5", 18), ("5/8-18", 15.875), ("3/4-16", 19.05)];

    /// <summary>Jobs with their plans, made once; remedies are not looked for.</summary>
    private static readonly Lazy<IReadOnlyList<(string Text, Job Job, PlannedRod Rod)>> s_planned = new(() =>
        [.. Enumerable.Range(0, 400).Select(index => Planned(Draw(index)))]);

    public static IReadOnlyList<(string Text, Job Job, PlannedRod Rod)> All => s_planned.Value;

    /// <summary>The first rod of a job with its plan.</summary>
    public static (string Text, Job Job, PlannedRod Rod) Planned(string text)
    {
        Job job = JobChanges.Read(text).Value!;
        JobRod rod = job.Rods[0];
        Assert.True(rod.Request is not null, text);
        return (text, job, new PlannedRod(rod.Name, rod.Rod!, rod.Request!, RodPlanner.Plan(rod.Rod!, rod.Request!), []));
    }

    public static string Draw(int index) => new Drawing(new Random(unchecked((Seed * 31) + (index * 7_919)))).Job(index);

    private sealed class Drawing(Random random)
    {
        public string Job(int index)
        {
            bool socket = Chance(0.15);
            (string innerThread, double innerDiameter) = Thread();
            (string outerThread, double outerDiameter) = Chance(0.3) ? (innerThread, innerDiameter) : Thread();
            bool left = Chance(0.5);
            string innerHand = left ? " LH" : string.Empty;
            string outerHand = left == Chance(0.25) ? " LH" : string.Empty;
            (double innerDepth, double outerDepth) = (Between(32, 62), Between(32, 62));
            double sleeve = innerDepth + outerDepth + 0.1 + (Chance(0.2) ? 0 : Between(0, 90));
            (double innerCenter, double outerCenter) = (Between(110, 250), Between(55, 150));
            (double innerBend, double outerBend) = (Bend(), socket ? 0 : Bend());
            double clocking = Math.Round(Between(0, 180));
            string clocked = innerBend > 0 && outerBend > 0 ? $", clocking: {N(clocking)} deg" : string.Empty;
            double inserted = Between(0.6, 1.05) * innerDepth;
            double face = innerDepth + 15;
            double axial = socket
                ? innerCenter + face - inserted
                : innerCenter + outerCenter + sleeve - inserted - (Between(0.6, 1.05) * outerDepth);
            double cut = Chance(0.6) ? Between(6, Math.Min(50, innerCenter - 60)) : 0;
            double outerCut = !socket && Chance(0.5) ? Between(6, Math.Min(40, outerCenter - 45)) : 0;
            axial -= (cut * Between(0, 0.9)) + (outerCut * Between(0, 0.9));
            double square = (innerBend * innerBend) + (outerBend * outerBend)
                - (2 * innerBend * outerBend * Math.Cos(clocking * Math.PI / 180));
            string length = N(Math.Sqrt((axial * axial) + square));
            string outer = socket
                ? $"{{id: o, center_to_face: {N(face)} mm, socket: {{thread: {innerThread}{innerHand}, depth: {N(innerDepth)} mm, bore: closed}}}}"
                : End("o", outerThread + outerHand, outerCenter, outerBend, outerCut);
            (string innerNut, string outerNut) = (Chance(0.1) ? "none" : "ni", Chance(0.1) ? "none" : "no");
            return $$"""
                tierodcalc: 1
                job: drawn {{index}}
                units: {{(Chance(0.5) ? "in" : "mm")}}
                inner_ends:
                  - {{End("i", innerThread + innerHand, innerCenter, innerBend, cut)}}
                outer_ends:
                  - {{outer}}
                sleeves:
                  - id: s
                    length: {{N(sleeve)}} mm
                    inner: {thread: {{innerThread}}{{innerHand}}, depth: {{N(innerDepth)}} mm, {{Bore(innerDepth)}}}
                    outer: {thread: {{outerThread}}{{outerHand}}, depth: {{N(outerDepth)}} mm, {{Bore(outerDepth)}}}{{Outside(innerDiameter, outerDiameter)}}
                jam_nuts:
                  - {id: ni, thread: {{innerThread}}{{innerHand}}, thickness: {{N(Between(5, 12))}} mm}
                  - {id: no, thread: {{outerThread}}{{outerHand}}, thickness: {{N(Between(5, 12))}} mm}
                rods:
                  - name: r
                    inner: i
                    outer: o
                    {{(socket ? $"nuts: {{inner: {innerNut}}}" : $"sleeve: s\n    nuts: {{inner: {innerNut}, outer: {outerNut}}}")}}
                    length: {{length}} mm
                    adjust: {{N(Between(0, 5))}} mm{{clocked.Replace(", ", "\n    ", StringComparison.Ordinal)}}
                """;
        }

        private string End(string id, string thread, double center, double bend, double cut) =>
            $"{{id: {id}, thread: {thread}, center_to_tip: {N(center)} mm, thread_length: {N(Math.Min(Between(50, 120), center - 12))} mm"
            + (bend > 0 ? $", offset: {N(bend)} mm" : string.Empty)
            + (cut > 0 ? $", max_cut: {N(cut)} mm" : string.Empty) + "}";

        private string Bore(double depth) => (Chance(0.5) ? "bore: closed" : "bore: open")
            + (Chance(0.2) ? $", witness: {N(Between(0.3, 0.8) * depth)} mm" : string.Empty)
            + (Chance(0.15) ? $", clamp: {N(Between(0.3, 0.7) * depth)} mm" : string.Empty);

        private string Outside(double one, double other) =>
            Chance(0.6) ? $"\n    outside: {(Chance(0.5) ? "hex" : "round")} {N(Math.Max(one, other) + Between(4, 10))} mm" : string.Empty;

        private double Bend() => Chance(0.35) ? Between(4, 22) : 0;

        private (string Name, double Diameter) Thread() => s_threads[random.Next(s_threads.Length)];

        private bool Chance(double of) => random.NextDouble() < of;

        private double Between(double low, double high) => Math.Round(low + ((high - low) * random.NextDouble()), 1);

        private static string N(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
    }
}
