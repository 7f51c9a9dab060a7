using System.Globalization;
using TieRodCalc.Planning;
using TieRodCalc.Threads;

namespace TieRodCalc.Text;

/// <summary>The sentences about the strength of a rod's joints.</summary>
internal static class StrengthSentences
{
    /// <summary>A warning in words.</summary>
    /// <param name="warning">The warning.</param>
    /// <param name="end">The end that it is about.</param>
    /// <param name="value">Its length in words.</param>
    /// <param name="other">Its other length in words.</param>
    public static string Of(PlanWarning warning, string end, string value, string other) => warning.Code switch
    {
        WarningCode.StrengthNotChecked =>
            $"Whether the threads of the {end} strip was not checked: {Missing(warning.Missing)}.",
        WarningCode.StrengthGoverns =>
            $"{other} of engagement is not enough at the {end}: strength asks for {value}. {Weaker(warning.Ratio)}",
        WarningCode.OutsideUnknown =>
            $"The sleeve's outside is not said: that a thin wall dilates and strips sooner is not counted at the {end}.",
        WarningCode.SleeveTooThin =>
            $"The sleeve's wall at the {end} is thinner than the method covers (below 1.4 diameters across): strength asks for more "
                + "engagement than is shown, by how much is not known.",
        WarningCode.SleeveSlit =>
            $"A clamp closes the sleeve at the {end}: a slit sleeve dilates more than the method covers, so that strength asks for "
                + "more engagement than is shown, by how much is not known.",
        WarningCode.BendingBeyondRange =>
            $"The strengths at the {end} are so far apart that how the weaker threads bend is outside the method: what is shown is a "
                + "guide.",
        WarningCode.SpecialThread =>
            $"The thread of the {end} is in no standard series: it is special, and its limits of size follow from the standard's "
                + "formulas.",
        WarningCode.BeyondTables =>
            $"The standard's tables do not reach to the thread of the {end}: its formulas were used beyond them.",
        WarningCode.GivesWayUnderLoad =>
            $"THE {end.ToUpperInvariant()} GIVES WAY UNDER THE LOAD that the job gives: the least factor is "
                + $"{Floor(warning.Ratio)}. Do not drive it.",
        WarningCode.LoadNotChecked =>
            $"THE LOAD WAS NOT CHECKED IN FULL at the {end}: {Missing(warning.Missing)}.",
        WarningCode.LoadLeavesOut =>
            "The factors are against a load pulled once and steadily along the line of the balls. Not in them: yielding, shock, "
                + "fatigue, buckling, the sleeve's own section, the ball joints.",
        _ => throw new ArgumentOutOfRangeException(nameof(warning)),
    };

    /// <summary>Which thread is the weaker one, and what that means.</summary>
    private static string Weaker(double? ratio) => ratio > 1
        ? $"The sleeve's thread is the weaker one (J = {Number(ratio)}) and would strip before the end breaks; a stripped thread "
            + "gives no warning."
        : $"The end's thread (J = {Number(ratio)}) would strip before the end breaks; a stripped thread gives no warning.";

    private static string Missing(MissingStrength missing)
    {
        List<string> strengths = [];
        if (missing.HasFlag(MissingStrength.End))
        {
            strengths.Add("the end");
        }

        if (missing.HasFlag(MissingStrength.Sleeve))
        {
            strengths.Add("the sleeve");
        }

        string tensile = strengths.Count > 0 ? $"the tensile strength of {string.Join(" and of ", strengths)} is not given" : string.Empty;
        string limits = missing.HasFlag(MissingStrength.Limits)
            ? "the standard has no such tolerance class for this pitch, or the threads would not meet at their limits"
            : string.Empty;
        return string.Join("; ", new[] { tensile, limits }.Where(reason => reason.Length > 0));
    }

    private static string Number(double? value) => value?.ToString("0.00", CultureInfo.InvariantCulture) ?? string.Empty;

    /// <summary>A factor is never shown larger than it is.</summary>
    private static string Floor(double? value) => Number(Math.Floor((value ?? 0) * 100 + 1e-9) / 100);
}
