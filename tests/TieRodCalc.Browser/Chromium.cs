using System.ComponentModel;
using System.Diagnostics;

namespace TieRodCalc.Browser;

/// <summary>A browser without a window, in a profile of its own that is gone with it.</summary>
internal sealed class Chromium : IAsyncDisposable
{
    private static readonly TimeSpan StartsWithin = TimeSpan.FromSeconds(60);
    private readonly Process _process;
    private readonly string _profile;

    private Chromium(Process process, string profile)
    {
        _process = process;
        _profile = profile;
    }

    /// <summary>Starts the browser and waits for the address at which it can be talked to.</summary>
    /// <exception cref="BrowserException">There is no browser, or it does not answer.</exception>
    public static async Task<(Chromium Browser, Uri Address)> StartAsync(string program)
    {
        string profile = Directory.CreateTempSubdirectory("tierodcalc-browser-").FullName;
        Chromium browser = new(Start(program, profile), profile);
        try
        {
            return (browser, await browser.AddressAsync());
        }
        catch (BrowserException)
        {
            await browser.DisposeAsync();
            throw;
        }
    }

    private static Process Start(string program, string profile)
    {
        ProcessStartInfo start = new(program) { RedirectStandardError = true, RedirectStandardOutput = true };
        string[] arguments =
        [
            "--headless", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--disable-quic", "--no-first-run",
            "--disable-background-networking", "--disable-component-update", "--disable-sync", "--hide-scrollbars",

            // Letters as wide on the screen as in print.
            "--font-render-hinting=none",
            "--user-data-dir=" + profile, "--remote-debugging-port=0", "about:blank",
        ];
        Array.ForEach(arguments, start.ArgumentList.Add);
        try
        {
            Process process = Process.Start(start)!;

            // Nobody reads what it says, but a full pipe would stop it.
            process.ErrorDataReceived += (_, _) => { };
            process.OutputDataReceived += (_, _) => { };
            process.BeginErrorReadLine();
            process.BeginOutputReadLine();
            return process;
        }
        catch (Win32Exception e)
        {
            throw new BrowserException($"{program} cannot be started: {e.Message}");
        }
    }

    private async Task<Uri> AddressAsync()
    {
        // Two lines: the port, and the path of the browser's own end.
        string file = Path.Combine(_profile, "DevToolsActivePort");
        Stopwatch waited = Stopwatch.StartNew();
        while (waited.Elapsed < StartsWithin && !_process.HasExited)
        {
            if (File.Exists(file) && await File.ReadAllLinesAsync(file) is [string port, string path, ..])
            {
                return new Uri($"ws://127.0.0.1:{port}{path}");
            }

            await Task.Delay(20);
        }

        throw new BrowserException(_process.HasExited ? "the browser has ended at once" : "the browser does not answer");
    }

    public async ValueTask DisposeAsync()
    {
        if (!_process.HasExited)
        {
            _process.Kill(entireProcessTree: true);
            await _process.WaitForExitAsync();
        }

        _process.Dispose();
        await DeleteProfileAsync();
    }

    /// <summary>Processes that the browser started may hold the folder a moment longer.</summary>
    private async Task DeleteProfileAsync()
    {
        for (int tries = 0; tries < 20; tries++)
        {
            try
            {
                Directory.Delete(_profile, recursive: true);
                return;
            }
            catch (IOException)
            {
                await Task.Delay(100);
            }
        }
    }
}

/// <summary>The browser did not do what it was asked for.</summary>
internal sealed class BrowserException(string message) : Exception(message);
