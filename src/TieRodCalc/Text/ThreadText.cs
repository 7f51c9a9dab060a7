using TieRodCalc.Threads;

namespace TieRodCalc.Text;

/// <summary>Thread designations as the standards write them.</summary>
/// <remarks>
/// <para>Unified (ASME B1.1): diameter in inches as fraction or decimal, threads per inch, and where they are said series, class and hand:
/// <c>5/8-18 UNF-2A LH</c>, <c>0.6875-18 UNS-2B</c>, <c>1 1/8-12</c>. Number sizes are refused where they are written as a number, since
/// <c>2-56</c> and <c>2-4.5</c> are different things: their diameter says what is meant, <c>0.190-32</c>.</para>
/// <para>Metric (ISO 965-1): <c>M18x1.5-6g LH</c>; without a pitch (<c>M18</c>) the coarse one of ISO 261 is taken.</para>
/// <para>Capital and small letters count in a metric class alone. Diameters from 1 mm to 150 mm, pitches from 0.2 mm to a third of the
/// diameter, six decimals at most.</para>
/// </remarks>
public static class ThreadText
{
    /// <summary>A designation; where a gender is given, a class of the other gender is a fault.</summary>
    /// <param name="text">The designation.</param>
    /// <param name="gender">What the thread is on, or null where that is not known.</param>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static Parsed<ThreadDesignation> Parse(string text, ThreadGender? gender = null)
    {
        var cursor = new TextCursor(text);
        return ThreadSizeReader.Read(cursor).Then(size => ThreadTailReader.Read(cursor, size, gender));
    }

    /// <summary>The designation in the standard's spelling, LH added to a left-hand thread.</summary>
    /// <remarks>Inch diameters are written as a fraction where they are a sixty-fourth, as a decimal otherwise. What
    /// <see cref="Parse"/> has read comes back as the same value, but that the pitch is always written.</remarks>
    /// <exception cref="ArgumentNullException">The thread is null.</exception>
    public static string Format(ThreadDesignation thread)
    {
        ArgumentNullException.ThrowIfNull(thread);
        string size = ThreadSizeFormat.Format(thread.Size);
        string series = thread.Series is { } named ? " " + SeriesNames.NameOf(named) : string.Empty;
        string tolerance = thread.ToleranceClass is { } written ? "-" + written : string.Empty;
        return size + series + tolerance + (thread.Hand == Hand.Left ? " LH" : string.Empty);
    }
}
