using System.Text;

namespace TieRodCalc.Cli.Tests;

/// <summary>Streams that cannot be read or written, and faults of the program itself.</summary>
public sealed class TerminalTests
{
    private static readonly string[] Plan = ["plan", "-"];

    public static TheoryData<Exception> NotWritable =>
    [
        new IOException("the disk is full"), new UnauthorizedAccessException("the disk is full"), new NotSupportedException("the disk is full"),
    ];

    [Theory]
    [MemberData(nameof(NotWritable))]
    public void A_result_that_cannot_be_written_is_status_2_and_is_said(Exception fault)
    {
        using MemoryStream error = new();
        using ThrowingStream output = new(fault);

        Assert.Equal(2, Run(Plan, CheckJobs.W1, output, error));
        Assert.Equal("tierodcalc: the result cannot be written: the disk is full\n", Written(error));
    }

    /// <summary>Also where the rod is not buildable: the status says that there is no result.</summary>
    [Fact]
    public void A_result_that_cannot_be_written_outweighs_the_verdict()
    {
        using MemoryStream error = new();
        using ThrowingStream output = new(new IOException("the disk is full"));

        Assert.Equal(2, Run(Plan, CheckJobs.W2, output, error));
    }

    [Theory]
    [InlineData("plan", "--help")]
    [InlineData("check", "-")]
    public void Every_command_says_that_its_result_cannot_be_written(params string[] args)
    {
        using MemoryStream error = new();
        using ThrowingStream output = new(new IOException("the disk is full"));

        Assert.Equal(2, Run(args, CheckJobs.W1, output, error));
        Assert.Contains("the result cannot be written", Written(error), StringComparison.Ordinal);
    }

    /// <summary>The codes are those of the systems: EPIPE of Unix, broken pipe and no data of Windows.</summary>
    [Theory]
    [InlineData(32)]
    [InlineData(unchecked((int)0x8007006D))]
    [InlineData(unchecked((int)0x800700E8))]
    public void A_reader_that_has_gone_ends_it_quietly(int code)
    {
        using MemoryStream error = new();
        using ThrowingStream output = new(new IOException("broken pipe", code));

        Assert.Equal(0, Run(Plan, CheckJobs.W2, output, error));
        Assert.Empty(Written(error));
    }

    [Fact]
    public void Where_standard_error_cannot_be_written_there_is_nobody_to_tell()
    {
        using MemoryStream output = new();
        using ThrowingStream error = new(new IOException("the disk is full"));

        Assert.Equal(2, Run(["nonsense"], string.Empty, output, error));
        Assert.Equal(2, Run(Plan, "nonsense", output, error));
        Assert.Equal(2, Run(Plan, CheckJobs.W1, error, error));
        Assert.Empty(Written(output));
    }

    [Fact]
    public void An_input_that_cannot_be_read_is_wrong_input()
    {
        using MemoryStream output = new();
        using MemoryStream error = new();
        using ThrowingStream input = new(new IOException("the disk is gone"));

        Assert.Equal(2, Application.Run(Plan, new Terminal(() => input, output, error)));
        Assert.Empty(Written(output));
        Assert.StartsWith("-: error: ", Written(error), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("plan")]
    [InlineData("check")]
    public void A_fault_of_the_program_is_status_70_and_writes_no_result(string command)
    {
        using MemoryStream output = new();
        using MemoryStream error = new();
        using ThrowingStream input = new(new InvalidOperationException("a limit is missed"));

        Assert.Equal(70, Application.Run([command, "-"], new Terminal(() => input, output, error)));
        Assert.Empty(Written(output));
        Assert.StartsWith("tierodcalc: a fault of the program itself, nothing was computed. ", Written(error), StringComparison.Ordinal);
        Assert.Contains("a limit is missed", Written(error), StringComparison.Ordinal);
    }

    [Fact]
    public void Text_is_utf8_without_a_byte_order_mark()
    {
        using MemoryStream output = new();
        using MemoryStream error = new();

        Assert.Equal(0, Run(["plan", "-", "--json"], CheckJobs.W1.With("units: in", "job: Straße 5½\nunits: in"), output, error));
        Assert.Equal((byte)'{', output.ToArray()[0]);
        Assert.Contains("Straße 5½", Written(output), StringComparison.Ordinal);
    }

    private static int Run(string[] args, string input, Stream output, Stream error) =>
        Application.Run(args, new Terminal(() => new MemoryStream(Encoding.UTF8.GetBytes(input)), output, error));

    private static string Written(MemoryStream stream) => Encoding.UTF8.GetString(stream.ToArray());
}
