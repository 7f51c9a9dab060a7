using TieRodCalc.Parts;
using TieRodCalc.Yaml.Tree;
using UnitsNet;

namespace TieRodCalc.Yaml.Binding;

/// <summary>Reports dimensions of one part that contradict each other, at the key that is most likely wrong.</summary>
internal static class PartFaultProblems
{
    /// <summary>Reports the faults of an end.</summary>
    public static void Report(MapReader map, ThreadedEnd end)
    {
        string thread = Written(map, "thread_length");
        string whole = $"{Written(map, "center_to_tip")} from ball center to tip";
        foreach (PartFault fault in PartFaults.Of(end))
        {
            (string key, string message) = fault switch
            {
                PartFault.ThreadLongerThanEnd => ("thread_length", $"the thread of {thread} is longer than the {whole}"),
                PartFault.RethreadLongerThanEnd =>
                    ("rethread", $"the thread of {thread} and {Written(map, "rethread")} more are longer than the {whole}"),
                PartFault.LeadNotShorterThanThread => (
                    map.Has("lead") ? "lead" : "thread_length",
                    $"the lead of {Lead(map, end)} is not shorter than the thread of {thread}"),
                PartFault.CutLongerThanEnd => ("max_cut", $"a cut of {Written(map, "max_cut")} leaves nothing of the {whole}"),
                _ => throw Unexpected(fault),
            };
            map.Findings.Problem(map.SpanOf(key), message);
        }
    }

    /// <summary>Reports the faults of a threaded hole by itself.</summary>
    public static void Report(MapReader map, TappedHole hole)
    {
        foreach (PartFault fault in PartFaults.Of(hole))
        {
            (string key, string message) = fault switch
            {
                PartFault.CountersinkNotShallowerThanThread => (
                    map.Has("countersink") ? "countersink" : "depth",
                    $"the countersink of {Countersink(map, hole)} is not shallower than the thread of {Written(map, "depth")}"),
                _ => throw Unexpected(fault),
            };
            map.Findings.Problem(map.SpanOf(key), message);
        }
    }

    /// <summary>Reports the faults of an outer end with a socket beside those that the hole has by itself.</summary>
    public static void Report(MapReader map, SocketEnd end)
    {
        foreach (PartFault fault in PartFaults.Of(end))
        {
            if (fault == PartFault.SocketDeeperThanEnd)
            {
                map.Findings.Problem(
                    map.SpanOf("center_to_face"),
                    $"the thread of {Below(map, "socket", "depth")} reaches past the ball center, "
                        + $"{Written(map, "center_to_face")} from the face");
            }
        }

        ReportBeyond(map, "socket", end.Socket, end.CenterToFace.Nominal, $"the {Written(map, "center_to_face")} to the ball center");
    }

    /// <summary>Reports the faults of a sleeve beside those that a hole has by itself, which are reported at the holes.</summary>
    public static void Report(MapReader map, Sleeve sleeve)
    {
        foreach (PartFault fault in PartFaults.Of(sleeve))
        {
            if (fault == PartFault.ThreadsLongerThanSleeve)
            {
                string both = $"the threads of the two ends are {Below(map, "inner", "depth")} and {Below(map, "outer", "depth")}";
                map.Findings.Problem(map.SpanOf("length"), $"{both}, together longer than the sleeve's {Written(map, "length")}");
            }

            if (fault == PartFault.OutsideNotLargerThanThread)
            {
                map.Findings.Problem(
                    map.SpanOf("outside"), $"the outside, {Written(map, "outside")}, must be larger than the threads inside it");
            }
        }

        string whole = $"the sleeve's {Written(map, "length")}";
        ReportBeyond(map, "inner", sleeve.Inner, sleeve.Length.Nominal, whole);
        ReportBeyond(map, "outer", sleeve.Outer, sleeve.Length.Nominal, whole);
    }

    private static void ReportBeyond(MapReader map, string side, TappedHole hole, Length within, string whole)
    {
        foreach (PartFault fault in PartFaults.Of(hole, within))
        {
            (string key, string what)? beyond = fault switch
            {
                PartFault.WitnessBeyondSleeve => ("witness", "the witness hole"),
                PartFault.ClampBeyondSleeve => ("clamp", "the clamp"),
                _ => null,
            };
            if (beyond is { } found && ScalarBelow(map, side, found.key) is { } text)
            {
                map.Findings.Problem(text.Span, $"{found.what} at {Wording.Shown(text.Value)} lies beyond {whole}");
            }
        }
    }

    private static string Lead(MapReader map, ThreadedEnd end) =>
        map.Has("lead") ? Written(map, "lead") : $"{Wording.Mm(end.Thread.Size.Pitch)} (one pitch)";

    private static string Countersink(MapReader map, TappedHole hole) =>
        map.Has("countersink") ? Written(map, "countersink") : $"{Wording.Mm(hole.Thread.Size.Pitch / 2)} (half a pitch)";

    /// <summary>A number in the words of the file, so that it is found there.</summary>
    private static string Written(MapReader map, string key) =>
        map.Find(key)?.Value is ScalarNode text ? Wording.Shown(text.Value) : Wording.Mm(Length.Zero);

    private static string Below(MapReader map, string key, string inner) =>
        ScalarBelow(map, key, inner) is { } text ? Wording.Shown(text.Value) : Wording.Mm(Length.Zero);

    private static ScalarNode? ScalarBelow(MapReader map, string key, string inner) =>
        (map.Find(key)?.Value as MapNode)?.Find(inner)?.Value as ScalarNode;

    private static InvalidOperationException Unexpected(PartFault fault) => new($"A fault without a sentence: {fault}.");
}
