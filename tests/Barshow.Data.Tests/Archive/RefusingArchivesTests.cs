using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;
using Barshow.Data.Archive;
using Barshow.Data.Tests.Support;
using CsCheck;

namespace Barshow.Data.Tests.Archive;

public sealed class RefusingArchivesTests
{
    private static readonly DateOnly Today = new(2027, 3, 6);

    [Fact]
    public void An_archive_with_a_manifest_alone_is_sound_and_empty()
    {
        var reading = Read(ArchiveFile.Sound().Bytes());

        Assert.Null(reading.Refusal);
        Assert.Empty(reading.Archive!.Drinks.Values);
    }

    [Fact]
    public void A_file_that_is_no_zip_is_refused() =>
        Refused("The file is no archive, or not all of it: it cannot be unpacked.", Encoding.UTF8.GetBytes("Dear reader, this is no zip."));

    [Fact]
    public void An_empty_file_is_refused() => Refused("The file is no archive, or not all of it: it cannot be unpacked.", []);

    [Fact]
    public void A_file_cut_short_anywhere_is_refused()
    {
        var whole = ArchiveFile.Sound().With("drinks.json", """[{"slug":"low-tide","name":"Low Tide"}]""").Bytes();

        for (var length = 0; length < whole.Length; length++)
            Assert.NotNull(Read(whole[..length]).Refusal);
    }

    [Fact]
    public void A_byte_changed_in_what_an_entry_holds_is_refused()
    {
        var sound = ArchiveFile.Sound().With("drinks.json", """[{"slug":"low-tide","name":"Low Tide","taste":"sharp"}]""").Bytes(CompressionLevel.NoCompression);
        var at = sound.AsSpan().IndexOf("sharp"u8);
        sound[at] = (byte)'S';

        Refused("The archive is damaged: \"drinks.json\" does not match its checksum.", sound);
    }

    [Fact]
    public void Whatever_bytes_are_changed_reading_ends_with_an_archive_or_a_sentence()
    {
        var sound = ArchiveFile.Sound().With("drinks.json", """[{"slug":"low-tide","name":"Low Tide"}]""").Bytes();

        Gen.Select(Gen.Int[0, sound.Length - 1], Gen.Byte).Array[1, 8].Sample(changes =>
        {
            var bytes = sound.ToArray();
            foreach (var (at, value) in changes)
                bytes[at] = value;
            var reading = Read(bytes);
            return reading.Archive is null != reading.Refusal is null;
        });
    }

    [Fact]
    public void Without_a_manifest_it_is_no_archive() =>
        Refused("This is no Barshow archive: it holds no manifest.json.", new ArchiveFile().With("drinks.json", "[]").Bytes());

    [Theory]
    [InlineData("{ \"format\": \"another-archive\", \"version\": 1 }")]
    [InlineData("{ \"version\": 1 }")]
    [InlineData("[]")]
    [InlineData("{ \"format\": 7, \"version\": 1 }")]
    public void Another_format_is_refused(string manifest) =>
        Refused("This is no Barshow archive: its manifest.json does not name the format \"barshow-archive\".", new ArchiveFile().With("manifest.json", manifest).Bytes());

    [Fact]
    public void A_newer_version_is_refused_whatever_else_it_holds() =>
        Refused("The archive has version 2, and this Barshow reads versions up to 1: a newer Barshow made it.",
            new ArchiveFile().With("manifest.json", """{ "format": "barshow-archive", "version": 2, "unheard": [] }""").Bytes());

    [Theory]
    [InlineData("0")]
    [InlineData("-1")]
    [InlineData("1.5")]
    [InlineData("\"1\"")]
    [InlineData("99999999999999999999")]
    public void A_version_that_is_no_whole_number_from_1_is_refused(string version) =>
        Refused("The archive's version cannot be read: manifest.json needs a whole number from 1.",
            new ArchiveFile().With("manifest.json", $$"""{ "format": "barshow-archive", "version": {{version}} }""").Bytes());

    [Fact]
    public void A_manifest_that_is_no_json_is_refused() =>
        Refused("This is no Barshow archive: manifest.json is no JSON (line 1).", new ArchiveFile().With("manifest.json", "format: barshow").Bytes());

    [Theory]
    [InlineData("../drinks.json")]
    [InlineData("/etc/passwd")]
    [InlineData("..\\..\\drinks.json")]
    [InlineData("C:\\drinks.json")]
    [InlineData("stock/drinks.json")]
    [InlineData("DRINKS.JSON")]
    [InlineData("notes.txt")]
    [InlineData("drinks/")]
    public void An_entry_that_no_archive_has_is_refused_and_never_written_anywhere(string name) =>
        Refused($"The archive holds \"{name}\", which is not one of its entries.", ArchiveFile.Sound().With(name, "[]").Bytes());

