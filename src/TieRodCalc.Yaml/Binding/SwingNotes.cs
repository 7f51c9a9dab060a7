using TieRodCalc.Steering;
using TieRodCalc.Yaml.Sources;

namespace TieRodCalc.Yaml.Binding;

/// <summary>Where the files say the swing or the stud of an end's joint.</summary>
internal sealed class SwingNotes
{
    private readonly List<(object End, LoadedFile File, string Key, TextSpan Span)> _said = [];

    /// <summary>Keeps where an end says it.</summary>
    public void Add(object end, MapReader map)
    {
        foreach (string key in (ReadOnlySpan<string>)["swing", "stud"])
        {
            if (map.Find(key) is { } entry)
            {
                _said.Add((end, map.File, key, entry.Key.Span));
            }
        }
    }

    /// <summary>Notes, once a file and key, that it is not checked on rods whose corner is not known.</summary>
    public void Report(IReadOnlyList<JobRod> rods, IReadOnlyList<JobCorner> corners)
    {
        HashSet<CarSide?> known = [.. corners.Where(corner => corner.Geometry is not null).Select(corner => (CarSide?)corner.Side)];
        HashSet<object> ends = new(ReferenceEqualityComparer.Instance);
        foreach (JobRod rod in rods.Where(rod => !known.Contains(rod.Side)))
        {
            ends.UnionWith(rod.Candidates?.Inner ?? []);
            ends.UnionWith(rod.Candidates?.Outer ?? []);
            ends.UnionWith(rod.Candidates?.Sockets ?? []);
        }

        foreach ((object _, LoadedFile file, string key, TextSpan span) in
            _said.Where(said => ends.Contains(said.End)).DistinctBy(said => (said.File, said.Key)))
        {
            file.Findings.Note(
                span,
                $"'{key}' is checked by 'bump' and 'plan' only where the job gives the points of the rod's corner, in 'corner' and "
                    + "'steering'");
        }
    }
}
