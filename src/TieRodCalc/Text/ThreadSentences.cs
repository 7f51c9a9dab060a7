using System.Globalization;
using TieRodCalc.Planning;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Text;

/// <summary>The sentences that a thread and the engagement of a pair are told in.</summary>
/// <param name="unit">The unit that lengths are told in first.</param>
public sealed class ThreadSentences(LengthDisplay unit)
{
    /// <summary>What the loads of a pair do not have in them.</summary>
    public static string NotInLoads { get; } =
        "Pulled once, steadily, straight along the axis, with exactly the required engagement. Not in it: the female part's own "
            + "section, bending, knocks and load that comes again and again, all of which break steering parts at far less; nor any factor "
            + "of safety.";

    /// <summary>Why a strong male breaks at less than its stress area times its strength.</summary>
    public static string OfSmallerArea { get; } = "by the smaller stress area that counts above 100 ksi";

    /// <summary>What a drill does.</summary>
    public static string AboutDrills { get; } =
        "The hole, measured, is to lie in this range. A twist drill mostly cuts a little larger than itself (common practice, no "
            + "source).";

    /// <summary>The unit of a thread's own standard.</summary>
    public static LengthDisplay UnitOf(ThreadDesignation thread)
    {
        ArgumentNullException.ThrowIfNull(thread);
        return thread.Size.Form == ThreadForm.Unified ? LengthDisplay.Inch : LengthDisplay.Millimeter;
    }

    /// <summary>A warning in words.</summary>
    public string Of(ThreadWarning warning)
    {
        ArgumentNullException.ThrowIfNull(warning);
        ThreadDesignation thread = warning.Limits.Thread;
        string name = ThreadText.Format(thread);
        bool unified = thread.Size.Form == ThreadForm.Unified;
        string standard = unified ? "ASME B1.1" : "ISO 965-1";
        return warning.Code switch
        {
            ThreadWarningCode.ClassAssumed =>
                $"{name}: no class is said of the {Names.Of(warning.Limits.Gender)} thread; {warning.Limits.ToleranceClass}, the usual "
                    + "one, is assumed.",
            ThreadWarningCode.CoarsePitchAssumed =>
                $"{name}: only the diameter is said; the coarse pitch, {Shown(thread.Size.Pitch)}, is assumed. Fine pitches of the same "
                    + "diameter are common.",
            ThreadWarningCode.SpecialThread when unified =>
                $"{name} is a special thread: no series of ASME B1.1 has this diameter with this pitch. Its tolerances are made for nine "
                    + $"pitches of engagement, {Shown(9 * thread.Size.Pitch)}.",
            ThreadWarningCode.SpecialThread =>
                $"{name} is a special thread: ISO 261 does not list this diameter with this pitch. Its limits follow from the tolerances "
                    + "of ISO 965-1 all the same.",
            ThreadWarningCode.BeyondTables =>
                $"{name}: the tables of {standard} end before this size. Its limits are from the formulas of the standard.",
            ThreadWarningCode.ThreadsDoNotMatch =>
                "The threads do not match: no engagement makes this pair hold, so none is computed.",
            ThreadWarningCode.SteelAssumed =>
                $"The female is not said to be steel or aluminum: {Number(UsualEngagement.SteelDiameters)} diameters, the rule for steel, "
                    + $"are taken. In aluminum take {Number(UsualEngagement.AluminumDiameters)} diameters, "
                    + $"{UpTo(UsualEngagement.AluminumDiameters * thread.Size.Diameter)} (both common practice, no source).",
            ThreadWarningCode.StrengthNotChecked =>
                $"Whether the threads strip is not checked: the tensile strength of {Missing(warning.Member)} is not said.",
            ThreadWarningCode.ThreadsMayNotMeet =>
                "At the loosest limits of these classes the two threads do not overlap at all: no strength is computed.",
            ThreadWarningCode.OutsideUnknown =>
                "The outside of the female is not said: that a thin wall widens and lets the threads strip sooner is not counted, nor that "
                    + "the threads bend. The real need is greater.",
            ThreadWarningCode.SleeveTooThin =>
                "The wall of the female is thin, its width under 1.4 diameters, where the method ends. It is counted as if it were 1.4 "
                    + "diameters wide: the real need is greater, nobody knows by how much.",
            ThreadWarningCode.SleeveSlit =>
                "The female is slit, which the method does not cover: the real need is greater, nobody knows by how much.",
            ThreadWarningCode.BendingBeyondRange =>
                "One thread is so much stronger than the other that the bending of the weaker one lies outside the method; it is not "
                    + "counted in full.",
            _ => throw new ArgumentOutOfRangeException(nameof(warning)),
        };
    }

