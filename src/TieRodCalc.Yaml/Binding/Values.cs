using TieRodCalc.Parts;
using TieRodCalc.Steering;
using TieRodCalc.Text;
using TieRodCalc.Threads;
using TieRodCalc.Yaml.Sources;
using TieRodCalc.Yaml.Tree;
using UnitsNet;

namespace TieRodCalc.Yaml.Binding;

/// <summary>How far down a length may go.</summary>
internal enum Least
{
    /// <summary>Zero is a value.</summary>
    Zero,

    /// <summary>The length must be above zero.</summary>
    AboveZero,
}

/// <summary>
/// Reads the values of keys, each with its range. What is not there is null; so is what could not be read, which then has
/// its problem.
/// </summary>
internal static class Values
{
    /// <summary>A dimension or a measurement, with its tolerance.</summary>
    public static Measured? Dimension(this MapReader map, string key, Least least, bool needed = false)
    {
        if (map.Text(key, needed) is not { } text || !TryParse(map.File, text, LengthText.Parse, out Measured value))
        {
            return null;
        }

        if (!InRange(map.Findings, text, key, value.Nominal, least))
        {
            return null;
        }

        if (least == Least.AboveZero && !(value.PlusMinus.Millimeters < value.Nominal.Millimeters))
        {
            map.Findings.Problem(text.Span, $"the tolerance of '{key}' must be smaller than the dimension");
            return null;
        }

        return value;
    }

    /// <summary>A length without a tolerance.</summary>
    public static Length? Exact(this MapReader map, string key, Least least, bool needed = false) =>
        map.Text(key, needed) is { } text ? Exact(map.File, text, key, least) : null;

    /// <summary>The same of a text.</summary>
    public static Length? Exact(LoadedFile file, ScalarNode text, string key, Least least) =>
        TryParse(file, text, LengthText.ParseExact, out Length value) && InRange(file.Findings, text, key, value, least) ? value : null;

    /// <summary>A length that may be negative.</summary>
    public static Length? Signed(this MapReader map, string key, bool needed = false) =>
        map.Text(key, needed) is { } text ? Signed(map.File, text) : null;

    /// <summary>The thread of an end or of a hole.</summary>
    public static ThreadDesignation? Thread(this MapReader map, string key, ThreadGender gender, bool needed = false) =>
        map.Text(key, needed) is { } text && TryParse(map.File, text, Parser(gender), out ThreadDesignation thread) ? thread : null;

    /// <summary>What reads the threads of a gender.</summary>
    public static Func<string, Parsed<ThreadDesignation>> Parser(ThreadGender gender) => gender == ThreadGender.External
        ? static text => ThreadText.Parse(text, ThreadGender.External)
        : static text => ThreadText.Parse(text, ThreadGender.Internal);

    /// <summary>A value that is an object.</summary>
    public static T? Object<T>(this MapReader map, string key, Func<string, Parsed<T>> parse)
        where T : class => map.Text(key) is { } text && TryParse(map.File, text, parse, out T value) ? value : null;

    /// <summary>A value that is a structure.</summary>
    public static T? Value<T>(this MapReader map, string key, Func<string, Parsed<T>> parse)
        where T : struct => map.Text(key) is { } text && TryParse(map.File, text, parse, out T value) ? value : null;

    /// <summary>An angle between two limits in degrees.</summary>
    /// <param name="map">The map.</param>
    /// <param name="key">The key.</param>
    /// <param name="fits">Whether a number of degrees is in range.</param>
    /// <param name="range">The range in words, for who is out of it.</param>
    public static Angle? Angle(this MapReader map, string key, Func<double, bool> fits, string range)
    {
        if (map.Value(key, ValueText.ParseAngle) is not { } angle)
        {
            return null;
        }

        if (fits(angle.Degrees))
        {
            return angle;
        }

        map.Findings.Problem(map.SpanOf(key), $"'{key}' must be {range}");
        return null;
    }

