using System.Globalization;
using System.Text;

namespace TieRodCalc.Benchmarks;

/// <summary>A part file as a shop would write it, of as many parts as asked for; all of them invented.</summary>
internal static class PartFileText
{
    private static readonly (string Thread, string Tail)[] s_threads =
        [("5/8-18 UNF", "A"), ("3/4-16 UNF", "A"), ("M18x1.5", "6g"), ("M16x1.5", "6g"), ("11/16-18 UNS", "A")];

    /// <summary>The text.</summary>
    /// <param name="parts">How many: inner ends, sleeves, outer ends and nuts in equal parts, and two materials.</param>
    public static string Of(int parts)
    {
        Random random = new(parts);
        StringBuilder text = new("tierodcalc: 1\nmaterials:\n");
        text.Append("  - {id: st-850, name: heat-treated alloy steel, kind: steel, tensile: 850 MPa, source: invented}\n");
        text.Append("  - {id: al-450, name: high-strength aluminum, kind: aluminum, tensile: 450 MPa, source: invented}\n");
        int each = parts / 4;
        List(text, "inner_ends", each, i => string.Create(
            CultureInfo.InvariantCulture,
            $$"""
              - id: in-{{i}}
                name: bent inner end, number {{i}}
                thread: {{Male(random)}} LH
                center_to_tip: {{Half(random, 180, 320)}} mm ± 0.5 mm
                thread_length: {{Half(random, 40, 90)}} mm
                offset: 14 mm
                max_cut: {{Half(random, 10, 30)}} mm
                joint: tapered stud
                material: st-850
                price: {{random.Next(20, 60)}}.00 USD
                mass: 0.{{random.Next(200, 900)}} kg

            """));
        List(text, "sleeves", each, i => string.Create(
            CultureInfo.InvariantCulture,
            $$"""
              - id: sl-{{i}}
                length: {{random.Next(6, 12)}} in
                inner: {thread: {{Female(random)}} LH, depth: 2 in, bore: closed, countersink: 0.75 mm, witness: 1.5 in}
                outer: {thread: {{Female(random)}}, depth: 1 7/8 in, bore: open}
                outside: hex {{random.Next(18, 24)}}/16 in
                material: al-450

            """));
        List(text, "outer_ends", each, i => string.Create(
            CultureInfo.InvariantCulture,
            $$"""
              - {id: re-{{i}}, name: rod end {{i}}, thread: {{Male(random)}}, center_to_tip: {{random.Next(2, 4)}} 5/8 in,
                 thread_length: 1 5/8 in, joint: rod end, swing: 14 deg, material: st-850,
                 price: {{random.Next(20, 60)}}.50 USD, mass: 0.26 kg}

            """));
        List(text, "jam_nuts", parts - 3 * each, i => string.Create(
            CultureInfo.InvariantCulture,
            $"  - {{id: jn-{i}, thread: {Female(random)} LH, thickness: 3/8 in, price: 2.00 USD, mass: 0.05 kg}}\n"));
        return text.ToString();
    }

    private static void List(StringBuilder text, string key, int count, Func<int, string> part)
    {
        text.Append(key).Append(":\n");
        for (int i = 0; i < count; i++)
        {
            text.Append(part(i));
        }
    }

    private static string Male(Random random)
    {
        (string thread, string tail) = s_threads[random.Next(s_threads.Length)];
        return tail == "A" ? $"{thread}-2A" : $"{thread}-{tail}";
    }

    private static string Female(Random random)
    {
        (string thread, string tail) = s_threads[random.Next(s_threads.Length)];
        return tail == "A" ? $"{thread}-2B" : $"{thread}-6H";
    }

    private static double Half(Random random, int low, int high) => random.Next(2 * low, 2 * high) / 2d;
}
