using TieRodCalc.Parts;
using TieRodCalc.Text;
using TieRodCalc.Threads;
using TieRodCalc.Yaml.Tree;
using UnitsNet;

namespace TieRodCalc.Yaml.Binding;

/// <summary>
/// Reads the ends, sleeves and nuts of a file; its materials and those of the other files are in the tables already. A part of
/// which something could not be read is kept as far as it goes, so that what is wrong with its rod is found in the same run;
/// nothing is computed from it.
/// </summary>
internal sealed class PartBinder(LoadedFile file, PartTables tables)
{
    public void Bind()
    {
        if (file.Top is not { } root)
        {
            return;
        }

        // The materials were read before; only their kind is checked here.
        root.List("materials");
        Each(root, "inner_ends", "inner end", Keys.InnerEnd, InnerEnd);
        Each(root, "sleeves", "sleeve", Keys.Sleeve, Sleeve);
        Each(root, "outer_ends", "outer end", Keys.OuterEnd, OuterEnd);
        Each(root, "jam_nuts", "jam nut", Keys.Nut, Nut);
    }

    private void Each(MapReader root, string key, string kind, string[] keys, Action<MapReader> bind)
    {
        if (root.List(key) is not { } list)
        {
            return;
        }

        foreach (Node item in list.Items)
        {
            if (MapReader.OpenItem(item, kind, keys, file) is { } map)
            {
                bind(map);
            }
        }
    }

    private void InnerEnd(MapReader map)
    {
        ScalarNode? id = Ids.Read(map);
        tables.InnerEnds.Add(id, Threaded(map, id), file);
    }

    private void OuterEnd(MapReader map)
    {
        ScalarNode? id = Ids.Read(map);
        OuterEnd? end = null;
        if (map.Has("socket") || map.Has("center_to_face"))
        {
            end = Socket(map, id) is { } socket ? new OuterEnd(null, socket) : null;
        }
        else if (Threaded(map, id) is { } threaded)
        {
            end = new OuterEnd(threaded, null);
        }

        tables.OuterEnds.Add(id, end, file);
    }

    private ThreadedEnd? Threaded(MapReader map, ScalarNode? id)
    {
        PartInfo info = Info(map, id);
        ThreadDesignation? thread = map.Thread("thread", ThreadGender.External, needed: true);
        Measured? centerToTip = map.Dimension("center_to_tip", Least.AboveZero, needed: true);
        Measured? threadLength = map.Dimension("thread_length", Least.AboveZero, needed: true);
        Measured? lead = map.Dimension("lead", Least.Zero);
        Measured? offset = map.Dimension("offset", Least.Zero);
        Measured? maxCut = map.Dimension("max_cut", Least.Zero);
        Measured? rethread = map.Dimension("rethread", Least.Zero);
        JointKind? joint = map.Choose("joint", Choices.Joint);
        Angle? swing = Swing(map);
        StudDirection? stud = map.Choose("stud", Choices.Stud);
        if (thread is null || centerToTip is null || threadLength is null)
        {
            return null;
        }

        ThreadedEnd end = new()
        {
            Info = info,
            Thread = thread,
            CenterToTip = centerToTip.Value,
            ThreadLength = threadLength.Value,
            Lead = lead,
            Offset = offset ?? default,
            MaxCut = maxCut ?? default,
            Rethread = rethread ?? default,
            Joint = joint,
            Swing = swing,
            Stud = stud,
        };
        PartFaultProblems.Report(map, end);
        tables.Swings.Add(end, map);
        return end;
    }