    /// <summary>Which thread is the weaker one.</summary>
    /// <param name="strengthRatio"><c>J</c>.</param>
    public static string OfRatio(double strengthRatio) => strengthRatio switch
    {
        > 1 => "above 1, the female thread is the weaker one",
        < 1 => "below 1, the male thread is the weaker one",
        _ => "1, the two threads are equally strong",
    };

    /// <summary>What governs the engagement of a pair.</summary>
    public static string OfGoverning(RequiredEngagement engagement)
    {
        ArgumentNullException.ThrowIfNull(engagement);
        return engagement switch
        {
            { Strength: null } => "the rule alone",
            { GovernedBy: EngagementSource.Strength } => "strength governs",
            _ => "the rule governs",
        };
    }

    /// <summary>The series of a Unified thread, said or found, in words; of a metric thread its choice in ISO 261.</summary>
    public static string OfSeries(ThreadDesignation thread)
    {
        ArgumentNullException.ThrowIfNull(thread);
        if (thread.SeriesInUse is not { } series)
        {
            return thread.IsSpecial ? "ISO metric, SPECIAL: ISO 261 does not list it" : "ISO metric, listed in ISO 261";
        }

        UnifiedSeries has = (thread with { Series = null }).SeriesInUse!.Value;
        string said = thread.Series is null ? "not said, found by its size"
            : has == series ? "as said"
            : $"as said, but {Names.Of(has)} by its size";
        return $"{Names.Of(series)}, {said}{(thread.IsSpecial ? "; SPECIAL: in no series" : string.Empty)}";
    }

    /// <summary>Why there are no limits for one member of a thread: the standard does not have its class.</summary>
    public static string OfMissingClass(ThreadDesignation thread, ThreadGender gender)
    {
        ArgumentNullException.ThrowIfNull(thread);
        string pitch = string.Create(CultureInfo.InvariantCulture, $"{thread.Size.Pitch.Millimeters:0.######} mm");
        bool said = thread.ToleranceClass is { } named && IsOf(named, gender);
        string usual = gender == ThreadGender.External ? "6g" : "6H";
        string what = said
            ? $"no class {thread.ToleranceClass}"
            : $"no class {usual}, which is taken where none is said of the {Names.Of(gender)} thread,";
        string[] classes = [.. Classes(gender).Where(name => ThreadLimits.Of(thread with { ToleranceClass = name }, gender) is not null)];
        string two = gender == ThreadGender.External ? "5g6g" : "5H6H";
        bool hasTwo = ThreadLimits.Of(thread with { ToleranceClass = two }, gender) is not null;
        string has = (classes.Length == 0 ? "none" : string.Join(", ", classes))
            + (hasTwo ? $", and classes of two grades such as {two}" : string.Empty);
        string cure = said ? string.Empty : "; say the class";
        return $"ISO 965-1 has {what} for a pitch of {pitch}; for {Names.Of(gender)} threads it has {has}{cure}";
    }

    /// <summary>Why a female part cannot have its outside: the thread does not fit into it.</summary>
    public static string OfNarrowOutside(ThreadDesignation inside)
    {
        ArgumentNullException.ThrowIfNull(inside);
        return $"the outside must be larger than the thread inside it: {ThreadText.Format(inside)} has "
            + $"{LengthFormat.FineBoth(inside.Size.Diameter, UnitOf(inside))}";
    }

    private static bool IsOf(string toleranceClass, ThreadGender gender) =>
        char.IsLower(toleranceClass[1]) == (gender == ThreadGender.External);

    private static IEnumerable<string> Classes(ThreadGender gender) =>
        from grade in Enumerable.Range(3, 7)
        from position in gender == ThreadGender.External ? "efgh" : "GH"
        select string.Create(CultureInfo.InvariantCulture, $"{grade}{position}");

    private static string Missing(ThreadGender? member) => member switch
    {
        ThreadGender.External => "the male",
        ThreadGender.Internal => "the female",
        _ => "the male and of the female",
    };

    private static string Number(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);

    private string Shown(Length length) => LengthFormat.Both(length, unit);

    private string UpTo(Length length) => LengthFormat.Both(length, unit, LengthRounding.Up);
}
