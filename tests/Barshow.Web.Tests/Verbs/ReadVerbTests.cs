using System.Text;
using System.Text.Json;
using Barshow.Web.Verbs;

namespace Barshow.Web.Tests.Verbs;

/// <summary>read: ingredient lines in, one JSON object a line out.</summary>
public sealed class ReadVerbTests : IDisposable
{
    private readonly Executable _barshow = new();

    public void Dispose() => _barshow.Dispose();

    [Fact]
    public void Lines_from_standard_input_come_out_as_one_object_each_in_order()
    {
        var ran = _barshow.Run("1½ oz (45 ml) white rum, chilled\n\n1/0 oz gin\n", "read");

        Assert.Equal(0, ran.ExitCode);
        Assert.Empty(ran.Errors);
        Assert.Equal(
            """
            {"text":"1½ oz (45 ml) white rum, chilled","amount":"3/2","unit":"oz","ml":45,"second":{"amount":"45","unit":"ml","ml":45},"name":"white rum","note":"chilled","optional":false,"findings":[]}
            {"text":"","amount":null,"unit":null,"ml":null,"second":null,"name":"","note":null,"optional":false,"findings":[]}
            {"text":"1/0 oz gin","amount":null,"unit":null,"ml":null,"second":null,"name":"gin","note":null,"optional":false,"findings":[{"kind":"amount-impossible","severity":"stop","subject":"1/0 oz gin","message":"“1/0 oz” divides by nought.","remedy":"Write the amount that is poured.","line":3,"said":"1/0 oz"}]}

            """.ReplaceLineEndings("\n"),
            ran.Output);
    }

    [Fact]
    public void A_file_is_read_in_place_of_standard_input_and_no_database_is_made()
    {
        File.WriteAllText(_barshow.At("lines.txt"), "6 to 8 mint leaves\r\nabsinthe rinse");

        var ran = _barshow.Run(null, "read", _barshow.At("lines.txt"));

        var lines = ran.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(2, lines.Length);
        Assert.StartsWith("""{"text":"6 to 8 mint leaves","amount":"6..8","unit":"leaf","ml":null,""", lines[0], StringComparison.Ordinal);
        Assert.StartsWith("""{"text":"absinthe rinse","amount":null,"unit":"rinse","ml":null,"second":null,"name":"absinthe",""", lines[1], StringComparison.Ordinal);
        Assert.False(Directory.Exists(_barshow.At("data")));
    }

    [Theory]
    [InlineData("25 ml (¾ oz) lime juice", "¾ oz stands beside 25 ml, 11.1 % more than the 22.5 ml it makes.")]
    [InlineData("50 ml (1¾ oz) gin", "1¾ oz stands beside 50 ml, 4.8 % less than the 52.5 ml it makes.")]
    [InlineData("30 ml (1 tsp) syrup", "1 tsp stands beside 30 ml, 500 % more than the 5 ml it makes.")]
    [InlineData("60–90 ml (1–2 oz) soda water", "1–2 oz stands beside 60–90 ml, 100 % more than the 30–60 ml it makes.")]
    public void Two_sides_of_a_line_that_contradict_are_a_stop(string line, string message)
    {
        var finding = Assert.Single(Object(line).GetProperty("findings").EnumerateArray());

        Assert.Equal("pair-disagrees", finding.GetProperty("kind").GetString());
        Assert.Equal(message, finding.GetProperty("message").GetString()!.Replace('\u00A0', ' '));
    }

    [Fact]
    public void Two_sides_that_agree_are_passed_in_silence() =>
        Assert.Empty(Object("22.5 ml (¾ oz) lime juice").GetProperty("findings").EnumerateArray());

    [Theory]
    [InlineData("½ oz dark rum float", "oz", "float")]
    [InlineData("top with 60 ml soda water", "ml", "top")]
    [InlineData("Top off with club soda (2-3 oz)", "oz", "top")]
    [InlineData("60 ml sparkling wine, chilled, to top", "ml", "top, chilled")]
    public void What_the_hand_does_with_an_amount_is_in_the_note(string line, string unit, string note)
    {
        var read = Object(line);

        Assert.Equal((unit, note), (read.GetProperty("unit").GetString(), read.GetProperty("note").GetString()));
    }