    /// <summary>One of the values that a key chooses from.</summary>
    public static T? Choose<T>(this MapReader map, string key, Choice<T> choice, bool needed = false)
        where T : struct
    {
        if (map.Text(key, needed) is not { } text)
        {
            return null;
        }

        int found = Array.IndexOf(choice.Names, text.Value);
        if (found >= 0)
        {
            return choice.Values[found];
        }

        map.Findings.Problem(
            text.Span,
            $"'{key}' must be {Wording.Row([.. choice.Names], "or")}, not {Wording.Quote(text.Value)}",
            Nearest.Of(text.Value, choice.Names));
        return null;
    }

    /// <summary>A text on one line: a name, a source.</summary>
    public static string? Line(this MapReader map, string key, bool needed = false)
    {
        if (map.Text(key, needed) is not { } text)
        {
            return null;
        }

        string line = text.Value.Trim();
        if (line.Length > 0 && line.AsSpan().IndexOfAny("\r\n\u0085\u2028\u2029") < 0)
        {
            return line;
        }

        map.Findings.Problem(text.Span, line.Length == 0 ? $"'{key}' has no value" : $"'{key}' must stand on one line");
        return null;
    }

    /// <summary>A point: three coordinates, each with its unit.</summary>
    public static Point? Point(this MapReader map, string key, bool needed = false) =>
        (needed ? map.Need(key) : map.Find(key)) is { } entry ? Point(map, entry) : null;

    /// <summary>Two points.</summary>
    public static (Point First, Point Second)? TwoPoints(this MapReader map, string key, bool needed = false)
    {
        if (map.List(key, needed) is not { } list)
        {
            return null;
        }

        if (list.Items.Count != 2)
        {
            if (list.Whole)
            {
                map.Findings.Problem(list.Span, $"'{key}' must be two points, [[x, y, z], [x, y, z]]");
            }

            return null;
        }

        ScalarNode name = map.Find(key)!.Value.Key;
        Point? first = Point(map, (name, list.Items[0]));
        Point? second = Point(map, (name, list.Items[1]));
        return first is { } one && second is { } other ? (one, other) : null;
    }

    /// <summary>Parses a text, or reports the fault at its place.</summary>
    public static bool TryParse<T>(LoadedFile file, ScalarNode text, Func<string, Parsed<T>> parse, out T value)
    {
        Parsed<T> parsed = parse(text.Value);
        if (parsed.Fault is { } fault)
        {
            file.Findings.Problem(text.Part(fault.Offset, fault.Length), fault.Message);
            value = default!;
            return false;
        }

        value = parsed.Value;
        return true;
    }

    private static Length? Signed(LoadedFile file, ScalarNode text) =>
        TryParse(file, text, LengthText.ParseSigned, out Length value) ? value : null;

    private static bool InRange(Findings findings, ScalarNode text, string key, Length value, Least least)
    {
        bool inRange = least == Least.Zero || value.Millimeters > 0;
        if (!inRange)
        {
            findings.Problem(text.Span, $"'{key}' must be above zero");
        }

        return inRange;
    }

    private static Point? Point(MapReader map, (ScalarNode Key, Node Value) entry)
    {
        if (entry.Value is not ListNode list)
        {
            map.WrongKind(entry, "a point, [x, y, z]");
            return null;
        }

        if (list.Items.Count != 3)
        {
            if (list.Whole)
            {
                map.Findings.Problem(list.Span, "a point has three coordinates, [x, y, z], each with its unit");
            }

            return null;
        }

        Length? x = Coordinate(map, list.Items[0]);
        Length? y = Coordinate(map, list.Items[1]);
        Length? z = Coordinate(map, list.Items[2]);
        return x is null || y is null || z is null ? null : new Point(x.Value, y.Value, z.Value);
    }

    private static Length? Coordinate(MapReader map, Node node)
    {
        if (node is ScalarNode { IsEmpty: false } text)
        {
            return Signed(map.File, text);
        }

        if (node is not RefusedNode)
        {
            map.Findings.Problem(node.Span, "a coordinate is a length with its unit");
        }

        return null;
    }
}
