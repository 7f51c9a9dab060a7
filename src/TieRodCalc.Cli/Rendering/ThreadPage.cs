using System.Globalization;
using TieRodCalc.Cli.Commands;
using TieRodCalc.Parts;
using TieRodCalc.Text;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>
/// A thread or a pair as a person reads it: whether the pair goes together; what the thread is; its limits and drill; the
/// engagement it needs; what it can be taken for; cautions.
/// </summary>
internal sealed class ThreadPage
{
    private readonly Page _page = new();
    private readonly ThreadReport _report;
    private readonly ThreadLimits _external;
    private readonly ThreadLimits _internal;

    private ThreadPage(ThreadReport report) =>
        (_report, _external, _internal) = (report, report.Question.External, report.Question.Internal);

    /// <summary>The text of a report.</summary>
    public static string Of(ThreadReport report)
    {
        ThreadPage text = new(report);
        text.AddHead();
        text.AddThreads();
        text.AddLimits();
        text.AddDrills();
        new EngagementPage(text._page, report).Add();
        if (!report.Question.IsPair)
        {
            new LookAlikePage(text._page, report.Question.External.Thread).Add(report.LookAlikes);
        }

        text.AddCautions();
        return text._page.ToString();
    }

    private void AddHead()
    {
        string male = ThreadText.Format(_external.Thread);
        if (!_report.Question.IsPair)
        {
            _page.Sentence($"THREAD {male}", indent: 0);
            return;
        }

        string female = ThreadText.Format(_internal.Thread);
        FitSentences sentences = new(ThreadSentences.UnitOf(_external.Thread));
        _page
            .Sentence($"{male} INTO {female}: {FitSentences.Headline(_report.Fit)}", indent: 0)
            .Sentence(FitSentences.OfDifference(_report.Difference));
        if (!_report.Matches)
        {
            _page
                .Sentence(sentences.Of(_external.Thread, _internal.Thread, _report.Fit))
                .Sentence(FitSentences.NeverForce);
            if (FitSentences.CountsTurns(_report.Fit))
            {
                _page.Sentence(FitSentences.HowTurnsAreCounted);
            }
        }
    }

    private void AddThreads()
    {
        if (_report.Matches)
        {
            _page.Heading("The thread");
            if (!_report.Question.IsPair)
            {
                _page.Row("designation", ThreadText.Format(_external.Thread));
            }

            AddThread(_external.Thread);
        }
        else
        {
            _page.Heading($"The male, {ThreadText.Format(_external.Thread)}");
            AddThread(_external.Thread);
            _page.Heading($"The female, {ThreadText.Format(_internal.Thread)}");
            AddThread(_internal.Thread);
        }

        ThreadSentences sentences = new(ThreadSentences.UnitOf(_external.Thread));
        foreach (ThreadWarning warning in _report.Warnings.Where(warning => IsOfThread(warning.Code)))
        {
            _page.Point(sentences.Of(warning));
        }
    }

    /// <summary>Whether a warning is told with the thread; the others are told with the engagement.</summary>
    public static bool IsOfThread(ThreadWarningCode code) => code is ThreadWarningCode.ClassAssumed
        or ThreadWarningCode.CoarsePitchAssumed or ThreadWarningCode.SpecialThread or ThreadWarningCode.BeyondTables;

    private void AddThread(ThreadDesignation thread)
    {
        LengthDisplay unit = ThreadSentences.UnitOf(thread);
        ThreadSize size = thread.Size;
        string perInch = (Length.FromInches(1) / size.Pitch).ToString("0.##", CultureInfo.InvariantCulture);
        string inches = size.StressArea.SquareInches.ToString("0.0000", CultureInfo.InvariantCulture) + " in2";
        string millimeters = size.StressArea.SquareMillimeters.ToString("0.0", CultureInfo.InvariantCulture) + " mm2";
        _page
            .Row("series", ThreadSentences.OfSeries(thread))
            .Row("pitch", $"{LengthFormat.FineBoth(size.Pitch, unit)}; {perInch} threads per inch")
            .Row("hand", Names.Of(thread.Hand))
            .Row("basic major, D", LengthFormat.FineBoth(size.Diameter, unit))
            .Row("basic pitch, D2", LengthFormat.FineBoth(size.PitchDiameter, unit))
            .Row("basic minor, D1", LengthFormat.FineBoth(size.MinorDiameter, unit))
            .Row("tensile stress area", unit == LengthDisplay.Inch ? $"{inches} ({millimeters})" : $"{millimeters} ({inches})");
    }

    private void AddLimits()
    {
        _page.Heading("Limits of size; \"open\" is what the standard does not bound");
        AddLimits(_external);
        AddLimits(_internal);
    }

    private void AddLimits(ThreadLimits limits)
    {
        _page.Row($"{Names.Of(limits.Gender)}, class {limits.ToleranceClass}", Columns("least", "most"));
        AddDiameter("  major diameter", limits.Major);
        AddDiameter("  pitch diameter", limits.Pitch);
        AddDiameter("  minor diameter", limits.Minor);

        void AddDiameter(string label, DiameterLimits diameter)
        {
            LengthDisplay unit = ThreadSentences.UnitOf(limits.Thread);
            _page.Row(label, Columns(
                diameter.Least is { } least ? LengthFormat.FineBoth(least, unit, LengthRounding.Up) : "open",
                diameter.Most is { } most ? LengthFormat.FineBoth(most, unit, LengthRounding.Down) : "open"));
        }

        static string Columns(string first, string second)
        {
            const int First = 25;
            return Page.Whole(first.PadRight(First) + second);
        }
    }

    private void AddDrills()
    {
        LengthDisplay unit = ThreadSentences.UnitOf(_internal.Thread);
        TapDrills drills = TapDrills.Of(_internal);
        Length least = _internal.Minor.Least!.Value;
        Length most = _internal.Minor.Most!.Value;
        _page
            .Heading("Tap drill of the internal thread")
            .Row(
                "hole",
                $"{LengthFormat.FineBoth(least, unit, LengthRounding.Up)} to {LengthFormat.FineBoth(most, unit, LengthRounding.Down)}")
            .Row("in sixty-fourths", Choice(drills.SixtyFourths, drill => Page.Whole(LengthFormat.Fraction(drill))))
            .Row("in tenths of a mm", Choice(drills.Tenths, drill => Page.Whole($"{Tenths(drill)} mm")))
            .Sentence(ThreadSentences.AboutDrills);

        string Choice(DrillChoice choice, Func<Length, string> shown) => choice.Within.Count > 0
            ? string.Join(", ", choice.Within.Select(shown))
            : $"none; the nearest, {shown(choice.Nearest)}, is {Off(choice.Nearest)}";

        string Off(Length drill) => drill > most
            ? $"{LengthFormat.FineBoth(drill - most, unit, LengthRounding.Up)} too large"
            : $"{LengthFormat.FineBoth(least - drill, unit, LengthRounding.Up)} too small";

        static string Tenths(Length drill) => drill.Millimeters.ToString("0.0", CultureInfo.InvariantCulture);
    }

    private void AddCautions()
    {
        _page.Heading("Cautions");
        foreach (string caution in Cautions.All)
        {
            _page.Point(caution);
        }
    }
}
