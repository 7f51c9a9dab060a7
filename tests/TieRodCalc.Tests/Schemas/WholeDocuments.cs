using System.Text.Json.Nodes;
using TieRodCalc.Tests.Yaml;

namespace TieRodCalc.Tests.Schemas;

/// <summary>Sound documents that have every map of the files between them, and every needed key.</summary>
internal static class WholeDocuments
{
    private const string Open = """
        tierodcalc: 1
        job: parts to choose
        rods:
          - name: 1
            inner: {thread: M18x1.5-6g LH}
            sleeve: {inner: M18x1.5 LH, outer: 5/8-18}
            outer: [re-58r]
            nuts: {inner: {thread: M18x1.5-6H LH}, outer: any}
            length: {from: [0 in, 0 in, 0 in], to: [1 mm, -15 in, +2 cm]}
            adjust: {shorter: 1/8 in, longer: 1/4 in}
          - name: other
            side: right
            inner: any
            outer: {thread: 5/8-18}
            sleeve: any
            nuts: {inner: [jn-m18l, jn-58r], outer: {thread: 5/8-18 UNF-2B}}
            length: {rod: 16 in, toe: {each: 1/8 in out}, want: 0 in}
            adjust: 0 mm
            built: {depth: {inner: 1.6 in, outer: 1 in}}
        steering:
          arm: 6 in
          joint: behind axle
          camber: -1 deg
          right: {rod_angle: 4°}
          plates: 24 in
          tire: 26 in
          toe: {now: {each: {left: 1/16 in out, right: 0 in}}, want: 0 deg, at: tire}
        bump: []
        corner:
          left:
            lower: {axis: [[0 in, 1 in, 0 in], [1 in, 1 in, 0 in]], ball: [0 in, 9 in, 0 in]}
            upper: {axis: [[0 in, 1 in, 9 in], [1 in, 1 in, 9 in]], ball: [0 in, 9 in, 9 in]}
            wheel: [0 in, 0 in, 0 in]
            moves: {outer: 1 in, inner: {up: 0 in, down: 1 in}, length: 2 cm}
            travel: {droop: 2 in}

        """ + Samples.PartLists;

    private const string Parts = """
        tierodcalc: 1
        materials: [{id: a1, name: x, kind: other, tensile: 120 ksi, source: y}]
        inner_ends:
          - {id: 7, name: 7, thread: M18, center_to_tip: 21.2 cm, thread_length: 3 in, swing: 14 deg, stud: vertical, mass: 0.4 kg}
        sleeves:
          - id: true
            name: null device
            length: 8 in ± 1/16 in
            inner: {thread: M18, depth: 2 in, bore: open, countersink: 0 mm, clamp: 1.2 in, witness: 1 in}
            outer: {thread: 5/8-18, depth: 2 in, bore: open}
            price: 12 EUR
        outer_ends:
          - {id: x, center_to_face: 2 in, socket: {thread: M14, depth: 1 in, bore: closed}, joint: rod end, swing: 14 deg, stud: along axle}
        jam_nuts: [{id: n, name: m, thread: M18, thickness: 9 mm, material: a1, price: 1 USD, mass: 1 lb}]

        """;

    /// <summary>Each with what it is called.</summary>
    public static IReadOnlyDictionary<string, JsonNode> All { get; } = new Dictionary<string, string>
    {
        ["parts"] = Samples.Parts,
        ["more parts"] = Parts,
        ["job"] = Samples.WholeJob.Replace("[../parts/pinewater.yaml]", "[]", StringComparison.Ordinal) + Samples.PartLists,
        ["one rod"] = Samples.OneRod.Replace("rods:", "job: cross\nrods:", StringComparison.Ordinal),
        ["open job"] = Open,
    }.ToDictionary(each => each.Key, each => YamlAsJson.Read(each.Value)!.Root!, StringComparer.Ordinal);

    /// <summary>Every document with each of the places in it: the keys and positions that lead there.</summary>
    public static IEnumerable<(string Document, object[] Path)> Places =>
        All.SelectMany(document => PathsOf(document.Value, []).Select(path => (document.Key, path)));

    /// <summary>A copy of a document with one change at a place.</summary>
    /// <param name="document">What it is called.</param>
    /// <param name="path">The place, not the root.</param>
    /// <param name="change">What to do to the map or list that holds it, and the last step of the path.</param>
    public static JsonNode Changed(string document, object[] path, Action<JsonNode, object> change)
    {
        JsonNode copy = All[document].DeepClone();
        change(At(copy, path[..^1])!, path[^1]);
        return copy;
    }

    public static JsonNode? At(JsonNode root, object[] path) =>
        path.Aggregate((JsonNode?)root, (at, step) => step is int index ? at![index] : at![(string)step]);

    /// <summary>Puts another value at a place.</summary>
    public static void Put(JsonNode holder, object step, JsonNode? value)
    {
        if (step is int index)
        {
            holder[index] = value;
        }
        else
        {
            holder[(string)step] = value;
        }
    }

    private static IEnumerable<object[]> PathsOf(JsonNode? node, object[] path) => node switch
    {
        JsonObject map => map.SelectMany(each => PathsOf(each.Value, [.. path, each.Key])).Prepend(path),
        JsonArray list => list.SelectMany((each, index) => PathsOf(each, [.. path, index])).Prepend(path),
        _ => [path],
    };
}
