using System.Text.Json;
using System.Text.Json.Nodes;

namespace TieRodCalc.Browser;

/// <summary>A bench sheet that is open in the browser.</summary>
internal sealed class SheetPage : IAsyncDisposable
{
    private readonly DevTools _browser;
    private readonly DevTools _page;
    private readonly string _target;

    private SheetPage(DevTools browser, DevTools page, string target, Uri address)
    {
        _browser = browser;
        _page = page;
        _target = target;
        Address = address;
    }

    /// <summary>Where it was opened from.</summary>
    public Uri Address { get; }

    /// <summary>What the browser has reported of this page so far.</summary>
    public IEnumerable<BrowserEvent> Events => _page.Events;

    /// <summary>Opens a file as it is seen in print, with eyes open from the first byte, and waits until it has loaded.</summary>
    public static async Task<SheetPage> OpenAsync(DevTools browser, string file)
    {
        JsonElement created = await browser.SendAsync("Target.createTarget", new() { ["url"] = "about:blank" });
        string target = created.GetProperty("targetId").GetString()!;
        DevTools tools = await DevTools.ConnectAsync(new Uri(browser.Address, $"/devtools/page/{target}"));
        SheetPage page = new(browser, tools, target, new Uri(Path.GetFullPath(file)));
        foreach (string domain in (string[])["Page", "Runtime", "Log", "Network"])
        {
            await page.SendAsync(domain + ".enable");
        }

        await page.SendAsync("Emulation.setEmulatedMedia", new() { ["media"] = "print" });
        await page.SendAsync("Page.navigate", new() { ["url"] = page.Address.AbsoluteUri });
        await page.EvaluateAsync(
            "new Promise(done => document.readyState === 'complete' ? done() : addEventListener('load', () => done()))"
                + ".then(() => document.fonts.ready).then(() => true)");
        return page;
    }

    /// <summary>Lays the page out for paper so wide and high, in pixels.</summary>
    public Task LayOutAsync(int width, int height) => SendAsync(
        "Emulation.setDeviceMetricsOverride",
        new() { ["width"] = width, ["height"] = height, ["deviceScaleFactor"] = 1, ["mobile"] = false });

    /// <summary>Prints as a person does who leaves the dialog as it comes: no backgrounds, scale 1.</summary>
    public async Task<byte[]> PrintAsync(Paper paper)
    {
        JsonElement printed = await SendAsync(
            "Page.printToPDF",
            new()
            {
                ["printBackground"] = false,
                ["preferCSSPageSize"] = true,
                ["paperWidth"] = paper.Width / Paper.MillimetersPerInch,
                ["paperHeight"] = paper.Height / Paper.MillimetersPerInch,
                ["scale"] = 1,
            });
        return printed.GetProperty("data").GetBytesFromBase64();
    }

    /// <summary>Runs one of the scripts of this project with an argument; each of them is a function.</summary>
    public Task<JsonElement> RunAsync(string script, JsonNode? argument = null) =>
        EvaluateAsync($"{{{Resource.Text("common.js")}\n({Resource.Text(script)})({argument?.ToJsonString() ?? "null"})}}");

    private async Task<JsonElement> EvaluateAsync(string expression)
    {
        JsonElement answer = await SendAsync(
            "Runtime.evaluate", new() { ["expression"] = expression, ["returnByValue"] = true, ["awaitPromise"] = true });
        return answer.TryGetProperty("exceptionDetails", out JsonElement exception)
            ? throw new BrowserException($"a script of this check failed: {exception}")
            : answer.GetProperty("result").GetProperty("value");
    }

    private Task<JsonElement> SendAsync(string method, JsonObject? arguments = null) => _page.SendAsync(method, arguments);

    public async ValueTask DisposeAsync()
    {
        await _page.DisposeAsync();
        await _browser.SendAsync("Target.closeTarget", new() { ["targetId"] = _target });
    }
}
