using System.Text;

namespace TieRodCalc.Tests.Files;

/// <summary>Changes of the bytes of a file.</summary>
internal static class ByteMutation
{
    private static readonly byte[][] s_pieces =
    [
        [0xEF, 0xBB, 0xBF], [0xFF, 0xFE], [0xFE, 0xFF], [0], [0x07], [0x1B], [0x7F], [0x0D], [0x0D, 0x0A], [0x0A], [0x09], [0x80],
        [0xC0, 0xAF],
        [0xE2, 0x82], [0xED, 0xA0, 0x80], [0xF4, 0x90, 0x80, 0x80], [0xC2, 0x85], [0xE2, 0x80, 0xA8], [0xC2, 0xB0], [0xC2, 0xB1],
        [0xC3, 0x97],
        [0xF0, 0x9F, 0x8F, 0x81],
    ];

    /// <summary>The bytes with one to four changes.</summary>
    /// <param name="source">A sound file.</param>
    /// <param name="other">Another sound file, from which pieces are taken.</param>
    /// <param name="random">The source of random numbers.</param>
    public static byte[] Of(string source, string other, Random random)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(source);
        byte[] others = Encoding.UTF8.GetBytes(other);
        for (int changes = random.Next(1, random.Next(2, 6)); changes > 0 && bytes.Length > 0; changes--)
        {
            bytes = Changed(bytes, others, random);
        }

        return random.Next(100) switch
        {
            0 => Encoding.Unicode.GetBytes(source),
            1 => Encoding.BigEndianUnicode.GetBytes(source),
            _ => bytes,
        };
    }

    private static byte[] Changed(byte[] bytes, byte[] others, Random random)
    {
        int at = random.Next(bytes.Length);
        int end = Math.Min(bytes.Length, at + random.Next(1, 40));
        int from = random.Next(others.Length);
        byte[] taken = others[from..Math.Min(others.Length, from + random.Next(1, 200))];
        return random.Next(9) switch
        {
            0 => [.. bytes[..at], (byte)(bytes[at] ^ (1 << random.Next(8))), .. bytes[(at + 1)..]],
            1 => [.. bytes[..at], (byte)random.Next(256), .. bytes[(at + 1)..]],
            2 => [.. bytes[..at], (byte)random.Next(' ', '~'), .. bytes[(at + 1)..]],
            3 => [.. bytes[..at], .. s_pieces[random.Next(s_pieces.Length)], .. bytes[at..]],
            4 => [.. bytes[..at], .. bytes[(at + 1)..]],
            5 => [.. bytes[..at], .. bytes[end..]],
            6 => [.. bytes[..end], .. bytes[at..]],
            7 => random.Next(4) == 0 ? bytes[..at] : [.. bytes[..at], (byte)random.Next('0', '9' + 1), .. bytes[(at + 1)..]],
            _ => [.. bytes[..at], .. taken, .. bytes[at..]],
        };
    }
}