    [Fact]
    public void An_entry_that_is_there_twice_is_refused() =>
        Refused("The archive holds \"drinks.json\" twice.", ArchiveFile.Sound().With("drinks.json", "[]").With("drinks.json", "[]").Bytes());

    [Fact]
    public void More_entries_than_there_can_be_are_refused()
    {
        var file = new ArchiveFile();
        for (var count = 0; count < 5000; count++)
            file.With($"{count}.json", "[]");

        Refused("The archive holds 5000 entries, and there are only 10 that it may hold.", file.Bytes());
    }

    [Fact]
    public void An_entry_that_unpacks_to_more_than_is_allowed_is_refused() =>
        Refused("The archive's \"drinks.json\" holds more than 64 MB unpacked.", ArchiveFile.Sound().With("drinks.json", new byte[(64 << 20) + 1]).Bytes());

    [Fact]
    public void Entries_that_unpack_to_too_much_together_are_refused() =>
        Refused("The archive holds more than 160 MB unpacked.",
            ArchiveFile.Sound().With("drinks.json", new byte[60 << 20]).With("episodes.json", new byte[60 << 20]).With("featured.json", new byte[60 << 20]).Bytes());

    [Fact]
    public void An_entry_that_says_it_is_short_and_is_not_is_refused()
    {
        // The length in the central directory is set to 10 bytes; what comes out is 2,000.
        var bytes = ArchiveFile.Sound().With("drinks.json", new byte[2000]).Bytes();
        var entry = LastIndexOf(bytes, [0x50, 0x4B, 0x01, 0x02]);
        BinaryPrimitives.WriteUInt32LittleEndian(bytes.AsSpan(entry + 24), 10);

        Assert.NotNull(Read(bytes).Refusal);
    }

    [Fact]
    public void A_file_larger_than_any_archive_is_refused_before_it_is_read()
    {
        using var file = new LongFile((64L << 20) + (1 << 20));

        Assert.Equal("The file holds 65 MB, and an archive at most 64.", ArchiveReader.Read(file, Today).Refusal);
    }

    [Fact]
    public void Json_that_nests_too_deep_is_refused()
    {
        var deep = string.Concat(Enumerable.Repeat("[", 100_000)) + string.Concat(Enumerable.Repeat("]", 100_000));

        StartsWith("The archive's drinks.json cannot be read at line 1", ArchiveFile.Sound().With("drinks.json", deep).Bytes());
    }

    [Fact]
    public void A_garnish_that_nests_without_end_is_refused()
    {
        var garnish = string.Concat(Enumerable.Repeat("""{"text":"a","instead":[""", 500)) + string.Concat(Enumerable.Repeat("]}", 500));

        StartsWith("The archive's drinks.json cannot be read at line 1", ArchiveFile.Sound().With("drinks.json", $$"""[{"slug":"a","name":"A","garnish":{{garnish}}}]""").Bytes());
    }

