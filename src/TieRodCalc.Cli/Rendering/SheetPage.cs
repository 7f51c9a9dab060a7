using System.Xml.Linq;
using TieRodCalc.Text;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Rendering;

/// <summary>
/// The bench sheet of a job: one HTML file that needs nothing else, one printed page a rod, black on white, for Letter and A4 alike.
/// </summary>
internal static class SheetPage
{
    /// <summary>
    /// The margins leave 190 mm across on A4 and 263 mm down on Letter, the narrower and the shorter of the two; the drawings are
    /// 180 mm wide. Nothing depends on printed backgrounds.
    /// </summary>
    private const string Style = """

        @page { margin: 8mm 10mm; }
        * { box-sizing: border-box; }
        html { background: white; color: black; }
        body { margin: 0; font-family: Arial, Helvetica, "Liberation Sans", sans-serif; line-height: 1.15; }
        section.rod { width: 184mm; margin: 0 auto; break-after: page; font-size: 10.5pt; }
        section.rod:last-of-type { break-after: auto; }
        section.dense { font-size: 10pt; }
        section.denser { font-size: 9.5pt; }
        section.densest { font-size: 9pt; line-height: 1.12; }
        section.crowded { font-size: 8.2pt; line-height: 1.1; }
        section.fullest { font-size: 7.5pt; line-height: 1.08; }
        h1, .job { font-size: 11pt; font-weight: normal; margin: 0; }
        h2 { font-size: 16pt; margin: 0 0 1mm; line-height: 1.1; overflow-wrap: anywhere; }
        h3 { font-size: 1.05em; margin: 0.4em 0 0.1em; border-top: 0.35mm solid black; padding-top: 0.2em; }
        p, ul { margin: 0.1em 0; }
        ul { padding-left: 1.4em; }
        li, td, th, p { overflow-wrap: anywhere; }
        ul.steps { list-style: none; padding-left: 0; }
        ul.steps li { padding-left: 2em; text-indent: -2em; margin: 0.2em 0; }
        svg { display: block; margin: 0; }
        table { border-collapse: collapse; width: 100%; }
        th, td { text-align: left; font-weight: normal; vertical-align: bottom; padding: 0 0.3em 0.05em 0; }
        th, td { border-bottom: 0.15mm solid black; }
        th.part { font-weight: bold; padding-top: 0.35em; }
        td.letter { font-weight: bold; width: 1.5em; }
        thead th, thead td { font-size: 8pt; border-bottom: 0.35mm solid black; }
        .number { white-space: nowrap; }
        td.write { width: 16mm; }
        .line { display: inline-block; width: 15mm; height: 1.27em; }
        .box { display: inline-block; width: 1em; height: 1em; border: 0.35mm solid black; margin-right: 1em; vertical-align: -0.12em; }
        .head { display: grid; grid-template-columns: 1fr auto; column-gap: 6mm; align-items: end; }
        .sign { font-size: 9pt; text-align: right; }
        .sign .line { width: 26mm; height: 1em; border-bottom: 0.2mm solid black; }
        .two { display: grid; grid-template-columns: 90mm 90mm; column-gap: 4mm; }
        .narrow { width: 120mm; }
        p.key { font-size: 8.2pt; margin: 0; }
        .headline { border: 0.7mm solid black; padding: 0.2em 0.6em; font-weight: bold; font-size: 11pt; margin: 1mm 0; }
        .small { columns: 2; column-gap: 5mm; font-size: 7.5pt; line-height: 1.1; }
        .small li { break-inside: avoid; }
        .small h3 { break-after: avoid; font-size: 9.5pt; }

        """;

    /// <summary>The page of a job's plans.</summary>
    public static string Of(Job job, IReadOnlyList<PlannedRod> plans)
    {
        string name = job.Name ?? "Tie rods";
        XElement page = new(
            "html",
            new XAttribute("lang", "en"),
            Html.Element(
                "head",
                Html.Element("meta", new XAttribute("charset", "utf-8")),
                Html.Element("meta", new XAttribute("name", "viewport"), new XAttribute("content", "width=device-width, initial-scale=1")),
                Html.Element("title", $"Bench sheet: {name}"),
                Html.Element("style", Style)),
            Html.Element(
                "body",
                Html.Element("main", plans.Select((planned, index) => new SheetSection(planned, job, index).Make()))));
        return $"<!DOCTYPE html>\n{page}\n";
    }
}
