using System.Text.Json;

namespace TieRodCalc.Browser.Checks;

/// <summary>The page says nothing to the console and asks nobody for anything.</summary>
internal static class QuietCheck
{
    private static readonly string[] Messages = ["Runtime.consoleAPICalled", "Runtime.exceptionThrown", "Log.entryAdded"];

    /// <summary>Goes by all that was reported so far: to be run last.</summary>
    public static void Add(Findings findings, SheetPage page)
    {
        BrowserEvent[] events = [.. page.Events];
        findings.Add(
            "no message",
            events.Where(each => Messages.Contains(each.Method)).Select(each => $"{each.Method}: {each.Facts}"));
        string[] requests =
        [
            .. events
                .Where(each => each.Method == "Network.requestWillBeSent")
                .Select(each => each.Facts.GetProperty("request").GetProperty("url").GetString()!),
        ];
        findings.Add(
            "no request but the file",
            requests.Contains(page.Address.AbsoluteUri)
                ? requests.Where(url => url != page.Address.AbsoluteUri)
                : ["the file itself was not seen to be read"]);
    }
}