    [Theory]
    [InlineData("drinks.json", "{}", "cannot be read")]
    [InlineData("drinks.json", "null", "is empty")]
    [InlineData("drinks.json", "[", "cannot be read")]
    [InlineData("drinks.json", "", "cannot be read")]
    [InlineData("drinks.json", "[null]", "holds a thing without a name")]
    [InlineData("drinks.json", """[{"name":"Low Tide"}]""", "cannot be read")]
    [InlineData("drinks.json", """[{"slug":"low-tide","name":null}]""", "cannot be read")]
    [InlineData("drinks.json", """[{"slug":"","name":"Low Tide"}]""", "holds a thing without a name")]
    [InlineData("drinks.json", """[{"slug":"Low Tide","name":"Low Tide"}]""", "\"Low Tide\" is no slug.")]
    [InlineData("drinks.json", """[{"slug":"low-tide","name":"Low Tide","unheard":1}]""", "cannot be read")]
    [InlineData("drinks.json", """[{"slug":"low-tide","name":"A","name":"B"}]""", "cannot be read")]
    [InlineData("drinks.json", """[{"slug":"low-tide","name":"Low Tide"},{"slug":"low-tide","name":"Low Tide"}]""", "\"low-tide\" is there twice.")]
    [InlineData("drinks.json", """[{"slug":"low-tide","name":"Low Tide","tags":[null]}]""", "\"low-tide\" has a gap in Tags.")]
    [InlineData("drinks.json", """[{"slug":"low-tide","name":"Low Tide","lines":[{"name":"rum","amounts":[{"layer":"library","measure":"-1 oz"}]}]}]""", "cannot be read")]
    [InlineData("drinks.json", """[{"slug":"low-tide","name":"Low Tide","lines":[{"name":"rum","amounts":[{"layer":"library","measure":"1/0 oz"}]}]}]""", "cannot be read")]
    [InlineData("drinks.json", """[{"slug":"low-tide","name":"Low Tide","lines":[{"name":"rum","amounts":[{"layer":"library","measure":""}]}]}]""", "cannot be read")]
    [InlineData("drinks.json", """[{"slug":"low-tide","name":"Low Tide","lines":[{"name":"rum","amounts":[{"layer":"library","measure":"1 oz"},{"layer":"source","measure":"1 oz"}]}]}]""", "has layers out of order in the line \"rum\".")]
    [InlineData("drinks.json", """[{"slug":"low-tide","name":"Low Tide","method":{"kind":"levitated"}}]""", "cannot be read")]
    [InlineData("drinks.json", """[{"slug":"low-tide","name":"Low Tide","serve":{"washLine":1.01}}]""", "\"low-tide\" has a wash line outside 0 to 1.")]
    [InlineData("ingredients.json", """[{"slug":"rum","name":"Rum","kind":"spirit","composition":{"strength":101}}]""", "cannot be read")]
    [InlineData("ingredients.json", """[{"slug":"rum","name":"Rum","kind":"spirit","composition":{"sugarGramsPer100Millilitres":151}}]""", "has sugar outside 0 to 150 g in 100 ml.")]
    [InlineData("ingredients.json", """[{"slug":"rum","name":"Rum","kind":4}]""", "cannot be read")]
    [InlineData("ingredients.json", """[{"slug":"rum","name":"Rum","kind":"spirit","standIns":[{"ingredient":"gin","ratio":0}]}]""", "has a stand-in of which 0 ml will do.")]
    [InlineData("kit.json", """{"glasses":[{"slug":"coupe","name":"Coupe","brimfulMillilitres":0}]}""", "\"coupe\" holds 0 ml or less, or more than 100 litres.")]
    [InlineData("kit.json", """{"glasses":[{"slug":"coupe","name":"Coupe","brimfulMillilitres":1e999}]}""", "")]
    [InlineData("house.json", """{"spillShare":-0.1}""", "has a spill share outside 0 to 1.")]
    [InlineData("house.json", """{"hands":0}""", "has fewer than 1 or more than 100 pairs of hands.")]
    [InlineData("episodes.json", """[{"slug":"one","title":"One","takes":0}]""", "\"one\" has fewer than 1 or more than 1000 takes.")]
    [InlineData("episodes.json", """[{"slug":"one","title":"One","shootDate":"2027-02-30"}]""", "cannot be read")]
    [InlineData("featured.json", """[{"episodeTitle":"Old","date":"2025-01-01"}]""", "cannot be read")]
    [InlineData("bin.json", """{"drinks":[{"value":{"slug":"a","name":"A"},"version":0,"deletedAt":"2027-01-01T00:00:00Z","deletedBy":""}]}""", "\"a\" has a version below 1.")]
    [InlineData("saved.json", """[{"kind":"unheard","slug":"a","version":1,"at":"2027-01-01T00:00:00Z","by":""}]""", "is of the kind \"unheard\", which is none.")]
    [InlineData("history.json", """[{"kind":"drinks","slug":"a","version":1,"deed":"saved","at":"2027-01-01T00:00:00Z","by":"","before":{"slug":7}}]""", "\"a\" cannot be read as it was before version 1.")]
    public void A_bad_value_refuses_the_archive_whole(string entry, string json, string sentence)
    {
        var reading = Read(ArchiveFile.Sound().With(entry, json).Bytes());

        Assert.Null(reading.Archive);
        Assert.StartsWith($"The archive's {entry} ", reading.Refusal, StringComparison.Ordinal);
        Assert.Contains(sentence, reading.Refusal, StringComparison.Ordinal);
        Assert.DoesNotContain("\n", reading.Refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void A_refusal_names_the_place_and_the_reason() =>
        Refused("The archive's drinks.json cannot be read at line 2, $[0].slug: \"Low Tide\" is no slug.",
            ArchiveFile.Sound().With("drinks.json", "[\n{\"slug\":\"Low Tide\",\"name\":\"Low Tide\"}]").Bytes());

    private static ArchiveReading Read(byte[] file) => ArchiveReader.Read(new MemoryStream(file), Today);

    private static void Refused(string sentence, byte[] file)
    {
        var reading = Read(file);

        Assert.Equal(sentence, reading.Refusal);
        Assert.Null(reading.Archive);
    }

    private static void StartsWith(string sentence, byte[] file) => Assert.StartsWith(sentence, Read(file).Refusal, StringComparison.Ordinal);

    private static int LastIndexOf(byte[] bytes, byte[] wanted) => bytes.AsSpan().LastIndexOf(wanted);

    // A file that says how long it is and must not be read.
    private sealed class LongFile(long length) : MemoryStream
    {
        public override long Length => length;

        public override int Read(Span<byte> buffer) => throw new InvalidOperationException("It was read.");

        public override int Read(byte[] buffer, int offset, int count) => throw new InvalidOperationException("It was read.");
    }
}
