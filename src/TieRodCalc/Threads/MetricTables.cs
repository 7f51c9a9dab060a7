using System.Collections.Immutable;

namespace TieRodCalc.Threads;

/// <summary>A row of the tables by pitch. Zero: there is no such grade or position.</summary>
internal readonly record struct MetricPitch(
    double Pitch,
    int E, int F, int G,
    int Major4, int Major6, int Major8,
    int Minor4, int Minor5, int Minor6, int Minor7, int Minor8);

/// <summary>Tolerance of the pitch diameter of grade 6 outside, for one pitch in a range of diameters.</summary>
internal readonly record struct MetricSize(double Pitch, int Td2);

/// <summary>A range of diameters, over the first up to and with the second.</summary>
internal readonly record struct MetricRange(double Over, double To, ImmutableArray<MetricSize> Sizes);

/// <summary>The tables of ISO 965-1, micrometers; from memory.</summary>
internal static class MetricTables
{
    public static readonly ImmutableArray<MetricPitch> Pitches =
    [
        new(0.2, 0, 0, 17, 36, 56, 0, 38, 0, 0, 0, 0),
        new(0.25, 0, 0, 18, 42, 67, 0, 45, 56, 0, 0, 0),
        new(0.3, 0, 0, 18, 48, 75, 0, 53, 67, 85, 0, 0),
        new(0.35, 0, 34, 19, 53, 85, 0, 63, 80, 100, 0, 0),
        new(0.4, 0, 34, 19, 60, 95, 0, 71, 90, 112, 0, 0),
        new(0.45, 0, 35, 20, 63, 100, 0, 80, 100, 125, 0, 0),
        new(0.5, 50, 36, 20, 67, 106, 0, 90, 112, 140, 180, 0),
        new(0.6, 53, 36, 21, 80, 125, 0, 100, 125, 160, 200, 0),
        new(0.7, 56, 38, 22, 90, 140, 0, 112, 140, 180, 224, 0),
        new(0.75, 56, 38, 22, 90, 140, 0, 118, 150, 190, 236, 0),
        new(0.8, 60, 38, 24, 95, 150, 236, 125, 160, 200, 250, 315),
        new(1, 60, 40, 26, 112, 180, 280, 150, 190, 236, 300, 375),
        new(1.25, 63, 42, 28, 132, 212, 335, 170, 212, 265, 335, 425),
        new(1.5, 67, 45, 32, 150, 236, 375, 190, 236, 300, 375, 475),
        new(1.75, 71, 48, 34, 170, 265, 425, 212, 265, 335, 425, 530),
        new(2, 71, 52, 38, 180, 280, 450, 236, 300, 375, 475, 600),
        new(2.5, 80, 58, 42, 212, 335, 530, 280, 355, 450, 560, 710),
        new(3, 85, 63, 48, 236, 375, 600, 315, 400, 500, 630, 800),
        new(3.5, 90, 70, 53, 265, 425, 670, 355, 450, 560, 710, 900),
        new(4, 95, 75, 60, 300, 475, 750, 375, 475, 600, 750, 950),
        new(4.5, 100, 80, 63, 315, 500, 800, 425, 530, 670, 850, 1060),
        new(5, 106, 85, 71, 335, 530, 850, 450, 560, 710, 900, 1120),
        new(5.5, 112, 90, 75, 355, 560, 900, 475, 600, 750, 950, 1180),
        new(6, 118, 95, 80, 375, 600, 950, 500, 630, 800, 1000, 1250),
        new(8, 140, 118, 100, 450, 710, 1180, 630, 800, 1000, 1250, 1600),
    ];

    public static readonly ImmutableArray<MetricRange> Ranges =
    [
        new(0.99, 1.4, [new(0.2, 48), new(0.25, 53), new(0.3, 56)]),
        new(1.4, 2.8, [new(0.2, 50), new(0.25, 56), new(0.35, 63), new(0.4, 67), new(0.45, 71)]),
        new(2.8, 5.6, [new(0.35, 67), new(0.5, 75), new(0.6, 85), new(0.7, 90), new(0.75, 90), new(0.8, 95)]),
        new(5.6, 11.2, [new(0.75, 100), new(1, 112), new(1.25, 118), new(1.5, 132)]),
        new(11.2, 22.4, [new(1, 118), new(1.25, 132), new(1.5, 140), new(1.75, 150), new(2, 160), new(2.5, 170)]),
        new(22.4, 45, [new(1, 125), new(1.5, 150), new(2, 170), new(3, 200), new(3.5, 212), new(4, 224), new(4.5, 236)]),
        new(45, 90, [new(1.5, 160), new(2, 180), new(3, 212), new(4, 236), new(5, 250), new(5.5, 265), new(6, 280)]),
        new(90, 180, [new(2, 190), new(3, 224), new(4, 250), new(6, 300), new(8, 335)]),
    ];
}
