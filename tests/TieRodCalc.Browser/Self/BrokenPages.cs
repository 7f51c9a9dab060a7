namespace TieRodCalc.Browser.Self;

/// <summary>A page for each thing that can be wrong.</summary>
internal static class BrokenPages
{
    private const string FirstBox = "<span class=\"box\"></span> cut";
    private const string SecondText = "<text id=\"second\" x=\"40\"";
    private const string Part = ".part { fill: #fff; stroke: #000;";
    private const string End = "</body>";
    private const string Frame = "In a frame.";

    public static IReadOnlyList<BrokenPage> All { get; } =
    [
        new("standard HTML", "no doctype", "<!DOCTYPE html>", string.Empty),
        new("standard HTML", "no encoding", "<meta charset=\"utf-8\">", string.Empty),
        new("no script", "a script", End, "<script>let a = 1;</script></body>"),
        new("no script", "a handler", "<p class=\"frame\">", "<p class=\"frame\" onclick=\"\">"),
        new("no message", "a console message", End, "<script>console.log('a')</script></body>"),
        new("no message", "an exception", End, "<script>throw 1</script></body>"),
        new("no message", "a missing picture", End, "<img src=\"none.png\" alt=\"none\"></body>"),
        new("no request but the file", "a style sheet of its own", "</head>", "<link rel=\"stylesheet\" href=\"a.css\"></head>"),
        new("no reference out of the file", "a picture in the address", End,
            "<img alt=\"dot\" src=\"data:image/gif;base64,R0lGODlhAQABAAAAACw=\"></body>"),
        new("no request but the file", "a picture in print alone", "@page {", "@media print { p { background: url(a.png); } } @page {"),
        new("no reference out of the file", "a link", Frame, "<a href=\"http://localhost/\">In a frame.</a>"),
        new("no reference out of the file", "a style that is not used", "@page {", ".unused { background: url(a.png); } @page {"),
        new("no reference out of the file", "an imported style", "@page {", "@import 'a.css'; @page {"),
        new("language and title", "no language", "<html lang=\"en\">", "<html>"),
        new("language and title", "an empty title", "Bench sheets of a small job", string.Empty),
        new("headings", "no first heading", "<h1>A small job</h1>", "<p>A small job</p>"),
        new("headings", "two first headings", "<h1>A small job</h1>", "<h1>A small job</h1><h1>Again</h1>"),
        new("headings", "a jump", "<p class=\"frame\">", "<h4>Deeper</h4><p class=\"frame\">"),
        new("pictures described", "no description", "<desc>A bar.</desc>", string.Empty),
        new("pictures described", "no role", "<svg role=\"img\" viewBox", "<svg viewBox"),
        new("pictures described", "an empty title", "<title>The other rod in section</title>", "<title></title>"),
        new("pictures described", "a title that names nothing",
            "<title>The other rod in section</title>\n<desc>A bar.</desc>",
            "<desc>A bar.</desc><title>The other rod</title>"),
        new("tables", "a head without scope", "<th scope=\"row\">", "<th>"),
        new("tables", "no head", "<table>", "<table><tr><td>1</td></tr></table><table>"),
        new("boxes and lines named", "a box alone", FirstBox, "<span class=\"box\"></span>"),
        new("ids", "twice the same", "id=\"second\"", "id=\"first\""),
        new("ids", "a reference to nothing", "aria-labelledby=\"left-title\"", "aria-labelledby=\"left-name\""),
        new("a section for each rod", "a section too many", End, "<section class=\"rod\"><h2>More</h2></section></body>"),
        new("figures of the plan", "a figure with more before it", "22.37 mm", "122.37 mm"),
        new("figures of the plan", "a figure rounded up", "9.54 mm", "9.55 mm"),
        new("figures of the plan", "a figure of the other rod", "misses by 4.20 mm", "misses by 4.2 mm"),
        new("figures of the plan", "a figure that is not printed", "A turn: 2.91 mm", "A turn: <span hidden>2.91 mm</span>"),
        new("figures of the plan", "no verdict", "Rod right: not buildable", "Rod right"),
        new("one page a rod", "no break between the rods", "section { break-after: page; }", string.Empty),
        new("one page a rod", "an empty page at the end",
            "section:last-child { break-after: auto; }", "section:last-child { min-height: 100vh; }"),
        new("one page a rod", "a section over two pages", ".frame { width: 100mm; height: 8mm;", ".frame { height: 300mm;"),
        new("the paper's own size", "a paper of its own", "@page {", "@page { size: A5;"),
        new("the paper's own size", "landscape", "@page {", "@page { size: landscape;"),
        new("fits the page", "a section too high", ".frame { width: 100mm; height: 8mm;", ".frame { height: 260mm;"),
        new("fits the page", "a line too wide", ".frame { width: 100mm; height: 8mm;", ".frame { width: 185.5mm;"),
        new("texts apart", "one text on another", SecondText, "<text id=\"second\" x=\"12\""),
        new("texts apart", "one text on a turned one", SecondText, "<text id=\"second\" x=\"135\""),
        new("texts apart", "lines too near", ".frame {", ".frame { margin-top: -9mm;"),
        new("texts apart", "a picture over a text", ".frame {", "svg { margin-bottom: -20mm; } .frame {"),
        new("nothing cut off", "a text beyond its picture", SecondText, "<text id=\"second\" x=\"165\""),
        new("nothing cut off", "a part beyond its picture", "width=\"100\" height=\"8\"", "width=\"165\" height=\"8\""),
        new("nothing cut off", "a text beyond its frame", Frame,
            "In a frame that is far, far, far too short for a text like this and hides what it cannot take of it, which is a lot."),
        new("letters large enough", "small letters", ".frame {", ".frame { font-size: 7pt;"),
        new("letters large enough", "small letters in a picture", "svg text { font-size: 4px; }", "svg text { font-size: 2.6px; }"),
        new("contrast of texts", "pale letters", ".frame {", ".frame { color: #888;"),
        new("contrast of texts", "white on a background that is not printed", ".frame {", ".frame { color: #fff; background: #000;"),
        new("contrast of texts", "black on black",
            Part + " stroke-width: 0.3; }", ".part { fill: #000; } #first { transform: translateY(-14px); }"),
        new("black and white", "a red line", Part, ".part { fill: #fff; stroke: #a00;"),
        new("black and white", "a pale line", Part, ".part { fill: #fff; stroke: #ccc;"),
        new("black and white", "a blue text", ".frame {", ".frame { color: #00a;"),
        new("drawn to scale", "a bar too long", "width=\"50\" height=\"8\"", "width=\"50.3\" height=\"8\""),
        new("drawn to scale", "a picture in another size", "width: 170mm; height: 40mm;", "width: 160mm; height: 40mm;"),
        new("drawn to scale", "nothing measured", "data-name=\"bar\" data-length-mm=\"100\"", string.Empty),
    ];
}
