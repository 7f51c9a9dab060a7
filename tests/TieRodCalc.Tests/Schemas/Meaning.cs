using System.Text.RegularExpressions;

namespace TieRodCalc.Tests.Schemas;

/// <summary>
/// What no schema of these files sees: values that are out of range or contradict each other, threads that no standard has, ids and
/// files that are not there. Everything else that the reader refuses is shape, and the schema must refuse it too.
/// </summary>
internal static partial class Meaning
{
    /// <summary>Whether a message of the reader speaks of meaning.</summary>
    public static bool Is(string message) => Words().IsMatch(message);

    [GeneratedRegex("""
        ^there\ is\ (no|an?)\ |\ is\ an?\ [a-z\ ]+,\ not\ an?\ |there\ is\ no\ such\ file
        |above\ zero|above\ -?\d+\ and\ below|at\ most|of\ at\ least|out\ of\ range|must\ be\ smaller|below\ 1$
        |\ longer\ than|larger\ than|not\ shorter\ than|not\ shallower\ than|leaves\ nothing|lies\ beyond|reaches\ past|not\ above
        |is\ a\ number\ size|is\ not\ UN[A-Z]*,|has\ no\ coarse\ pitch|does\ not\ go\ into|are\ the\ same$|\ apart$|across\ the\ car$
        |'clocking'\ is\ missing|one\ threaded\ joint|carries\ the\ internal\ thread\ itself|no\ length\ of\ the\ rod|is\ not\ given$
        |^'sleeve'\ is\ missing\ in\ rod|^'outer'\ is\ missing\ in\ 'nuts'|a\ toe\ as\ a\ length\ needs|say\ (the\ 'side'|in\ 'toe')
        |nearer\ than|in\ line\ with|does\ not\ raise|more\ than\ half|both\ are\ zero|none\ away\ from|must\ lie
        """, RegexOptions.IgnorePatternWhitespace)]
    private static partial Regex Words();
}
