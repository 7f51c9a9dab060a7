using TieRodCalc.Browser;
using TieRodCalc.Browser.Self;

if (Options.Parse(args) is not { } options)
{
    Console.Error.WriteLine(Options.Usage);
    return 2;
}

Tally tally = new(Console.Out);
try
{
    (Chromium browser, Uri address) = await Chromium.StartAsync(options.Browser);
    await using (browser)
    {
        await using DevTools tools = await DevTools.ConnectAsync(address);
        if (options.Self)
        {
            await SelfCheck.RunAsync(tools, tally);
        }

        JobSheets sheets = new(tools, options);
        foreach (string job in options.Jobs)
        {
            tally.Add(Path.GetFileNameWithoutExtension(job), await sheets.CheckAsync(job));
        }
    }
}
catch (BrowserException e)
{
    tally.Add("browser", new Finding("works", [e.Message]));
}

tally.End();
return tally.Failed == 0 ? 0 : 1;
