using TieRodCalc.Threads;

namespace TieRodCalc.Text;

/// <summary>The series of Unified threads as ASME B1.1 writes them.</summary>
internal static class SeriesNames
{
    public const string All = "UNC, UNF, UNEF, UN or UNS";

    public static string NameOf(UnifiedSeries series) => series switch
    {
        UnifiedSeries.Unc => "UNC",
        UnifiedSeries.Unf => "UNF",
        UnifiedSeries.Unef => "UNEF",
        UnifiedSeries.Un => "UN",
        _ => "UNS",
    };

    public static UnifiedSeries? Find(Token token)
    {
        foreach (UnifiedSeries series in Enum.GetValues<UnifiedSeries>())
        {
            if (token.Is(NameOf(series)))
            {
                return series;
            }
        }

        return null;
    }
}