    /// <remarks>The fluid ounce of NIST Handbook 44, appendix C.</remarks>
    [Fact]
    public void Millilitres_are_written_to_ten_decimals() =>
        Assert.Contains("\"ml\":29.5735295625,", _barshow.Run("1 us fl oz gin", "read").Output, StringComparison.Ordinal);

    private static JsonElement Object(string line) => JsonDocument.Parse(Read(Encoding.UTF8.GetBytes(line))[0]).RootElement;

    [Fact]
    public void A_file_that_is_not_there_is_refused_in_one_sentence()
    {
        var ran = _barshow.Run(null, "read", "no-such-file");

        Assert.Equal((1, ""), (ran.ExitCode, ran.Output));
        Assert.Equal("barshow: There is no file \"no-such-file\".\n", ran.Errors);
    }

    [Fact]
    public void Bytes_that_are_no_text_are_read_without_a_crash()
    {
        byte[] bytes = [.. Enumerable.Range(0, 5000).Select(i => (byte)((i * i * 31 + i * 7) & 0xFF))];

        var objects = Read(bytes);

        Assert.NotEmpty(objects);
        Assert.All(objects.Where(line => line.Length > 0), line => JsonDocument.Parse(line).Dispose());
    }

    [Fact]
    public void A_line_at_the_bound_is_read_and_a_longer_one_is_told_of_and_the_next_is_read()
    {
        var fits = "2 oz " + new string('a', BoundedLines.Longest - 5);

        var objects = Read(Encoding.UTF8.GetBytes($"{fits}\n{fits}a\n2 oz gin"));

        Assert.Contains("\"amount\":\"2\"", objects[0], StringComparison.Ordinal);
        Assert.Contains("The line is longer than 65,536 characters; only its first 200 are kept.", objects[1], StringComparison.Ordinal);
        Assert.Contains("\"name\":\"gin\"", objects[2], StringComparison.Ordinal);
    }

    [Fact]
    public void A_byte_order_mark_and_every_line_end_are_understood()
    {
        var objects = Read(Encoding.UTF8.GetBytes("\uFEFF1 oz gin\r\n2 oz gin\r3 oz gin\n\n4 oz gin"));

        Assert.Equal(["1 oz gin", "2 oz gin", "3 oz gin", "", "4 oz gin"], objects.Where(line => line.Length > 0).Select(line => JsonDocument.Parse(line).RootElement.GetProperty("text").GetString()));
    }

    [Fact]
    public void What_was_read_is_given_out_before_more_is_asked_for()
    {
        using var output = new MemoryStream();
        using var input = new LinesOnDemand(lines: 100_000, output);

        ReadVerb.ReadAll(input, output);

        Assert.Equal(100_000, Encoding.UTF8.GetString(output.ToArray()).Count(c => c == '\n'));
        Assert.InRange(input.MostLinesBehind, 0, 1);
    }

    private static string[] Read(byte[] bytes)
    {
        using var input = new MemoryStream(bytes);
        using var output = new MemoryStream();
        ReadVerb.ReadAll(input, output);
        return Encoding.UTF8.GetString(output.ToArray()).Split('\n');
    }

    /// <summary>Gives one line at a time and looks how many have come out by then.</summary>
    private sealed class LinesOnDemand(int lines, MemoryStream output) : Stream
    {
        private static readonly byte[] Line = Encoding.UTF8.GetBytes("1½ oz white rum\n");
        private int _given;
        private int _counted;
        private int _came;

        public int MostLinesBehind { get; private set; }

        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position { get => throw new NotSupportedException(); set => throw new NotSupportedException(); }

        public override int Read(byte[] buffer, int offset, int count)
        {
            var written = output.GetBuffer().AsSpan(_counted, (int)output.Length - _counted);
            _came += written.Count((byte)'\n');
            _counted += written.Length;
            MostLinesBehind = Math.Max(MostLinesBehind, _given - _came);
            if (_given == lines)
                return 0;
            _given++;
            Line.CopyTo(buffer, offset);
            return Line.Length;
        }

        public override void Flush()
        {
        }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
