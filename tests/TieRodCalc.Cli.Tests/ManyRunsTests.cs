namespace TieRodCalc.Cli.Tests;

/// <summary>Commands run side by side in one process print what they print alone: reading, computing, sentences, JSON.</summary>
public class ManyRunsTests
{
    private const int Threads = 64;

    [Fact]
    public void Sixty_four_threads_print_what_one_prints()
    {
        CommandLine[] alone = [.. AllCommands.Lines.Select(CommandLine.Run)];
        string[] tables = [.. StaticState.Tables()];
        Assert.True(tables.Length > 100, $"{tables.Length} entries");
        CommandLine?[] differing = new CommandLine?[Threads];
        using Barrier start = new(Threads);
        Thread[] threads =
        [
            .. Enumerable.Range(0, Threads).Select(number => new Thread(() =>
            {
                start.SignalAndWait();

                // Every eighth line, from another one on in each thread: together all of them, eight times.
                for (int step = number; step < number + alone.Length; step += 8)
                {
                    int line = step % alone.Length;
                    CommandLine together = CommandLine.Run(AllCommands.Lines[line]);
                    differing[number] ??= together == alone[line] ? null : together;
                }
            })),
        ];
        Array.ForEach(threads, thread => thread.Start());
        Array.ForEach(threads, thread => thread.Join());
        Assert.All(differing, Assert.Null);
        Assert.Equal(tables, StaticState.Tables());
        Assert.DoesNotContain(alone, run => run.Status == ExitStatus.Fault);
    }
}
