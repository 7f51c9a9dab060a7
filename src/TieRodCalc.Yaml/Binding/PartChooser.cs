using TieRodCalc.Rods;
using TieRodCalc.Threads;
using TieRodCalc.Yaml.Sources;
using TieRodCalc.Yaml.Tree;

namespace TieRodCalc.Yaml.Binding;

/// <summary>What a rod says of one of its parts.</summary>
/// <param name="Part">The part that it names; null where it names none or one that has problems.</param>
/// <param name="IsOpen">True where it leaves the part to be chosen.</param>
/// <param name="Candidates">What it leaves to be chosen from, in the order of the files; the named part alone where it names one.</param>
/// <param name="Span">The place.</param>
internal readonly record struct ChosenPart<T>(T? Part, bool IsOpen, IReadOnlyList<T> Candidates, TextSpan Span)
    where T : class;

/// <summary>Reads the parts of a rod: an id, <c>any</c>, a list of ids, or a filter.</summary>
internal sealed class PartChooser(PartTables tables)
{
    /// <summary>Reads a part; null where the key is not there or its value cannot be read.</summary>
    /// <param name="map">The rod, or its nuts.</param>
    /// <param name="key">The key.</param>
    /// <param name="table">The parts to choose from.</param>
    /// <param name="threads">The keys that a filter may have, each with the thread of a part that it is held against.</param>
    /// <param name="gender">Gender of these threads.</param>
    /// <param name="needed">Whether the key must be there.</param>
    /// <param name="none">Whether <c>none</c> is an answer.</param>
    public ChosenPart<T>? Read<T>(
        MapReader map,
        string key,
        PartTable<T> table,
        IReadOnlyDictionary<string, Func<T, ThreadDesignation>> threads,
        ThreadGender gender,
        bool needed,
        bool none = false)
        where T : class
    {
        switch ((needed ? map.Need(key) : map.Find(key))?.Value)
        {
            case null:
                return null;
            case ListNode list:
                HashSet<string> ids = ReadList(map, key, list, table);
                return new ChosenPart<T>(null, true, [.. table.Parts.Where(part => ids.Contains(table.IdOf(part)))], list.Span);
            case MapNode node:
                MapReader wanted = MapReader.Open(node, key, [.. threads.Keys], map.File, map);
                IEnumerable<T> left = table.Parts;
                foreach ((string end, Func<T, ThreadDesignation> threadOf) in threads)
                {
                    if (wanted.Thread(end, gender) is { } thread)
                    {
                        left = left.Where(part => Is(threadOf(part), thread));
                    }
                }

                return new ChosenPart<T>(null, true, [.. left], node.Span);
            default:
                return map.Text(key) is { } name ? Named(map, name, table, none) : null;
        }
    }

    /// <summary>Size and hand are the same, and the class where the filter says one.</summary>
    private static bool Is(ThreadDesignation thread, ThreadDesignation wanted) =>
        Rod.Difference(thread, wanted) == ThreadDifference.None
        && (wanted.ToleranceClass is null || wanted.ToleranceClass == thread.ToleranceClass);

    private ChosenPart<T>? Named<T>(MapReader map, ScalarNode name, PartTable<T> table, bool none)
        where T : class => name.Value switch
        {
            Ids.Any => new ChosenPart<T>(null, true, table.Parts, name.Span),
            Ids.None when none => new ChosenPart<T>(null, false, [], name.Span),
            _ => tables.Resolve(table, name, map.File) is { } found
                ? new ChosenPart<T>(found.Part, false, found.Part is null ? [] : [found.Part], name.Span)
                : null,
        };

    private HashSet<string> ReadList<T>(MapReader map, string key, ListNode list, PartTable<T> table)
        where T : class
    {
        HashSet<string> ids = [];
        if (list.Items.Count == 0 && list.Whole)
        {
            map.Findings.Problem(list.Span, $"the list of '{key}' is empty");
        }

        foreach (Node item in list.Items)
        {
            if (item is ScalarNode { IsEmpty: false } name)
            {
                tables.Resolve(table, name, map.File);
                ids.Add(name.Value);
            }
            else if (item is not RefusedNode)
            {
                map.Findings.Problem(item.Span, $"an item of the list '{key}' must be an id");
            }
        }

        return ids;
    }
}
