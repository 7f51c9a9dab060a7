using System.Globalization;
using System.Text;
using TieRodCalc.Parts;

namespace TieRodCalc.Tests.Planning;

/// <summary>Writes a test catalog and its rod as a job file.</summary>
internal static class CatalogText
{
    public static string Of(CatalogCase catalog)
    {
        StringBuilder text = new("tierodcalc: 1\njob: random catalog\nunits: mm\n");
        List(text, "materials", catalog.Stocks.Select(Stock));
        List(text, "inner_ends", catalog.Inner.Select(End));
        List(text, "sleeves", catalog.Sleeves.Select(Sleeve));
        List(text, "outer_ends", catalog.Outer.Select(End).Concat(catalog.Sockets.Select(Socket)));
        List(text, "jam_nuts", catalog.Nuts.Select(Nut));
        List(text, "rods", [Rod(catalog)]);
        return text.ToString();
    }

    /// <summary>A length without exponent, as the files have it.</summary>
    public static string Length(Dim dimension) => Number(dimension.Value) + (dimension.InInches ? " in" : " mm");

    /// <summary>A number without exponent; fifteen digits are kept, more than a comparison needs.</summary>
    public static string Number(double value) => ((decimal)value).ToString(CultureInfo.InvariantCulture);

    private static void List(StringBuilder text, string key, IEnumerable<string> items)
    {
        string[] all = [.. items];
        if (all.Length > 0)
        {
            text.Append(key).Append(":\n");
            foreach (string item in all)
            {
                text.Append("  - {").Append(item).Append("}\n");
            }
        }
    }

    private static string Stock(StockCase stock) => Entries(
        ("id", stock.Id),
        ("kind", stock.Kind?.ToString().ToLowerInvariant()),
        ("tensile", stock.TensileMpa is { } tensile ? Number(tensile) + " MPa" : null));

    private static string End(EndCase end) => Entries(
        ("id", end.Id),
        ("thread", end.Thread.ToString()),
        ("center_to_tip", Length(end.CenterToTip)),
        ("thread_length", Length(end.ThreadLength)),
        ("lead", Length(end.Lead)),
        ("offset", NotZero(end.Offset)),
        ("max_cut", NotZero(end.MaxCut)),
        ("material", end.Stock?.Id),
        Price(end.Cost),
        Mass(end.Cost));

    private static string Sleeve(SleeveCase sleeve) => Entries(
        ("id", sleeve.Id),
        ("length", Length(sleeve.Length)),
        ("inner", Hole(sleeve.Inner)),
        ("outer", Hole(sleeve.Outer)),
        ("outside", sleeve.Outside is { } outside
            ? (outside.Shape == OutsideShape.Hexagon ? "hex " : "round ") + Length(outside.Across)
            : null),
        ("material", sleeve.Stock?.Id),
        Price(sleeve.Cost),
        Mass(sleeve.Cost));

    private static string Socket(SocketCase socket) => Entries(
        ("id", socket.Id),
        ("center_to_face", Length(socket.CenterToFace)),
        ("socket", Hole(socket.Hole)),
        ("material", socket.Stock?.Id),
        Price(socket.Cost),
        Mass(socket.Cost));

    private static string Hole(HoleCase hole) => "{" + Entries(
        ("thread", hole.Thread.ToString()),
        ("depth", Length(hole.Depth)),
        ("bore", hole.Bore == Bore.Closed ? "closed" : "open"),
        ("countersink", Length(hole.Countersink)),
        ("witness", Length(hole.Witness)),
        ("clamp", Length(hole.Clamp))) + "}";

    private static string Nut(NutCase nut) => Entries(
        ("id", nut.Id), ("thread", nut.Thread.ToString()), ("thickness", Length(nut.Thickness)), Price(nut.Cost), Mass(nut.Cost));

    private static string Rod(CatalogCase catalog) => Entries(
        ("name", "rod"),
        ("inner", Open(catalog.InnerWish)),
        ("sleeve", catalog.SleeveWish is { } sleeve ? OpenSleeve(sleeve) : null),
        ("outer", Open(catalog.OuterWish)),
        ("nuts", "{" + Entries(
            ("inner", Open(catalog.InnerNutWish)), ("outer", catalog.OuterNutWish is { } nut ? Open(nut) : null)) + "}"),
        ("length", Length(catalog.Target)),
        ("adjust", $"{{shorter: {Length(catalog.Shorter)}, longer: {Length(catalog.Longer)}}}"),
        ("clocking", catalog.ClockingDegrees is { } degrees ? Number(degrees) + " deg" : null),
        ("rules", "{" + Entries(
            ("engagement", Rule(catalog.Engagement)),
            ("tip_gap", Length(catalog.TipGap)),
            ("mark", Length(catalog.Mark)),
            ("allowance", Length(catalog.Allowance))) + "}"));

    private static string? Rule(EngagementCase? rule) => rule switch
    {
        { Length: { } length } => Length(length),
        { Diameters: { } diameters } => Number(diameters) + " diameters",
        _ => null,
    };

    private static string Open(Wish wish) => wish switch
    {
        { None: true } => "none",
        { Id: { } id } => id,
        { Ids: { } ids } => $"[{string.Join(", ", ids)}]",
        { Thread: { } thread } => $"{{thread: {thread}}}",
        _ => "any",
    };

    private static string OpenSleeve(Wish wish) => wish is { Id: null, Ids: null } and not { Thread: null, OuterThread: null }
        ? "{" + Entries(("inner", wish.Thread?.ToString()), ("outer", wish.OuterThread?.ToString())) + "}"
        : Open(wish);

    private static (string, string?) Price(CostCase cost) =>
        ("price", cost.Amount is { } amount ? amount.ToString(CultureInfo.InvariantCulture) + " " + cost.Currency : null);

    private static (string, string?) Mass(CostCase cost) =>
        ("mass", cost.Kilograms is { } mass ? mass.ToString(CultureInfo.InvariantCulture) + " kg" : null);

    private static string? Length(Dim? dimension) => dimension is { } value ? Length(value) : null;

    private static string? NotZero(Dim dimension) => dimension.Value == 0 ? null : Length(dimension);

    private static string Entries(params (string Key, string? Value)[] entries) =>
        string.Join(", ", entries.Where(entry => entry.Value is not null).Select(entry => $"{entry.Key}: {entry.Value}"));
}
