namespace TieRodCalc.Cli.Tests;

/// <summary>A stream on which everything fails in one way.</summary>
internal sealed class ThrowingStream(Exception fault) : Stream
{
    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => throw fault;

    public override long Position
    {
        get => throw fault;
        set => throw fault;
    }

    public override void Flush() => throw fault;

    public override int Read(byte[] buffer, int offset, int count) => throw fault;

    public override long Seek(long offset, SeekOrigin origin) => throw fault;

    public override void SetLength(long value) => throw fault;

    public override void Write(byte[] buffer, int offset, int count) => throw fault;
}
