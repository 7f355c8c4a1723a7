using System.Buffers;
using System.CommandLine;
using System.Text.Json;
using Barshow.Engine.Findings;
using Barshow.Engine.Measures;
using Barshow.Engine.Measures.Reading;

namespace Barshow.Web.Verbs;

/// <summary><c>read [FILE]</c>: ingredient lines in, one JSON object a line out. Looks at no database.</summary>
internal static class ReadVerb
{
    private const int ShownOfCutLine = 200;

    public static void AddTo(RootCommand root)
    {
        var file = new Argument<string?>("FILE") { Description = "Text with one ingredient on each line; standard input when none is named.", Arity = ArgumentArity.ZeroOrOne };
        var read = new Command("read", "Read ingredient lines and print what was understood, one JSON object a line.") { file };
        read.SetAction(parsed => Run(parsed.GetValue(file)));
        root.Subcommands.Add(read);
    }

    private static int Run(string? path)
    {
        try
        {
            using var input = path is null or "-" ? Console.OpenStandardInput() : File.OpenRead(path);
            using var output = new BufferedStream(Console.OpenStandardOutput(), 65_536);
            ReadAll(input, output);
            return 0;
        }
        catch (Exception problem) when (path is not null && problem is FileNotFoundException or DirectoryNotFoundException)
        {
            return CommandLine.Refuse($"There is no file \"{path}\".");
        }
        catch (Exception problem) when (path is not null && problem is UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return CommandLine.Refuse($"\"{path}\" is no file that can be read.");
        }
        catch (IOException)
        {
            // Whoever was reading has gone, as "head" does; there is nobody left to tell.
            return 0;
        }
    }

    /// <summary>Reads every line of one stream and writes the objects to another, in order.</summary>
    internal static void ReadAll(Stream input, Stream output)
    {
        var buffer = new ArrayBufferWriter<byte>(1024);
        using var writer = new Utf8JsonWriter(buffer, FindingJson.OneLine);
        var lines = new BoundedLines(input, output.Flush);
        var number = 0;
        while (lines.Next(out var isCut) is { } line)
        {
            number++;
            ReadLineJson.Write(writer, isCut ? TooLong(line) : LineReader.Read(line).WithSidesCompared(Convention.Bar), number);
            writer.Flush();
            output.Write(buffer.WrittenSpan);
            output.WriteByte((byte)'\n');
            buffer.ResetWrittenCount();
            writer.Reset();
        }

        output.Flush();
    }

    private static ReadLine TooLong(string line)
    {
        var start = line[..ShownOfCutLine];
        return new(start)
        {
            Findings =
            [
                new(FindingCatalogue.LineUnreadable, start,
                    $"The line is longer than 65,536 characters; only its first {ShownOfCutLine} are kept.",
                    "Put one ingredient on each line."),
            ],
        };
    }
}
