using System.Diagnostics;
using System.Globalization;
using SharpFuzz;
using TieRodCalc.Fuzz;

if (args is not [var verb, var name, .. var paths] || Target.All.FirstOrDefault(known => known.Name == name) is not { } target)
{
    return Usage();
}

switch (verb)
{
    case "fuzz" when paths is []:
        // Of a process of its own, so that a hang or a full stack ends one input and not the fuzzer.
        Fuzzer.OutOfProcess.Run(stream =>
        {
            using MemoryStream input = new();
            stream.CopyTo(input);
            _ = target.Read(input.ToArray());
        });
        return 0;
    case "inputs" when paths is [var folder]:
        return WriteInputs(folder);
    case "replay":
        return Replay();
    default:
        return Usage();
}

// The first inputs of a target into folder/inputs, the words of the dictionary into folder/words.dict.
int WriteInputs(string folder)
{
    string inputs = Path.Combine(folder, "inputs");
    Directory.CreateDirectory(inputs);
    int count = 0;
    foreach (byte[] input in FirstInputs.Of(target))
    {
        File.WriteAllBytes(Path.Combine(inputs, string.Create(CultureInfo.InvariantCulture, $"{++count:000}")), input);
    }

    File.WriteAllText(Path.Combine(folder, "words.dict"), Vocabulary.Dictionary());
    Console.WriteLine($"{count} first inputs");
    return count > 0 ? 0 : 1;
}

// Each input once: what does not hold is told, and the input that took longest.
int Replay()
{
    int findings = 0;
    int sound = 0;
    (TimeSpan Took, string Path) slowest = default;
    WarmUp();
    foreach (string path in paths)
    {
        byte[] input = File.ReadAllBytes(path);
        long start = Stopwatch.GetTimestamp();
        try
        {
            sound += target.Read(input) ? 1 : 0;
        }
#pragma warning disable CA1031 // Whatever is thrown is what was looked for.
        catch (Exception finding)
#pragma warning restore CA1031
        {
            findings++;
            Console.WriteLine($"!! {path}\n{finding}\n");
        }

        TimeSpan took = Stopwatch.GetElapsedTime(start);
        slowest = took > slowest.Took ? (took, path) : slowest;
    }

    Console.WriteLine(
        $"{paths.Length} inputs replayed, {sound} of them sound, {findings} findings; "
        + $"the slowest took {slowest.Took.TotalMilliseconds:0} ms: {Path.GetFileName(slowest.Path)}");
    return findings == 0 ? 0 : 1;
}

// The first readings pay for compiling, which is no matter of the input.
void WarmUp()
{
    foreach (byte[] input in FirstInputs.Of(target))
    {
        _ = target.Read(input);
    }
}

static int Usage()
{
    Console.Error.WriteLine(
        "TieRodCalc.Fuzz fuzz TARGET | inputs TARGET FOLDER | replay TARGET FILE...\n"
        + $"TARGET: {string.Join(", ", Target.All.Select(target => target.Name))}");
    return 2;
}
