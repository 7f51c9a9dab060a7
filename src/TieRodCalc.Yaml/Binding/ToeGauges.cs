using TieRodCalc.Steering;
using TieRodCalc.Text;
using UnitsNet;

namespace TieRodCalc.Yaml.Binding;

/// <summary>What a job says of what toe as a length is measured across.</summary>
/// <param name="Plates">Width of the toe plates, or null.</param>
/// <param name="Tire">Diameter of the tire, or null.</param>
/// <param name="At">Which of them lengths are measured across, or null where that is not said.</param>
internal sealed record ToeGauges(Length? Plates, Length? Tire, GaugePlace? At)
{
    /// <summary>Of a job that says nothing.</summary>
    public static ToeGauges None { get; } = new(null, null, null);

    /// <summary>What lengths are measured across: what is said, or else the only one; the plates where nothing is a length.</summary>
    public ToeGauge? Gauge => (At, Plates, Tire) switch
    {
        (not GaugePlace.Tire, { } plates, _) => new ToeGauge(GaugePlace.Plates, plates),
        (not GaugePlace.Plates, _, { } tire) => new ToeGauge(GaugePlace.Tire, tire),
        _ => null,
    };

    /// <summary>What is missing to make an angle of a length, in words.</summary>
    public string Missing => Undecided
        ? "plates and tire are both given: say in 'toe' of 'steering' which of them a toe as a length is measured across, at: plates or "
            + "at: tire"
        : "a toe as a length needs what it is measured across: 'plates' or 'tire' in 'steering'";

    private bool Undecided => At is null && Plates is not null && Tire is not null;

    /// <param name="steering">The steering.</param>
    /// <param name="toe">Its toe, or null.</param>
    public static ToeGauges Read(MapReader steering, MapReader? toe)
    {
        GaugePlace? at = toe?.Choose("at", Choices.Gauge);
        if (at is { } place && !steering.Has(Names.Of(place)))
        {
            toe!.Findings.Problem(toe.SpanOf("at"), $"'{Names.Of(place)}' is missing in {steering.Title}");
        }

        return new ToeGauges(steering.Exact("plates", Least.AboveZero), steering.Exact("tire", Least.AboveZero), at);
    }

    /// <summary>Whether a toe can be made an angle, as far as what it is measured across is concerned.</summary>
    public bool Measures(ToeReading toe) => toe.AsLength is not { Value: not 0 } || (!Undecided && Gauge is not null);

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

        if (!Measures(toe) || toe.OfWheel(Gauge?.Width, wheels) is not null)
        {
            return toe;
        }

        map.Findings.Problem(text.Span, "no wheel has such a toe: it would stand across the car");
        return null;
    }
}
