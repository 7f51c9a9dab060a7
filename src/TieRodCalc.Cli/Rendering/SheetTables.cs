using System.Xml.Linq;
using TieRodCalc.Parts;
using TieRodCalc.Rods;
using TieRodCalc.Text;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>The tables of a bench sheet, with lines to write on.</summary>
internal sealed class SheetTables(RodParts parts, LengthDisplay unit)
{
    /// <summary>The dimensions of the parts as they were typed in, to be measured before anything is cut.</summary>
    public XElement Parts() => Table(["dimension", "typed in", "measured"], Rows());

    /// <summary>The dimensions of the work.</summary>
    public XElement Work(IEnumerable<Measure> measures) => Table(
        ["", "dimension", "plan", "measured"],
        measures.Select(measure => new object[]
        {
            Html.Classed("td", "letter", measure.Letter),
            Html.Element("th", new XAttribute("scope", "row"), measure.Words),
            Number(LengthFormat.Both(measure.Value, unit, measure.Rounding)),
            Html.Classed("td", "write", Html.Line(measure.Words)),
        }));

    /// <summary>A table with its head.</summary>
    public static XElement Table(string[] heads, IEnumerable<object?[]> rows) => Html.Element(
        "table",
        Html.Element("thead", Html.Element("tr", heads.Select(head => head.Length == 0
            ? Html.Element("td")
            : Html.Element("th", new XAttribute("scope", "col"), head)))),
        Html.Element("tbody", rows.Select(row => Html.Element("tr", row))));

    /// <summary>A cell that is not broken between two lines.</summary>
    public static XElement Number(string text) => Html.Classed("td", "number", text);

    private IEnumerable<object[]> Rows()
    {
        foreach (RodSide side in parts.Joints)
        {
            ThreadedEnd end = parts.EndAt(side);
            yield return Part($"{Names.Of(side)} end", end.Info, ThreadText.Format(end.Thread));
            yield return Row("center to tip", end.CenterToTip);
            yield return Row("full thread", end.ThreadLength);
            if (end.IsBent)
            {
                yield return Row("offset", end.Offset);
            }

            if (side == RodSide.Inner)
            {
                foreach (object[] row in Female())
                {
                    yield return row;
                }
            }
        }

        foreach (RodSide side in parts.Joints)
        {
            if (parts.NutAt(side) is { } nut)
            {
                yield return Row($"{Names.Of(side)} nut, thick", nut.Thickness);
            }
        }
    }

    private IEnumerable<object[]> Female()
    {
        if (parts.Socket is { } socket)
        {
            yield return Part("outer end", socket.Info, ThreadText.Format(socket.Socket.Thread));
            yield return Row("center to face", socket.CenterToFace);
            foreach (object[] row in Hole(socket.Socket, string.Empty))
            {
                yield return row;
            }

            yield break;
        }

        Sleeve sleeve = parts.Sleeve!;
        yield return Part("sleeve", sleeve.Info, null);
        yield return Row("face to face", sleeve.Length);
        foreach ((string name, TappedHole hole) in new[] { ("inner", sleeve.Inner), ("outer", sleeve.Outer) })
        {
            foreach (object[] row in Hole(hole, $", {name}"))
            {
                yield return row;
            }
        }
    }

    private IEnumerable<object[]> Hole(TappedHole hole, string name)
    {
        yield return Row($"depth{name}", hole.Depth);
        if (hole.Witness is { } witness)
        {
            yield return Row($"witness{name}", witness);
        }

        if (hole.Clamp is { } clamp)
        {
            yield return Row($"clamp{name}", clamp);
        }
    }

    /// <summary>A dimension in one unit, its tolerance before the unit.</summary>
    private static string In(LengthDisplay unit, Measured value)
    {
        string nominal = LengthFormat.Decimal(value.Nominal, unit);
        return value.PlusMinus > Length.Zero ? $"{nominal[..^3]} ± {LengthFormat.Decimal(value.PlusMinus, unit)}" : nominal;
    }

    private LengthDisplay Other => unit == LengthDisplay.Inch ? LengthDisplay.Millimeter : LengthDisplay.Inch;

    private static object[] Part(string kind, PartInfo info, string? thread) =>
    [
        Html.Classed(
            "th",
            "part",
            new XAttribute("scope", "rowgroup"),
            new XAttribute("colspan", "3"),
            $"{kind} {info.Id}{(thread is null ? string.Empty : $", {thread}")}"),
    ];

    private object[] Row(string words, Measured value) =>
    [
        Html.Element("th", new XAttribute("scope", "row"), words),
        Number($"{In(unit, value)}, {In(Other, value)}"),
        Html.Classed("td", "write", Html.Line(words)),
    ];
}