    private SocketEnd? Socket(MapReader map, ScalarNode? id)
    {
        PartInfo info = Info(map, id);
        foreach (string key in Keys.Threaded)
        {
            if (map.Find(key) is { } entry)
            {
                file.Findings.Problem(entry.Key.Span, $"'{key}' belongs to an end with an external thread; {map.Title} has a socket");
            }
        }

        Measured? centerToFace = map.Dimension("center_to_face", Least.AboveZero, needed: true);
        TappedHole? socket = Hole(map, "socket");
        JointKind? joint = map.Choose("joint", Choices.Joint);
        Angle? swing = Swing(map);
        StudDirection? stud = map.Choose("stud", Choices.Stud);
        if (centerToFace is null || socket is null)
        {
            return null;
        }

        SocketEnd end = new()
        {
            Info = info,
            CenterToFace = centerToFace.Value,
            Socket = socket,
            Joint = joint,
            Swing = swing,
            Stud = stud,
        };
        if (socket.Bore == Bore.Open)
        {
            map.Findings.Note(
                map.SpanOf("socket"),
                $"the bore of {map.Title} is open, but where the ball's housing begins is not known: it is taken as closed at its thread");
        }

        PartFaultProblems.Report(map, end);
        tables.Swings.Add(end, map);
        return end;
    }

    private void Sleeve(MapReader map)
    {
        ScalarNode? id = Ids.Read(map);
        PartInfo info = Info(map, id);
        Measured? length = map.Dimension("length", Least.AboveZero, needed: true);
        TappedHole? inner = Hole(map, "inner");
        TappedHole? outer = Hole(map, "outer");
        Outside? outside = map.Object("outside", ValueText.ParseOutside);
        Sleeve? sleeve = null;
        if (length is not null && inner is not null && outer is not null)
        {
            sleeve = new Sleeve { Info = info, Length = length.Value, Inner = inner, Outer = outer, Outside = outside };
            PartFaultProblems.Report(map, sleeve);
        }

        tables.Sleeves.Add(id, sleeve, file);
    }

    private void Nut(MapReader map)
    {
        ScalarNode? id = Ids.Read(map);
        PartInfo info = Info(map, id);
        ThreadDesignation? thread = map.Thread("thread", ThreadGender.Internal, needed: true);
        Measured? thickness = map.Dimension("thickness", Least.AboveZero, needed: true);
        JamNut? nut = thread is null || thickness is null
            ? null
            : new JamNut { Info = info, Thread = thread, Thickness = thickness.Value };
        tables.JamNuts.Add(id, nut, file);
    }

    /// <summary>A threaded hole, or null where a value of it could not be read.</summary>
    private static TappedHole? Hole(MapReader part, string key)
    {
        if (part.Map(key, Keys.Hole, needed: true) is not { } map)
        {
            return null;
        }

        ThreadDesignation? thread = map.Thread("thread", ThreadGender.Internal, needed: true);
        Measured? depth = map.Dimension("depth", Least.AboveZero, needed: true);
        Bore? bore = map.Choose("bore", Choices.Bore, needed: true);
        Measured? countersink = map.Dimension("countersink", Least.Zero);
        Measured? witness = map.Dimension("witness", Least.Zero);
        Measured? clamp = map.Dimension("clamp", Least.Zero);
        if (thread is null || depth is null)
        {
            return null;
        }

        TappedHole hole = new()
        {
            Thread = thread,
            Depth = depth.Value,
            Bore = bore ?? Bore.Closed,
            Countersink = countersink,
            Witness = witness,
            Clamp = clamp,
        };
        PartFaultProblems.Report(map, hole);
        return hole;
    }

    private PartInfo Info(MapReader map, ScalarNode? id)
    {
        Material? material = null;
        if (map.Text("material") is { } name)
        {
            material = tables.Resolve(tables.Materials, name, file)?.Part;
        }

        return new PartInfo(id?.Value ?? string.Empty)
        {
            Name = map.Line("name"),
            Material = material,
            Price = map.Object("price", ValueText.ParsePrice),
            Mass = map.Value("mass", ValueText.ParseMass),
        };
    }

    private static Angle? Swing(MapReader map) =>
        map.Angle("swing", degrees => degrees > 0 && degrees < 90, "above 0 and below 90 deg");
}
