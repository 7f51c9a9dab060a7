using TieRodCalc.Steering;
using TieRodCalc.Text;
using TieRodCalc.Yaml.Tree;
using UnitsNet;

namespace TieRodCalc.Yaml.Binding;

/// <summary>What a job says of what toe as a length is measured across.</summary>
/// <param name="Plates">Width of the toe plates, or null.</param>
/// <param name="Tire">Diameter of the tire, or null.</param>
/// <param name="At">Which of them lengths are measured across, or null where that is not said.</param>
/// <param name="Unread">Whether something was said and could not be read; that has its problem then.</param>
internal sealed record ToeGauges(Length? Plates, Length? Tire, GaugePlace? At, bool Unread)
{
    /// <summary>Of a job that says nothing.</summary>
    public static ToeGauges None { get; } = new(null, null, null, false);

    /// <summary>What lengths are measured across: what is said, or else the only one; the plates where nothing is a length.</summary>
    public ToeGauge? Gauge => (At, Plates, Tire) switch
    {
        (not GaugePlace.Tire, { } plates, _) => new ToeGauge(GaugePlace.Plates, plates),
        (not GaugePlace.Plates, _, { } tire) => new ToeGauge(GaugePlace.Tire, tire),
        _ => null,
    };

    private bool Undecided => At is null && Plates is not null && Tire is not null;

    public static ToeGauges Read(MapReader steering)
    {
        Length? plates = steering.Exact("plates", Least.AboveZero);
        Length? tire = steering.Exact("tire", Least.AboveZero);
        GaugePlace? at = null;
        bool unread = (steering.Has("plates") && plates is null) || (steering.Has("tire") && tire is null);
        if (steering.Find("toe")?.Value is MapNode && steering.Map("toe", Keys.Toe) is { } toe)
        {
            at = toe.Choose("at", Choices.Gauge);
            unread |= toe.Has("at") && at is null;
            if (at is { } place && !steering.Has(Names.Of(place)))
            {
                toe.Findings.Problem(toe.SpanOf("at"), $"'{Names.Of(place)}' is missing in {steering.Title}");
                unread = true;
            }
        }

        return new ToeGauges(plates, tire, at, unread);
    }

    /// <summary>A toe as a single value, or null where it is not there or could not be read; the latter has its problem.</summary>
    /// <param name="map">Where it stands.</param>
    /// <param name="key">Its key.</param>
    /// <param name="wheels">Whose it is: 1 for one wheel, 2 for the total of both.</param>
    /// <param name="needed">Whether it must be there.</param>
    public ToeReading? Toe(MapReader map, string key, int wheels, bool needed)
    {
        if (map.Text(key, needed) is not { } text || !Values.TryParse(map.File, text, ValueText.ParseToe, out ToeReading toe))
        {
            return null;
        }

        bool isLength = toe.AsLength is { } length && length.Value != 0;
        if (isLength && Unread)
        {
            return null;
        }

        string? wrong = isLength && Undecided
            ? "plates and tire are both given: say in 'toe' which of them a toe as a length is measured across, at: plates or at: tire"
            : isLength && Gauge is null
            ? "a toe as a length needs what it is measured across: 'plates' or 'tire' in 'steering'"
            : toe.OfWheel(Gauge?.Width, wheels) is null
            ? "no wheel has such a toe: it would stand across the car"
            : null;
        if (wrong is null)
        {
            return toe;
        }

        map.Findings.Problem(text.Span, wrong);
        return null;
    }
}
