namespace TieRodCalc.Tests.Threads;

/// <summary>
/// Limits of size as tables of ISO 965-2 and ASME B1.13M print them, in millimeters. A row of an external thread: fundamental
/// deviation where it is printed, major diameter most and least, pitch diameter most and least, minor diameter most; of an internal
/// one: minor diameter least and most, pitch diameter least and most, major diameter least.
/// </summary>
/// <remarks>
/// Behind a value: a question mark where no second place confirmed it, an apostrophe where the second place prints two decimals, a
/// tilde where the second place is memory.
/// </remarks>
internal static class PrintedMetricRows
{
    /// <summary>
    /// External threads of ISO 965-2 (ASME B1.13M table 13). M8x1 to M10x1.5 read in a copy of Machinery's
    /// Handbook table 13; M12x1.25 in a thread size guide of a seller of fasteners. The rest from memory. Second place: threadlib,
    /// design/metric_thread.csv, copied from DIN 13 tables; the most minor diameter is read there alone.
    /// </summary>
    public const string External6g = """
        M8x1-6g        |   0.026~   7.974    7.794    7.324    7.212    6.891
        M8x1.25-6g     |   0.028~   7.972    7.760    7.160    7.042    6.619
        M10x1-6g       |   0.026?   9.974    9.794    9.324    9.212    8.891?
        M10x1.25-6g    |   0.028~   9.972    9.760    9.160    9.042    8.619
        M10x1.5-6g     |   0.032~   9.968    9.732    8.994    8.862    8.344
        M12x1.25-6g    |   0.028?  11.972'  11.760'  11.160'  11.028'  10.619?
        M12x1.5-6g     |   0.032?  11.968'  11.732'  10.994'  10.854'  10.344?
        M12x1.75-6g    |   0.034?  11.966'  11.701'  10.829'  10.679'  10.072?
        M14x1.5-6g     |   0.032?  13.968'  13.732'  12.994'  12.854'  12.344?
        M16x1.5-6g     |   0.032?  15.968'  15.732'  14.994'  14.854'  14.344?
        M16x2-6g       |   0.038?  15.962'  15.682'  14.663'  14.503'  13.797?
        M18x1.5-6g     |   0.032?  17.968'  17.732'  16.994'  16.854'  16.344?
        M20x1.5-6g     |   0.032?  19.968'  19.732'  18.994'  18.854'  18.344?
        M20x2-6g       |   0.038?  19.962'  19.682'  18.663'  18.503'  17.797?
        M20x2.5-6g     |   0.042?  19.958'  19.623'  18.334'  18.164'  17.252?
        M22x1.5-6g     |   0.032?  21.968'  21.732'  20.994'  20.854'  20.344?
        M24x2-6g       |   0.038?  23.962'  23.682'  22.663'  22.493'  21.797?
        M24x3-6g       |   0.048?  23.952'  23.577'  22.003'  21.803'  20.704?
        M27x2-6g       |   0.038?  26.962'  26.682'  25.663'  25.493'  24.797?
        M30x2-6g       |   0.038?  29.962'  29.682'  28.663'  28.493'  27.797?
        M30x3.5-6g     |   0.053?  29.947'  29.522'  27.674'  27.462'  26.158?
        """;

    /// <summary>Internal threads of ISO 965-2, read: threadlib, design/metric_thread.csv; they agree with memory.</summary>
    public const string Internal6H = """
        M8x1-6H        |   6.917~   7.153~   7.350~   7.500~   8.000~
        M8x1.25-6H     |   6.647~   6.912~   7.188~   7.348~   8.000~
        M10x1-6H       |   8.917~   9.153~   9.350~   9.500~  10.000~
        M10x1.25-6H    |   8.647~   8.912~   9.188~   9.348~  10.000~
        M10x1.5-6H     |   8.376~   8.676~   9.026~   9.206~  10.000~
        M12x1.25-6H    |  10.647~  10.912~  11.188~  11.368~  12.000~
        M12x1.5-6H     |  10.376~  10.676~  11.026~  11.216~  12.000~
        M12x1.75-6H    |  10.106~  10.441~  10.863~  11.063~  12.000~
        M14x1.5-6H     |  12.376~  12.676~  13.026~  13.216~  14.000~
        M16x1.5-6H     |  14.376~  14.676~  15.026~  15.216~  16.000~
        M16x2-6H       |  13.835~  14.210~  14.701~  14.913~  16.000~
        M18x1.5-6H     |  16.376~  16.676~  17.026~  17.216~  18.000~
        M20x1.5-6H     |  18.376~  18.676~  19.026~  19.216~  20.000~
        M20x2-6H       |  17.835~  18.210~  18.701~  18.913~  20.000~
        M20x2.5-6H     |  17.294~  17.744~  18.376~  18.600~  20.000~
        M22x1.5-6H     |  20.376~  20.676~  21.026~  21.216~  22.000~
        M24x2-6H       |  21.835~  22.210~  22.701~  22.925~  24.000~
        M24x3-6H       |  20.752~  21.252~  22.051~  22.316~  24.000~
        M27x2-6H       |  24.835~  25.210~  25.701~  25.925~  27.000~
        M30x2-6H       |  27.835~  28.210~  28.701~  28.925~  30.000~
        M30x3.5-6H     |  26.211~  26.771~  27.727~  28.007~  30.000~
        """;

    /// <summary>Read in a copy of Machinery's Handbook table 13; no second place.</summary>
    public const string External4g6g = """
        M8x1.25-4g6g   |   0.028?   7.972?   7.760?   7.160?   7.085?   6.619?
        M8x1-4g6g      |   0.026?   7.974?   7.794?   7.324?   7.253?   6.891?
        M10x1.5-4g6g   |   0.032?   9.968?   9.732?   8.994?   8.909?   8.344?
        M10x1.25-4g6g  |   0.028?   9.972?   9.760?   9.160?   9.085?   8.619?
        M10x0.75-4g6g  |   0.022?   9.978?   9.838?   9.491?   9.428?   9.166?
        M6x1-4g6g      |   0.026?   5.974?   5.794?   5.324?   5.253?   4.891?
        M5x0.8-4g6g    |   0.024?   4.976?   4.826?   4.456?   4.396?   4.110?
        M4x0.7-4g6g    |   0.022?   3.978?   3.838?   3.523?   3.467?   3.220?
        """;

    /// <summary>Read in a chart of a machine shop; second place: threadlib.</summary>
    public const string SmallExternal6g = """
        M3x0.5-6g      |     -      2.980    2.874    2.655    2.580    2.438
        M4x0.7-6g      |     -      3.978    3.838    3.523    3.433    3.220
        M5x0.8-6g      |     -      4.976    4.826    4.456    4.361    4.110
        """;

    /// <summary>Read: threadlib, design/metric_thread.csv; no second place.</summary>
    public const string FinePitches = """
        M6x1-6g        |     -      5.974?   5.794?   5.324?   5.212?   4.891?
        M6x1-6H        |   4.917?   5.153?   5.350?   5.500?   6.000?
        M7x1-6g        |     -      6.974?   6.794?   6.324?   6.212?   5.891?
        M7x1-6H        |   5.917?   6.153?   6.350?   6.500?   7.000?
        M6x0.75-6g     |     -      5.978?   5.838?   5.491?   5.391?   5.166?
        M6x0.75-6H     |   5.188?   5.378?   5.513?   5.645?   6.000?
        M8x0.75-6g     |     -      7.978?   7.838?   7.491?   7.391?   7.166?
        M8x0.75-6H     |   7.188?   7.378?   7.513?   7.645?   8.000?
        """;
}
